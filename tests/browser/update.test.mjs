// Builds never mix: a build is installed whole and checked or not at all, and starts only when the person says so.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { boot_script, chosen_build, kept_builds, make_other_build, waits, which, worker_waits } from './builds.mjs';
import { browse, browse_profile, copy_of_page, installed, kill_profile, open, poll, ready, scratch, serve } from './harness.mjs';

const other_build = 'Groundsheet, other build';

async function visit(t, profile) {
  const dir = copy_of_page(t);
  const server = await serve(t, { dir });
  const context = profile ? await browse_profile(profile) : await (await browse(t)).newContext();
  const page = await open(await context.newPage(), server.address);
  await installed(page);
  return { dir, server, context, page };
}

// Asks for an update and waits until the new worker was taken or refused; gives its last state.
const look_for_update = (page) => page.evaluate(async () => {
  const registration = await navigator.serviceWorker.getRegistration();
  await registration.update().catch(() => {});
  const worker = registration.installing || registration.waiting;
  if (!worker) return 'none';
  if (worker.state === 'installing') await new Promise((done) => worker.addEventListener('statechange', done, { once: true }));
  return worker.state;
});

/** Whether Chromium has written the name into the list of caches in its profile. */
const on_disk = (profile, name) => readdirSync(profile, { recursive: true }).filter((path) => path.endsWith('index.txt'))
  .some((path) => readFileSync(join(profile, path)).includes(name));

const flip_a_byte = (path) => {
  const bytes = readFileSync(path);
  bytes[bytes.length >> 1] ^= 1;
  writeFileSync(path, bytes);
};

test('a new build waits, is told, and starts when asked; the old one goes after that', async (t) => {
  const { dir, page } = await visit(t);
  const [first] = await kept_builds(page);
  make_other_build(dir);
  await page.evaluate(() => {
    globalThis.told = 0;
    const tell = Module._gs_update_waits;
    Module._gs_update_waits = () => {
      ++globalThis.told;
      tell();
    };
  });
  assert.equal(await look_for_update(page), 'installed');
  await poll(() => page.evaluate(() => globalThis.told === 1), 'the program hears that a build waits');
  await page.reload();
  await ready(page);
  assert.equal(await which(page), 'Groundsheet', 'a reload alone changes nothing');
  await waits(page);
  assert.equal((await kept_builds(page)).length, 2);
  const loaded = page.waitForEvent('load');
  await page.evaluate(() => globalThis.groundsheet.install.take());
  await loaded;
  await ready(page);
  assert.equal(await which(page), other_build);
  await poll(async () => !(await kept_builds(page)).includes(first), 'the old build is dropped once the new one runs');
});

test('two windows change over together', async (t) => {
  const { dir, server, context, page } = await visit(t);
  const other = await open(await context.newPage(), server.address);
  make_other_build(dir);
  await look_for_update(page);
  await waits(page);
  await page.evaluate(() => globalThis.groundsheet.install.take());
  for (const window of [page, other]) {
    await poll(() => which(window).then((title) => title.endsWith('other build')).catch(() => false), 'both are of the new build');
    await ready(window);
  }
});

test('one altered byte in any program file keeps a build from being installed', async (t) => {
  const { dir, server, page } = await visit(t);
  make_other_build(dir);
  const names = readdirSync(dir).filter((name) => /^(app|boot|page)\.|^licences/.test(name));
  assert.ok(names.length >= 5);
  for (const name of names) {
    const good = readFileSync(join(dir, name));
    flip_a_byte(join(dir, name));
    assert.equal(await look_for_update(page), 'redundant', name);
    writeFileSync(join(dir, name), good);
  }
  assert.equal((await kept_builds(page)).length, 1);
  await server.stop();
  await page.reload();
  await ready(page);
  assert.equal(await which(page), 'Groundsheet');
});

test('a missing file, and a page of some hotel network in its place, are refused too', async (t) => {
  const { dir, page } = await visit(t);
  make_other_build(dir);
  const name = readdirSync(dir).find((file) => file.endsWith('.wasm'));
  writeFileSync(join(dir, name), '<!doctype html><title>Welcome</title>Please log in');
  assert.equal(await look_for_update(page), 'redundant');
  await page.reload();
  await ready(page);
  assert.equal(await which(page), 'Groundsheet');
});

