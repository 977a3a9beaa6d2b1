// The whole demo, from the first visit to the end of the time on the air, by a keyboard alone, by a finger alone on a phone, and
// through roles and names alone.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import test from 'node:test';
import { browse, open_page, poll, serve, still } from './harness.mjs';
import { finger, keyboard, reader } from './people.mjs';

const words = (page, id) => page.evaluate((wanted) => globalThis.groundsheet.mirror.text_of(wanted), id);
const says = (page, id, pattern) => poll(async () => pattern.test((await words(page, id)) || '') && words(page, id), `${id} to say ${pattern}`);

// Link, the lever that lies open on its sheet, and a figure further down the chain that follows it.
const moves = [
  ['Battery', 'Battery capacity', 'power.lasts_until_min'],
  ['Radio', 'Transmit power', 'power.runtime_h'],
  ['Feed line', 'Feed line length', 'feedline.power_to_antenna_w'],
  ['Antenna', 'Apex height', 'feedline.swr_at_radio'],
  ['Contacts', 'Usual pace', 'pace.expected_contacts'],
  ['Clock', 'Leave by', 'pace.chance_of_target_pct'],
];

/** Changes one thing and tells what the figure said before and says after. */
async function follows(page, id, change) {
  const before = await says(page, id, /\d/);
  await change();
  const after = await poll(async () => (await words(page, id)) !== before && words(page, id), `${id} to follow, it says ${before}`);
  return [before, after];
}

async function whole_demo(t, page, person) {
  const heading = (name) => page.getByRole('heading', { level: 1, name, exact: true }).waitFor({ state: 'attached' });
  assert.match(await words(page, 'verdict'), /Nothing known yet/);
  await person.press('Start from a sample outing');
  await says(page, 'verdict', /holds/);

  for (const [link, lever, figure] of moves) {
    await person.press(new RegExp(`^${link},.* opens ${link}$`));
    await heading(link);
    const [before, after] = await follows(page, figure, () => person.move(lever));
    t.diagnostic(`${lever}: ${before} → ${after}`);
    await person.press(new RegExp(`^Undo ${lever}`));
    await poll(async () => (await words(page, figure)) === before, `undo of ${lever}`);
    await person.press('Overview');
  }
  for (const link of ['Sky', 'Safety', 'Kit']) {
    await person.press(new RegExp(`^${link},.* opens ${link}$`));
    await heading(link);
    if (link === 'Sky') {
      const far = await follows(page, 'sky.distance_km', () => person.write('Toward locator', 'JN48'));
      t.diagnostic(`Toward locator: ${far.join(' → ')}`);
    }
    if (link === 'Safety') await person.press(/^Power lines\./, 'checkbox');
    if (link === 'Kit') await follows(page, 'kit.weight_kg', () => person.press('Add a spare, Stakes'));
    await person.press('Overview');
  }

  await person.press(/opens Feed line$/);
  await person.press(/^SWR at radio,.*Why$/);
  await page.getByRole('dialog').waitFor({ state: 'attached' });
  await person.press('Close');
  await person.press('Is this roll going bad?');
  await person.move('Measured SWR');
  await says(page, 'check:result:loss_db', /[\d.]+ decibels/);
  await person.press('Close');

  await person.press(/^Pin this plan/);
  await person.move('Feed line length');
  await says(page, 'feedline.power_to_antenna_w', /worse than pinned/);
  await person.press(/^Undo Feed line length/);
  await person.press('Overview');

  await person.press(/^More: /);
  await person.write('Name of this outing', 'Lark Common');
  await heading('Lark Common');
  const waiting = page.waitForEvent('download');
  await person.press('Save a copy as a file');
  const file = JSON.parse(readFileSync(await (await waiting).path(), 'utf8'));
  assert.equal(file.kind, 'outing');
  assert.ok(JSON.stringify(file).includes('Lark Common'));

  await person.press('Overview');
  await person.press(/opens Contacts$/);
  await person.press('On the air');
  await person.press(/^Set its date to today/);
  if (await page.getByRole('button', { name: /^Use this device's zone/ }).count()) await person.press(/^Use this device's zone/);
  await person.press('Start being on the air');
  await person.press(/^Add one contact, 0 so far/);
  await says(page, 'air:count', /^1 of 10/);
  await person.press('End being on the air');
  await says(page, 'after:count', /^1 of 10/);
}

const phone = { width: 390, height: 844, ratio: 2, touch: true };
for (const [how, person, options] of [['a keyboard', keyboard, {}], ['a finger at 390x844', finger, phone], ['roles and names', reader, {}]]) {
  test(`the whole demo by ${how} alone`, async (t) => {
    const server = await serve(t);
    const { page } = await open_page(t, await browse(t), server.address, options);
    await still(page);
    await whole_demo(t, page, person(page));
  });
}
