// The program itself, driven as people drive it: by role and name, by touch, by keyboard, with the server gone.
import assert from 'node:assert/strict';
import test from 'node:test';
import { browse, browse_profile, installed, kill_profile, open, open_page, poll, ready, scratch, serve, still, swipe, watch } from './harness.mjs';

/** A press through the browser's own pointer on the control with this role and name, brought into sight first. */
async function press(page, name, role = 'button') {
  const control = page.getByRole(role, { name }).first();
  await control.focus();
  await still(page);
  await control.click();
  await still(page);
}

const words = (page, id) => page.evaluate((wanted) => globalThis.groundsheet.mirror.text_of(wanted), id);
const says = async (page, id, pattern) =>
  poll(async () => pattern.test((await words(page, id)) || '') && words(page, id), `${id} to say ${pattern}, it says ${await words(page, id)}`);
const length = (page) => page.getByRole('slider', { name: 'Feed line length' });
const metres = async (page) => Number(await length(page).inputValue());

async function open_feedline(page) {
  await press(page, 'Start from a sample outing');
  await press(page, /^Feed line,.*opens Feed line/);
  await length(page).waitFor();
}

test('by role and name: sample, slider, reading, pin, undo', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  assert.match(await words(page, 'verdict'), /Nothing known yet/);
  await open_feedline(page);
  const before = await words(page, 'feedline.power_to_antenna_w');
  assert.match(before, /Power to antenna, [\d.]+ watts/);
  await press(page, /^Pin this plan/);
  await length(page).fill('20');
  await says(page, 'feedline.power_to_antenna_w', /worse than pinned/);
  assert.equal(await metres(page), 20);
  await press(page, /^Undo Feed line length, 20 m/);
  assert.equal(await poll(async () => (await metres(page)) === 15 && 15, 'undo'), 15);
  await press(page, /^Undo the pin/);
  await poll(async () => (await words(page, 'feedline.power_to_antenna_w')) === before, 'the figure as it was')
});

test('what was set is there after a reload with the server stopped, and nothing was asked of anyone', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
  t.after(() => context.close());
  const seen = await watch(context, server.address);
  const page = await open(await context.newPage(), server.address);
  await open_feedline(page);
  await length(page).fill('31.5');
  await press(page, /^Theme daylight/);
  const power = await words(page, 'feedline.power_to_antenna_w');
  await installed(page);
  await server.stop();
  const start = Date.now();
  await page.reload();
  await ready(page);
  t.diagnostic(`offline start to first frame: ${Date.now() - start} ms`);
  await press(page, /^Feed line,.*opens Feed line/);
  assert.equal(await metres(page), 31.5);
  assert.equal(await words(page, 'feedline.power_to_antenna_w'), power);
  await page.getByRole('button', { name: /^Theme dusk/ }).waitFor();
  await length(page).fill('10');
  await poll(async () => (await words(page, 'feedline.power_to_antenna_w')) !== power, 'it goes on computing');
  assert.deepEqual(seen, { strangers: [], violations: [], errors: [] });
});

test('killed the moment after a change: the change is there', async (t) => {
  const server = await serve(t);
  const profile = scratch(t);
  let context = await browse_profile(profile);
  let page = await open(await context.newPage(), server.address);
  await open_feedline(page);
  await length(page).fill('42.5');
  await poll(async () => (await metres(page)) === 42.5, 'set');
  await new Promise((done) => setTimeout(done, 1000)); // what was on screen a second ago
  await kill_profile(profile, context);
  context = await browse_profile(profile);
  t.after(() => context.close());
  page = await open(await context.newPage(), server.address);
  await press(page, /^Feed line,.*opens Feed line/);
  assert.equal(await metres(page), 42.5);
});

