// Many outings on one device: by role and name, by touch, in two windows at once, through the share sheet, after a crash.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';
import { axe, browse, browse_profile, kill_profile, open, open_page, poll, scratch, serve, still } from './harness.mjs';

const button = (page, name) => page.getByRole('button', { name }).first();

async function press(page, name) {
  await button(page, name).focus();
  await still(page);
  await page.keyboard.press('Enter');
  await still(page);
}

async function to_outings(page) {
  await press(page, /^More: /);
  await press(page, /^Outings/);
  await page.getByRole('group', { name: 'Outings' }).waitFor({ state: 'attached' });
}

const length = (page) => page.getByRole('slider', { name: 'Feed line length' });
const open_feedline = (page) => press(page, /opens Feed line$/);
const metres_are = (page, wanted) => poll(async () => Number(await length(page).inputValue()) === wanted, `${wanted} m`);
const listed = (page) => page.getByRole('button', { name: /^Open (?!an outing file)/ }).allTextContents();

test('by role and name: a second outing beside the first, renamed, thrown away, brought back', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  await press(page, 'Start from a sample outing');
  const name = await page.getByRole('heading', { level: 1 }).first().textContent();
  await to_outings(page);
  await press(page, 'Begin a new outing');
  await open_feedline(page);
  await length(page).fill('41');
  await press(page, /^More: /);
  await page.getByRole('textbox', { name: 'Name of this outing' }).fill('Long Field');
  await page.keyboard.press('Enter');
  await press(page, /^Outings, 2/);
  assert.deepEqual((await listed(page)).map((text) => text.split(',')[0]).sort(), [`Open ${name}`, 'Open Long Field'].sort());
  await press(page, new RegExp(`^Open ${name}`));
  await open_feedline(page);
  await metres_are(page, 15);
  await to_outings(page);
  await press(page, 'More for Long Field');
  await press(page, 'Throw away, Long Field');
  await poll(async () => (await listed(page)).length === 1, 'gone from the list');
  await page.reload();
  await button(page, /^More: /).waitFor();
  await to_outings(page);
  await press(page, 'Bring back Long Field');
  await press(page, /^Open Long Field/);
  await open_feedline(page);
  await metres_are(page, 41);
});

test('by touch at 390x844: the list opens, copies and opens again', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address, { width: 390, height: 844, ratio: 2.625, touch: true });
  const tap = async (name) => {
    await button(page, name).focus(); // into sight
    await still(page);
    await button(page, name).tap();
    await still(page);
  };
  await tap('Start from a sample outing');
  await tap(/^More: /);
  await tap(/^Outings/);
  await tap(/^More for /);
  await tap(/^Duplicate, /);
  assert.equal((await listed(page)).length, 2);
  await tap(/^Open .*, copy/);
  await poll(async () => /, copy/.test(await page.getByRole('heading', { level: 1 }).first().textContent()), 'the copy is open');
});

test('an outing goes to the share sheet as a file, and to a download where the sheet takes none', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  for (const takes of ['application/json', 'text/plain', 'nothing']) {
    const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
    t.after(() => context.close());
    await context.addInitScript((type) => {
      navigator.canShare = ({ files }) => files.every((file) => file.type === type);
      navigator.share = async ({ files }) => {
        globalThis.shared = { name: files[0].name, text: await files[0].text() };
      };
    }, takes);
    const page = await open(await context.newPage(), server.address);
    await press(page, 'Start from a sample outing');
    await to_outings(page);
    await press(page, /^More for /);
    if (takes === 'nothing') {
      assert.equal(await button(page, /^Share, /).count(), 0);
      const waiting = page.waitForEvent('download');
      await press(page, /^Save as a file, /);
      const file = await waiting;
      assert.equal(JSON.parse(readFileSync(await file.path(), 'utf8')).kind, 'outing');
      continue;
    }
    await press(page, /^Share, /);
    const shared = await poll(() => page.evaluate(() => globalThis.shared), 'shared');
    assert.match(shared.name, takes === 'text/plain' ? /^[a-z-]+\.json\.txt$/ : /^[a-z-]+\.json$/);
    assert.equal(JSON.parse(shared.text).kind, 'outing');
  }
});

test('two windows: the second says so, a change follows, and two changes at once are both kept', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
  t.after(() => context.close());
  const first = await open(await context.newPage(), server.address);
  await press(first, 'Start from a sample outing');
  await open_feedline(first);
  const second = await open(await context.newPage(), server.address);
  await second.getByText(/open in another window/).first().waitFor({ state: 'attached' });
  await open_feedline(second);
  await length(first).fill('22');
  await metres_are(second, 22);
  await length(second).fill('23');
  await metres_are(first, 23);
  // a window that sleeps hears nothing
  await first.evaluate(() => {
    BroadcastChannel.prototype.postMessage = () => {};
  });
  await length(first).fill('30');
  const on_disk = () => second.evaluate(async () => (await globalThis.groundsheet.database.read()).outing.text);
  await poll(async () => /feedline.length_m": 30\b/.test(await on_disk()), 'the first window\'s change on disk');
  await length(second).fill('40');
  await still(second);
  await second.getByText(/changed in another window at the same time/).first().waitFor({ state: 'attached' });
  await metres_are(second, 40);
  await to_outings(second);
  await poll(async () => (await listed(second)).length === 2, 'both in the list');
  assert.ok((await listed(second)).some((text) => /, second/.test(text)));
  await press(second, /^Open (?!.*, second|an outing file)/);
  await open_feedline(second);
  await metres_are(second, 30);
});

test('killed a second after a change to the second outing: both are there', async (t) => {
  const server = await serve(t);
  const profile = scratch(t);
  let context = await browse_profile(profile);
  let page = await open(await context.newPage(), server.address);
  await press(page, 'Start from a sample outing');
  await to_outings(page);
  await press(page, 'Begin a new outing');
  await open_feedline(page);
  await length(page).fill('42.5');
  await metres_are(page, 42.5);
  await new Promise((done) => setTimeout(done, 1000));
  await kill_profile(profile, context);
  context = await browse_profile(profile);
  t.after(() => context.close());
  page = await open(await context.newPage(), server.address);
  await open_feedline(page);
  await metres_are(page, 42.5);
  await to_outings(page);
  assert.equal((await listed(page)).length, 2);
});

test('axe finds nothing on the list, folded or open, wide or narrow', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  for (const [width, height] of [[1024, 768], [390, 844]]) {
    const { page } = await open_page(t, browser, server.address, { width, height });
    await press(page, 'Start from a sample outing');
    await to_outings(page);
    for (const where of ['folded', 'open']) {
      assert.deepEqual((await axe(page)).faults, [], where);
      await press(page, /^More for /);
    }
  }
});
