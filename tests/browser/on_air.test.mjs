// Being on the air in the browser: the whole flow by touch on a phone, by keyboard, and a browser that is killed after a tap.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';
import { browse, browse_profile, kill_profile, open, open_page, poll, scratch, serve, still } from './harness.mjs';
import { finger, keyboard, reader } from './people.mjs';

const between_taps_ms = 450; // longer than what counts as a bouncing finger
const rest = (ms) => new Promise((done) => setTimeout(done, ms));
const words = (page, id) => page.evaluate((wanted) => globalThis.groundsheet.mirror.text_of(wanted), id);
const says = (page, id, pattern) =>
  poll(async () => pattern.test((await words(page, id)) || ''), `${id} to say ${pattern}`);
const button = (page, name) => page.locator('#mirror').getByRole('button', { name }).first();

async function press(page, name, how = 'click') {
  const control = button(page, name);
  await control.waitFor();
  await control.focus();
  await still(page);
  await (how === 'Enter' ? control.press('Enter') : how === 'tap' ? control.tap() : control.click());
  await still(page);
}

async function go_on_air(page, how) {
  await press(page, 'Start from a sample outing', how);
  await still(page);
  await press(page, /opens Contacts$/, how);
  await press(page, /^On the air$/, how);
  await press(page, /^Set its date to today/, how);
  if (await button(page, /^Use this device's zone/).count()) await press(page, /^Use this device's zone/, how);
  await press(page, 'Start being on the air', how);
  await button(page, /^Add one contact, 0 so far/).waitFor();
}

async function count_up(page, from, to, how) {
  for (let i = from; i < to; ++i) {
    await rest(between_taps_ms);
    await (how === 'tap' ? button(page, /^Add one contact/).tap() : button(page, /^Add one contact/).press('Enter'));
    await says(page, 'air:count', new RegExp(`^${i + 1} of 10`));
  }
}

/** Minutes go by: the clock of the day alone, which the tally reads. */
const pass = (page, minutes) =>
  page.evaluate((by_ms) => {
    const before = Date.now;
    Date.now = () => before() + by_ms;
  }, minutes * 60e3);

const phone = { width: 390, height: 844, ratio: 2, touch: true };
const ways = [['a finger at 390x844', finger, phone], ['a keyboard', keyboard, {}], ['roles and names', reader, {}]];

for (const [way, who, options] of ways) {
  test(`plan, on the air, count, undo, end, after, history, field card: by ${way} alone`, async (t) => {
    const server = await serve(t);
    const { page } = await open_page(t, await browse(t), server.address, options);
    await still(page);
    const person = who(page);
    await person.press('Start from a sample outing');
    await person.press(/opens Contacts$/);
    await person.press('On the air');
    await person.press(/^Set its date to today/);
    if (await button(page, /^Use this device's zone/).count()) await person.press(/^Use this device's zone/);
    await person.press('Start being on the air');
    for (let i = 1; i <= 4; ++i) {
      await rest(between_taps_ms);
      await person.press(/^Add one contact/);
      await says(page, 'air:count', new RegExp(`^${i} of 10`));
    }
    await person.press(/^Undo the one at/);
    await says(page, 'air:count', /^3 of 10/);
    await person.press('Some I forgot');
    await person.press(/^2$/);
    await person.press(/^Add 2$/);
    await says(page, 'air:count', /^5 of 10/);
    await pass(page, 30);
    await person.press('End being on the air');
    await says(page, 'after:count', /^5 of 10/);
    await says(page, 'after:kept', /counts for the usual pace/);
    await person.press(/^Adopt usual pace/, 'checkbox');
    await person.press('Use 1 from now on');
    await person.press('Look at all of them');
    await says(page, 'history:count', /^Contacts of each outing.*0 of 1 reached their target/);
    await says(page, 'usual:pace.per_hour', /^Usual pace, /);
    await person.press(/Quillet Meadow, 5 of 10/);
    await person.press(/^Take it out/);
    await person.press(/^Bring back Quillet Meadow/);
    await says(page, 'history:count', /0 of 1 reached/);
    await person.press('Overview');
    await person.press(/opens Contacts$/);
    await person.press('Field card');
    await says(page, 'card:title', /Quillet Meadow/);
  });
}

test('an outing that was ended is in the history after the page is loaded anew, and goes out as a table', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  await go_on_air(page, 'Enter');
  await count_up(page, 0, 2, 'Enter');
  await pass(page, 20);
  await press(page, 'End being on the air', 'Enter');
  await says(page, 'after:kept', /counts/);
  await still(page);
  await open(page, server.address);
  await press(page, /^More:/, 'Enter');
  await press(page, /^Earlier outings, 1$/, 'Enter');
  await button(page, /Quillet Meadow, 2 of 10/).waitFor();
  const waiting = page.waitForEvent('download');
  await press(page, 'Save as a table', 'Enter');
  const file = await waiting;
  assert.equal(file.suggestedFilename(), 'earlier-outings.csv');
  const [head, row, end] = readFileSync(await file.path(), 'utf8').split('\r\n');
  assert.equal(head, 'date,name,contacts,on_air_min,per_hour,target,set_up_min,antenna,left_planned_pct,left_pct');
  assert.match(row, /^\d{4}-\d\d-\d\d,Quillet Meadow,2,2\d(\.\d)?,/);
  assert.equal(end, '');
});

test('a browser that is killed after a tap loses at most that one', async (t) => {
  const server = await serve(t);
  const profile = scratch(t);
  let context = await browse_profile(profile);
  let page = await open(await context.newPage(), server.address);
  await go_on_air(page, 'Enter');
  let tapped = 0;
  for (const more of [3, 2]) {
    await count_up(page, tapped, tapped + more, 'Enter');
    tapped += more;
    await kill_profile(profile, context);
    context = await browse_profile(profile);
    page = await open(await context.newPage(), server.address);
    await press(page, /opens Contacts$/, 'Enter');
    await poll(async () => Boolean(await words(page, 'air:count')), 'the count');
    const found = Number(/^\d+/.exec(await words(page, 'air:count'))[0]);
    t.diagnostic(`killed right after contact ${tapped}: ${found} found`);
    assert.ok(found >= tapped - 1 && found <= tapped, `${found} of ${tapped}`);
    tapped = found;
  }
  await context.close();
});

test('the field card goes to paper as words, and to no screen', async (t) => {
  const server = await serve(t);
  const { page } = await open_page(t, await browse(t), server.address);
  await press(page, 'Start from a sample outing');
  await press(page, /opens Contacts$/);
  await page.evaluate(() => (window.print = () => (globalThis.printed = document.getElementById('paper').textContent)));
  await press(page, 'Field card');
  await press(page, 'Print it');
  const paper = await poll(() => page.evaluate(() => globalThis.printed), 'the printing');
  for (const what of ['Quillet Meadow', 'Leave by', 'Feed line length', 'Before and while']) assert.ok(paper.includes(what), what);
  assert.equal(await page.evaluate(() => getComputedStyle(document.getElementById('paper')).display), 'none');
  for (const format of ['A4', 'Letter']) {
    const pages = (await page.pdf({ format, preferCSSPageSize: false })).toString('latin1').match(/\/Type\s*\/Page[^s]/g).length;
    const letters = await page.evaluate(() => document.getElementById('paper').style.fontSize);
    t.diagnostic(`${format}: ${pages} page with letters of ${letters}`);
    assert.equal(pages, 1, format);
  }
  await page.emulateMedia({ media: 'print' });
  assert.notEqual(await page.evaluate(() => getComputedStyle(document.getElementById('paper')).display), 'none');
  assert.equal(await page.evaluate(() => getComputedStyle(document.getElementById('stage')).display), 'none');
});
