// Text fields on the page: typed, pasted, composed, refused, cancelled; under a finger, a keyboard and a screen reader.
import assert from 'node:assert/strict';
import test from 'node:test';
import { axe, browse, open_page, poll, serve, still, watch } from './harness.mjs';

const field = (page, name = 'Locator') => page.getByRole('textbox', { name, exact: true });
const button = (page, name) => page.getByRole('button', { name }).first();

async function press(page, name) {
  await button(page, name).focus();
  await still(page);
  await page.keyboard.press('Enter');
  await still(page);
}

async function open_sky(t, options) {
  const server = await serve(t);
  const { page, context } = await open_page(t, await browse(t), server.address, options);
  await press(page, 'Start from a sample outing');
  await press(page, /opens Sky$/);
  await field(page).waitFor();
  return { page, context };
}

const locator_is = (page, wanted) => poll(async () => (await field(page).inputValue()) === wanted, `the locator to be ${wanted}`);

test('typed and left with Enter: it counts; undo takes it back', async (t) => {
  const { page } = await open_sky(t);
  const before = await field(page).inputValue();
  await field(page).focus();
  await page.keyboard.type('jn58td');
  await page.keyboard.press('Enter');
  await locator_is(page, 'JN58td');
  await press(page, /^Undo Locator, JN58td/);
  await locator_is(page, before);
});

test('what cannot be is refused below the field and in its description; Escape brings back what was set', async (t) => {
  const { page } = await open_sky(t);
  const before = await field(page).inputValue();
  await field(page).fill('99ZZ');
  await page.keyboard.press('Enter');
  await poll(async () => (await field(page).getAttribute('aria-invalid')) === 'true', 'the refusal');
  assert.ok((await field(page).getAttribute('aria-description')).length > 10);
  assert.equal(await field(page).inputValue(), '99ZZ');
  await field(page).focus();
  await page.keyboard.press('Escape');
  await locator_is(page, before);
  assert.equal(await field(page).getAttribute('aria-invalid'), null);
});

test('under a finger: one tap gives the field the keyboard, the real field lies over the drawn one, a tap elsewhere counts it', async (t) => {
  const { page } = await open_sky(t, { width: 390, height: 844, ratio: 2.625, touch: true });
  await field(page).focus();
  await still(page); // brought into sight
  await page.evaluate(() => document.activeElement.blur());
  await still(page);
  const box = await field(page).boundingBox();
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  const seen = await field(page).evaluate((element) => {
    const style = getComputedStyle(element);
    return { focused: document.activeElement === element, opacity: style.opacity, letter: parseFloat(style.fontSize), select: style.userSelect };
  });
  assert.deepEqual({ ...seen, letter: seen.letter >= 16 }, { focused: true, opacity: '1', letter: true, select: 'text' });
  await page.keyboard.insertText('jo31');
  await still(page);
  await page.touchscreen.tap(30, 20); // the mark: back to Overview
  await still(page);
  await press(page, /opens Sky$/);
  await locator_is(page, 'JO31');
});

test('a finger that scrolls over a field does not open it', async (t) => {
  const { page } = await open_sky(t, { width: 390, height: 844, touch: true });
  await field(page).focus();
  await still(page);
  await page.evaluate(() => document.activeElement.blur());
  const box = await field(page).boundingBox();
  const session = await page.context().newCDPSession(page);
  const touch = (type, points) => session.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  const [x, y] = [box.x + 60, box.y + 20];
  await touch('touchStart', [{ x, y }]);
  for (let i = 1; i <= 6; ++i) await touch('touchMove', [{ x, y: y + 15 * i }]);
  await touch('touchEnd', []);
  await still(page);
  assert.equal(await page.evaluate(() => document.activeElement.localName), 'body');
});

test('texts of every kind arrive once and whole: accents, right to left, emoji, a composed word, a long paste', async (t) => {
  const { page } = await open_sky(t);
  await field(page).focus();
  const strings = ['Wiese \u00fcber dem Tal', '\u00c5\u00e9\u0142\u0151', '\u0928\u092e\u0938\u094d\u0924\u0947', '\u05e9\u05dc\u05d5\u05dd', '\u65e5\u672c\u8a9e',
    '\u{1f332}\u{1f4fb}', 'a\u0301 e\u0308', '3,5 / 3.5', '"quoted" \\ back', "it's <b>&amp;", '\u2126 \u2212 \u00b5', 'x'.repeat(80)];
  for (const text of strings) {
    await field(page).selectText();
    await page.keyboard.insertText(text);
    await still(page);
    assert.equal(await field(page).inputValue(), text);
  }
  await field(page).selectText();
  await page.keyboard.insertText('');
  await page.keyboard.press('Delete');
  const session = await page.context().newCDPSession(page);
  await session.send('Input.imeSetComposition', { text: '\u306b', selectionStart: 1, selectionEnd: 1 });
  await session.send('Input.imeSetComposition', { text: '\u306b\u307b\u3093', selectionStart: 3, selectionEnd: 3 });
  await session.send('Input.insertText', { text: '\u65e5\u672c' });
  await still(page);
  assert.equal(await field(page).inputValue(), '\u65e5\u672c');
  await field(page).selectText();
  await page.evaluate(() => {
    const data = new DataTransfer();
    data.setData('text/plain', 'p'.repeat(10000));
    document.execCommand('insertText', false, data.getData('text/plain'));
  });
  await still(page);
  const pasted = await field(page).inputValue();
  assert.ok(/^p+$/.test(pasted) && pasted.length <= 80, `${pasted.length} characters of 10000 pasted`);
});

test('the system\'s keyboard does not cover the field: the surface is lifted, and lowered again', async (t) => {
  const { page } = await open_sky(t, { width: 390, height: 844, touch: true });
  await field(page, 'Toward locator').focus();
  await still(page);
  const top_of = () => page.evaluate(() => document.getElementById('stage').getBoundingClientRect().top);
  await page.evaluate(() => {
    Object.defineProperty(window.visualViewport, 'height', { configurable: true, get: () => 340 });
    window.visualViewport.dispatchEvent(new Event('resize'));
  });
  await still(page);
  const box = await field(page, 'Toward locator').boundingBox();
  assert.ok(box.y + box.height <= 340, `it ends at ${box.y + box.height}`);
  assert.ok(box.y >= 0);
  await page.evaluate(() => document.activeElement.blur());
  await still(page);
  assert.equal(await top_of(), 0);
});

test('nothing in a field offends the page\'s policy or axe', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 } });
  t.after(() => context.close());
  const seen = await watch(context, server.address);
  const page = await context.newPage();
  await page.goto(server.address);
  await button(page, 'Start from a sample outing').waitFor();
  await press(page, 'Start from a sample outing');
  await press(page, /opens Sky$/);
  for (const theme of ['daylight', 'dusk', 'night']) {
    await field(page).fill('99ZZ');
    await page.keyboard.press('Enter');
    await still(page);
    assert.deepEqual((await axe(page)).faults, [], theme);
    await press(page, /^Theme/);
  }
  assert.deepEqual(seen, { strangers: [], violations: [], errors: [] });
});
