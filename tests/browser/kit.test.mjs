// The kit edited on the page: by a finger with the field that brings up the system's keyboard, by a keyboard alone, and by
// what a screen reader does. Cautions are looked at the same way.
import assert from 'node:assert/strict';
import test from 'node:test';
import { axe, browse, open_page, poll, ready, serve, still } from './harness.mjs';

const button = (page, name) => page.getByRole('button', { name }).first();
const box = (page, name) => page.getByRole('checkbox', { name }).first();
const field = (page, name) => page.getByRole('textbox', { name, exact: true });

async function press(page, name) {
  await button(page, name).focus();
  await still(page);
  await page.keyboard.press('Enter');
  await still(page);
}

async function open_kit(t, options) {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address, options);
  await press(page, 'Start from a sample outing');
  await press(page, /opens Kit$/);
  await button(page, /^Inverted V, for antenna/).waitFor();
  return page;
}

/** Brings it into sight as a keyboard would, lets go of it, and taps its middle. */
async function finger(page, element) {
  await element.focus();
  await still(page);
  await page.evaluate(() => document.activeElement.blur());
  await still(page);
  const at = await element.boundingBox();
  await page.touchscreen.tap(at.x + at.width / 2, at.y + at.height / 2);
  await still(page);
}

const listed = (page, name) => poll(async () => (await page.getByRole('button', { name }).count()) > 0, `${name} in the list`);

test('by a finger: an own item is made, named through the soft keyboard\'s field, weighed, and undone', async (t) => {
  const page = await open_kit(t, { width: 390, height: 844, ratio: 2.625, touch: true });
  await finger(page, button(page, 'An item of your own'));
  await field(page, 'Name').waitFor();
  await finger(page, field(page, 'Name'));
  const seen = await field(page, 'Name').evaluate((element) => {
    const style = getComputedStyle(element);
    return { focused: document.activeElement === element, opacity: style.opacity, letter: parseFloat(style.fontSize) >= 16 };
  });
  assert.deepEqual(seen, { focused: true, opacity: '1', letter: true });
  await field(page, 'Name').selectText();
  await page.keyboard.insertText('Seilbeutel, grün');
  await page.keyboard.press('Enter');
  await listed(page, /^Seilbeutel, grün, for/);
  await finger(page, field(page, 'Weight of one'));
  await field(page, 'Weight of one').selectText();
  await page.keyboard.insertText('12 oz');
  await page.keyboard.press('Enter');
  await listed(page, /^Seilbeutel, grün, for .*340 g/);
  await press(page, /^Undo weight of one/);
  await listed(page, /^Seilbeutel, grün, for .*100 g/);
});

test('by keyboard alone: an item is opened, refused, mended, moved, left at home; all of it comes back, and a reload keeps it', async (t) => {
  const page = await open_kit(t);
  await press(page, /^Stakes, for stakes/);
  await field(page, 'Works, and was not forgotten').focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('140');
  await page.keyboard.press('Enter');
  await poll(async () => (await field(page, 'Works, and was not forgotten').getAttribute('aria-invalid')) === 'true', 'the refusal');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('97.5 %');
  await page.keyboard.press('Enter');
  await poll(async () => (await field(page, 'Works, and was not forgotten').getAttribute('aria-invalid')) === null, 'it counts');
  await press(page, 'Move up');
  await press(page, /^Leave at home, Stakes/);
  assert.equal(await page.getByRole('button', { name: /^Stakes, for stakes/ }).count(), 0);
  await press(page, /^Undo left at home, Stakes/);
  await listed(page, /^Stakes, for stakes/);
  await poll(async () => page.evaluate(() => document.visibilityState === 'visible'), 'visible');
  const on_disk = () => page.evaluate(async () => (await globalThis.groundsheet.database.read()).outing.text);
  await poll(async () => /97\.5/.test(await on_disk()), 'it is saved a moment after it changed');
  await page.reload();
  await ready(page);
  await press(page, /opens Kit$/);
  await press(page, /^Stakes, for stakes/);
  assert.match(await field(page, 'Works, and was not forgotten').inputValue(), /^97\.5/);
});

test('by the mirror: what is packed is a checkbox that says so, and what stands in it is heard', async (t) => {
  const page = await open_kit(t);
  const stakes = box(page, /^Stakes/);
  assert.equal(await stakes.getAttribute('aria-checked'), 'false');
  await stakes.evaluate((element) => element.click());
  await poll(async () => (await box(page, /^Stakes/).getAttribute('aria-checked')) === 'true', 'the tick');
  await press(page, /^Undo Stakes, packed/);
  await poll(async () => (await box(page, /^Stakes/).getAttribute('aria-checked')) === 'false', 'the tick taken back');
  await press(page, /opens Safety$/);
  for (const name of [/^Power lines\./, /^Fuse\./, /^Coax\./]) {
    await box(page, name).focus();
    await still(page);
    await page.keyboard.press('Space');
    await poll(async () => (await box(page, name).getAttribute('aria-checked')) === 'true', `${name} looked at`);
  }
  assert.deepEqual((await axe(page)).faults, []);
});
