// Builds never mix: a build is installed whole and checked or not at all, and starts only when the person says so.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { kept_builds, make_other_build, retitle, waits, which } from './builds.mjs';
import { browse, copy_of_page, installed, open, poll, ready, serve } from './harness.mjs';

async function visit(t) {
  const dir = copy_of_page(t);
  const server = await serve(t, { dir });
  const browser = await browse(t);
  const context = await browser.newContext();
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

const flip_a_byte = (path) => {
  const bytes = readFileSync(path);
  bytes[bytes.length >> 1] ^= 1;
  writeFileSync(path, bytes);
};

test('a new build waits, is told, and starts when asked; the old one goes after that', async (t) => {
  const { dir, page } = await visit(t);
  const [first] = await kept_builds(page);
  make_other_build(dir, { change: retitle });
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
  assert.equal(await which(page), 'Groundsheet, other build');
  await poll(async () => !(await kept_builds(page)).includes(first), 'the old build is dropped once the new one runs');
});

test('two windows change over together', async (t) => {
  const { dir, server, context, page } = await visit(t);
  const other = await open(await context.newPage(), server.address);
  make_other_build(dir, { change: retitle });
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
  make_other_build(dir, { change: retitle });
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
  make_other_build(dir, { change: retitle });
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
  const before = new Map(['index.html', 'sw.js'].map((name) => [name, readFileSync(join(dir, name))]));
  const change_over = async () => {
    await look_for_update(page);
    await waits(page);
    const loaded = page.waitForEvent('load');
    await page.evaluate(() => globalThis.groundsheet.install.take());
    await loaded;
    await ready(page);
  };
  make_other_build(dir, { change: retitle });
  await change_over();
  assert.equal(await which(page), 'Groundsheet, other build');
  for (const [name, bytes] of before) writeFileSync(join(dir, name), bytes);
  await change_over();
  assert.equal(await which(page), 'Groundsheet');
});