for (const [width, height, ratio] of [[1024, 768, 2], [390, 844, 2.625]]) {
  test(`by touch at ${width}x${height}, ratio ${ratio}: taps press, a drag moves the thumb, a swipe scrolls`, async (t) => {
    const server = await serve(t);
    const { page } = await open_page(t, await browse(t), server.address, { width, height, ratio, touch: true });
    const tap = async (name) => {
      await page.getByRole('button', { name }).first().tap();
      await still(page);
    };
    await tap('Start from a sample outing');
    await says(page, 'verdict', /holds/);
    await tap(/^Feed line,.*opens Feed line/);
    await tap(/^More Feed line length/);
    assert.equal(await metres(page), 15.5);
    const box = await length(page).boundingBox();
    // a range from 0 gives its low end the room: a place is log(1 + 20 of the share) over log(21)
    const place_of = (m) => Math.log1p((20 * m) / 100) / Math.log1p(20);
    const metres_at = (place) => (100 * Math.expm1(place * Math.log1p(20))) / 20;
    const x = box.x + 21 + (box.width - 42) * place_of(15.5);
    const y = box.y + box.height / 2;
    await swipe(page, { x, y }, { x: x + 60, y }, 12);
    await still(page);
    const wanted = metres_at(place_of(15.5) + 60 / (box.width - 42));
    const got = await metres(page);
    t.diagnostic(`dragged 60 px: ${got} m, by the scale of the track ${wanted.toFixed(2)} m`);
    assert.ok(Math.abs(got - wanted) <= 0.5);
    const row = page.getByRole('button', { name: /^SWR at radio,.*Why/ });
    const was = (await row.boundingBox()).y;
    const from = { x: 120, y: height * 0.62 };
    await swipe(page, from, { x: from.x, y: from.y - 120 }, 12);
    await still(page);
    assert.ok((await row.boundingBox()).y < was - 60, 'the sheet followed the finger');
    assert.equal(await metres(page), got);
  });
}

test('by keyboard alone: Tab to the sample, to the link, to the slider; arrows, Page, Home, End', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  const tab_to = async (pattern) => {
    for (let i = 0; i < 80; ++i) {
      await page.keyboard.press('Tab');
      const name = await page.evaluate(() => document.activeElement.getAttribute('aria-label') || document.activeElement.textContent);
      if (pattern.test(name)) return;
    }
    throw new Error(`Tab never reached ${pattern}`);
  };
  await tab_to(/sample outing/);
  await page.keyboard.press('Enter');
  await says(page, 'verdict', /holds/);
  await tab_to(/^Feed line,.*opens Feed line/);
  await page.keyboard.press('Space');
  await length(page).waitFor();
  await tab_to(/^Feed line length$/);
  for (const [key, wanted] of [['ArrowRight', 15.5], ['PageUp', 20.5], ['ArrowLeft', 20], ['End', 100], ['Home', 0]]) {
    await page.keyboard.press(key);
    await poll(async () => (await metres(page)) === wanted, `${key} to give ${wanted}, it is ${await metres(page)}`);
  }
  await page.keyboard.press('Control+z');
  await poll(async () => (await metres(page)) === 100, 'undo by keyboard');
});

test('typing on the keypad in feet, with the keys of a keyboard too', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  await open_feedline(page);
  await press(page, /^Type Feed line length/);
  await press(page, 'ft', 'radio');
  for (const key of ['5', '0']) await press(page, new RegExp(`^${key}$`));
  await press(page, /^Set 50 ft/);
  await poll(async () => Math.abs((await metres(page)) - 15.24) < 1e-9, '50 ft');
});

test('a check beside the plan puts its result into the plan only when asked', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  await open_feedline(page);
  await press(page, 'Is this roll going bad?');
  await page.getByRole('slider', { name: 'Measured SWR' }).fill('3.2');
  // 10 log10(4.2 / 2.2) = 2.81 dB: half the return loss of an open line
  await says(page, 'check:result:loss_db', /2\.81 decibels/);
  await press(page, /^Put \d+ % into the plan/);
  await press(page, /^This roll's loss/);
  await page.getByRole('slider', { name: /This roll's loss/ }).waitFor();
});

test('a file goes out and comes back', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  await open_feedline(page);
  await length(page).fill('27');
  await press(page, /^More: /);
  const waiting = page.waitForEvent('download');
  await press(page, 'Save a copy as a file');
  const download = await waiting;
  assert.equal(download.suggestedFilename(), 'quillet-meadow.json');
  const file = await download.path();
  await press(page, 'Begin a new outing');
  await press(page, /^More: /);
  const choosing = page.waitForEvent('filechooser');
  await press(page, 'Open an outing file');
  await (await choosing).setFiles(file);
  await press(page, /^Feed line,.*opens Feed line/);
  await poll(async () => (await metres(page)) === 27, 'the file is open');
});