test('a broken worker leaves the installed build alone', async (t) => {
  const { dir, page } = await visit(t);
  writeFileSync(join(dir, 'sw.js'), 'throw new Error("broken");\n');
  await look_for_update(page);
  await page.reload();
  await ready(page);
  assert.equal(await which(page), 'Groundsheet');
});

test('the way back to the earlier build works as well', async (t) => {
  const { dir, page } = await visit(t);
  const before = new Map(['index.html', 'sw.js', boot_script(dir)].map((name) => [name, readFileSync(join(dir, name))]));
  const change_over = async () => {
    await look_for_update(page);
    await waits(page);
    const loaded = page.waitForEvent('load');
    await page.evaluate(() => globalThis.groundsheet.install.take());
    await loaded;
    await ready(page);
  };
  make_other_build(dir);
  await change_over();
  assert.equal(await which(page), other_build);
  for (const [name, bytes] of before) writeFileSync(join(dir, name), bytes);
  await change_over();
  assert.equal(await which(page), 'Groundsheet');
});

// The other build is complete; all windows are closed, until the browser has started its worker unasked; then a window is opened.
async function close_and_open({ context, server, page }) {
  await look_for_update(page);
  await waits(page);
  const blank = await context.newPage(); // some browsers go with their last window
  for (const window of context.pages()) if (window !== blank) await window.close();
  await poll(async () => {
    await blank.goto('about:blank');
    await new Promise((done) => setTimeout(done, 500)); // the browser lets the old worker rest first
    await open(blank, server.address);
    return !(await worker_waits(blank));
  }, 'the browser starts the new worker', 60e3);
  return blank;
}

const start_it = (page) => page.getByRole('button', { name: 'Start it' });
const path_of_script = (page) => page.evaluate(() => new URL(document.querySelector('script[src*="boot."]').src).pathname);

test('all windows closed and opened again: the chosen build goes on, offline too, until the new one is taken', async (t) => {
  const place = await visit(t);
  const { dir, server, context } = place;
  const [first] = await kept_builds(place.page);
  const script = await path_of_script(place.page);
  make_other_build(dir);
  const page = await close_and_open(place);
  assert.equal(await which(page), 'Groundsheet', 'online');
  assert.deepEqual((await kept_builds(page)).sort(), [first, `groundsheet-build-${'b'.repeat(16)}`].sort());
  await start_it(page).waitFor();

  await server.stop();
  await context.setOffline(true);
  await page.reload();
  await ready(page);
  assert.equal(await which(page), 'Groundsheet', 'offline');
  await start_it(page).waitFor();
  const extra = await context.newPage();
  await extra.goto(`${server.address}licences.html`);
  assert.equal(await extra.locator('h1').first().textContent(), 'Licences');
  await open(extra, server.address);
  assert.equal(await which(extra), 'Groundsheet', 'a second window');

  await start_it(page).click(); // the mirror's element lies over the canvas; still offline: everything needed is here
  for (const window of [page, extra]) {
    await poll(() => which(window).then((title) => title === other_build).catch(() => false), 'every window changes over', 30e3);
    await ready(window);
  }
  await poll(async () => !(await kept_builds(page)).includes(first), 'the old build is dropped once the new one runs');
  assert.equal(await page.evaluate((path) => fetch(path).then((answer) => answer.ok, () => false), script), false);
  assert.equal(await start_it(page).count(), 0, 'nothing newer is offered');
});

// Takes the new build and holds the reload back, so that the window goes on with the old one.
async function take_without_reload(page) {
  await page.evaluate(() => {
    const { store, install } = globalThis.groundsheet;
    const { idle } = store;
    const hang = () => new Promise(() => {});
    let calls = 0;
    store.idle = () => (calls++ ? hang() : idle()); // the first call is the taking, the second the reload
    install.take();
  });
  await poll(async () => (await chosen_build(page)) === 'b'.repeat(16), 'the choice is kept');
  assert.equal(await which(page), 'Groundsheet', 'the reload is held back');
  assert.equal((await kept_builds(page)).length, 2, 'the old build is kept until the new one has started');
}

