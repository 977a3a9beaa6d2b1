// The person's own things, a method opened from an answer, answers as text, notes, the search of a long list: by roles and names.
import assert from 'node:assert/strict';
import test from 'node:test';
import { axe, browse, installed, open_page, poll, ready, serve, still } from './harness.mjs';

const button = (page, name) => page.locator('#mirror').getByRole('button', { name, exact: typeof name === 'string' }).first();

async function press(page, name) {
  await button(page, name).focus();
  await still(page);
  await page.keyboard.press('Enter');
  await still(page);
}

async function open_sample(t, options) {
  const server = await serve(t);
  const { page, context } = await open_page(t, await browse(t), server.address, options);
  await press(page, 'Start from a sample outing');
  return { page, context, server };
}

const slider = (page, name) => page.getByRole('slider', { name, exact: true });
const value_is = (page, name, wanted) =>
  poll(async () => Number(await slider(page, name).inputValue()) === wanted, `${name} to be ${wanted}`);

// Kind, the sheet where it stands, a lever of its own with one value and another.
const kinds = [
  ['battery', 'Battery', 'Battery capacity', 7, 21],
  ['cable', 'Feed line', 'Feed line length', 12, 33],
];

for (const [kind, sheet, lever, own, other] of kinds) {
  test(`my ${kind}: kept, named, used on the next outing, thrown away, brought back, there after a reload`, async (t) => {
    const { page } = await open_sample(t);
    const to_things = async () => {
      await press(page, /^More: /);
      await press(page, 'My own things');
    };
    await press(page, new RegExp(`opens ${sheet}$`));
    await slider(page, lever).fill(String(own));
    await to_things();
    await press(page, `Keep this outing's my ${kind}`);
    const name = page.getByRole('textbox', { name: 'Name', exact: true });
    await name.fill('Blue one');
    await name.press('Enter');
    await button(page, /^Blue one, /).waitFor({ state: 'attached' });

    await press(page, 'Overview');
    await press(page, new RegExp(`opens ${sheet}$`));
    await slider(page, lever).fill(String(other));
    await value_is(page, lever, other);
    await page.reload();
    await ready(page);
    await to_things();
    await press(page, /^Blue one, /);
    await press(page, 'Use on this outing');
    await press(page, 'Overview');
    await press(page, new RegExp(`opens ${sheet}$`));
    await value_is(page, lever, own);
    await press(page, /^Undo Blue one/);
    await value_is(page, lever, other);

    await to_things();
    await press(page, /^Blue one, /);
    await press(page, 'Throw away Blue one');
    await button(page, /^Blue one, /).waitFor({ state: 'detached' });
    await press(page, 'Bring back Blue one');
    await button(page, /^Blue one, /).waitFor({ state: 'attached' });
    assert.deepEqual((await axe(page)).faults, []);
  });
}

test('the method behind a figure opens from its Why with the server gone', async (t) => {
  const { page, context, server } = await open_sample(t);
  await installed(page);
  await server.stop();
  await press(page, /opens Feed line$/);
  await press(page, /^Why this power/);
  const opened = context.waitForEvent('page');
  await press(page, /^How it is made/);
  const method = await opened;
  await method.waitForLoadState();
  assert.match(method.url(), /methods\/feedline\.html$/);
  const words = await method.getByRole('main').textContent();
  assert.ok(words.length > 2000 && /matched loss/i.test(words), `${words.length} characters of the method`);
  t.diagnostic(`${await method.title()}: ${words.length} characters, opened with no network`);
});

test('an answer and a check go to the clipboard as text', async (t) => {
  const { page, context } = await open_sample(t);
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await press(page, /opens Feed line$/);
  await press(page, /^Why this power/);
  const copied = async (pattern) => {
    await press(page, 'Copy as text');
    await button(page, 'Copied').waitFor({ state: 'attached' });
    const text = await page.evaluate(() => navigator.clipboard.readText());
    assert.match(text, pattern);
    return text;
  };
  const why = await copied(/^Power to antenna: [\d.]+.W/);
  assert.match(why, /\nSource: /);
  t.diagnostic(why.split('\n').slice(0, 3).join(' | '));
  await press(page, 'Close');
  await press(page, 'Is this roll going bad?');
  await slider(page, 'Measured SWR').fill('3.2');
  await still(page);
  const check = await copied(/^Is this roll going bad\?/);
  assert.match(check, /3\.2/);
  assert.match(check, / dB/);
});

test('notes take several lines by the mirror and are there after a reload, in the file too', async (t) => {
  const { page } = await open_sample(t);
  const notes = page.getByRole('textbox', { name: 'Notes', exact: true });
  await press(page, /^More: /);
  await notes.fill('Gate code from the warden\nTwo pegs short: bring four');
  await notes.evaluate((one) => one.blur());
  await still(page);
  assert.equal(await notes.evaluate((one) => one.tagName), 'TEXTAREA');
  await page.reload();
  await ready(page);
  await press(page, /^More: /);
  await poll(async () => (await notes.inputValue()) === 'Gate code from the warden\nTwo pegs short: bring four', 'both lines');
});

test('a long list is searched by typing; what is left is chosen, and the plan follows', async (t) => {
  const { page } = await open_sample(t);
  await press(page, /opens Feed line$/);
  await press(page, /^Cable,/);
  const options = page.locator('#mirror').getByRole('radio');
  const all = await options.count();
  assert.ok(all > 10, `${all} cables`);
  const find = page.getByRole('textbox', { name: 'Find', exact: true });
  await find.fill('213');
  await poll(async () => (await options.count()) === 1, 'one cable left');
  await options.first().focus();
  await page.keyboard.press('Enter');
  await button(page, /^Cable, RG-213/).waitFor({ state: 'attached' });
  t.diagnostic(`${all} cables, 1 left by "213"`);
});