test('a window that still runs the old build gets its own files, drops nothing and is told to reload', async (t) => {
  const place = await visit(t);
  const script = await path_of_script(place.page);
  make_other_build(place.dir);
  const page = await close_and_open(place);
  await place.server.stop();
  const text = (path) => page.evaluate((name) => fetch(name).then((answer) => answer.text()), path);
  await take_without_reload(page);
  assert.ok((await text(`/${boot_script(place.dir)}`)).includes('script_of'), 'the file of the new build');
  assert.doesNotMatch(await text(script), /script_of/, 'the file of the old one');
  const heard = await page.evaluate(() => new Promise((done) => {
    navigator.serviceWorker.addEventListener('message', ({ data }) => done(data), { once: true });
    navigator.serviceWorker.controller.postMessage({ say: 'started', build: globalThis.groundsheet.build });
  }));
  assert.equal(heard, 'reload');
  assert.equal((await kept_builds(page)).length, 2);
});

for (const [when, prepare] of [['waits', waits], ['stands in', null]]) {
  test(`killed between taking a build, whose worker ${when}, and the reload: the new one starts whole`, async (t) => {
    const browsers = [];
    t.after(() => Promise.all(browsers.map((one) => one.close().catch(() => {})))); // before their profile is removed
    const profile = scratch(t);
    const place = await visit(t, profile);
    browsers.push(place.context);
    const { dir, server, context } = place;
    make_other_build(dir);
    let page = place.page;
    if (prepare) {
      await look_for_update(page);
      await prepare(page);
    } else {
      page = await close_and_open(place);
    }
    assert.equal(await which(page), 'Groundsheet');
    // Chromium writes its list of caches some seconds late. That a kill loses a build it had not listed is not the question here.
    await poll(() => on_disk(profile, 'b'.repeat(16)), 'the browser lists the new build', 30e3);
    await take_without_reload(page);
    await kill_profile(profile, context);
    await server.stop();

    const later = await browse_profile(profile);
    browsers.push(later);
    const again = await open(await later.newPage(), server.address);
    assert.equal(await which(again), other_build);
    await poll(async () => (await kept_builds(again)).length === 1, 'the old build is dropped');
  });
}

test("the chosen build's cache is deleted, or one file of it: the worker's own build is used whole", async (t) => {
  for (const path of [undefined, 'licences.html']) {
    const place = await visit(t);
    const { dir, server, context } = place;
    const [first] = await kept_builds(place.page);
    make_other_build(dir);
    const page = await close_and_open(place);
    assert.equal(await which(page), 'Groundsheet');
    await server.stop();
    const deleted = await page.evaluate(async ([cache, file]) =>
      (file ? (await caches.open(cache)).delete(file) : caches.delete(cache)), [first, path]);
    assert.ok(deleted);
    await page.reload();
    await ready(page);
    assert.equal(await which(page), other_build);
    assert.equal(await chosen_build(page), 'b'.repeat(16));
    const extra = await context.newPage();
    await extra.goto(`${server.address}licences.html`);
    assert.equal(await extra.locator('h1').first().textContent(), 'Licences');
    await poll(async () => (await kept_builds(page)).length === 1, 'what is left of the old build is dropped');
  }
});

test('a build that nobody took makes way for the next; the way back to the chosen one says nothing', async (t) => {
  const place = await visit(t);
  const { dir } = place;
  const [first] = await kept_builds(place.page);
  const keep = new Map(['index.html', 'sw.js', boot_script(dir)].map((name) => [name, readFileSync(join(dir, name))]));
  make_other_build(dir);
  let page = await close_and_open(place);
  make_other_build(dir, { title: 'Groundsheet, third build', build: 'c'.repeat(16) });
  page = await close_and_open({ ...place, page });
  assert.equal(await which(page), 'Groundsheet');
  const third = `groundsheet-build-${'c'.repeat(16)}`;
  await poll(async () => (await kept_builds(page)).sort().join() === [first, third].sort().join(), 'the second build is dropped');
  await start_it(page).waitFor();
  for (const [name, bytes] of keep) writeFileSync(join(dir, name), bytes);
  page = await close_and_open({ ...place, page });
  assert.equal(await which(page), 'Groundsheet');
  await poll(async () => (await kept_builds(page)).join() === first, 'the third build is dropped');
  assert.equal(await start_it(page).count(), 0, 'the build that runs is not offered');
});
