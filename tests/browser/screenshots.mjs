// Pictures of the packed page, for the guide and for the eye. Not a test: node --test passes this file over.
//   node tests/browser/screenshots.mjs            docs/guide/overview.png and feedline.png, 1024 x 768
//   node tests/browser/screenshots.mjs OUT_DIR    every sheet in three themes at four sizes with 100 and 200 % text, and the
//                                                 pages of words, into OUT_DIR
//   node tests/browser/screenshots.mjs OUT_DIR night-390x844   only the sets whose names begin so (theme-size-text)
// GROUNDSHEET_PAGE and CHROMIUM as in harness.mjs.
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { browse, open_page, repository, serve, still } from './harness.mjs';

const most_guide_bytes = 200e3;
const sizes = [
  { width: 1024, height: 768 }, { width: 820, height: 1180, touch: true }, { width: 390, height: 844, touch: true },
  { width: 844, height: 390, touch: true },
];
const themes = ['daylight', 'dusk', 'night'];
const texts_pct = [100, 200];

// By name, as a screen reader would. A press with the keyboard also reaches what lies scrolled out of sight.
async function press(page, name) {
  const button = page.locator('#mirror').getByRole('button', { name }).first();
  await button.focus();
  await still(page);
  await button.press('Enter');
  await still(page);
}

async function slide(page, name, value) {
  await page.getByRole('slider', { name }).fill(String(value));
  await still(page);
}

async function leave(page) {
  await page.evaluate(() => document.activeElement.blur()); // no focus ring in the picture
  await still(page);
}

async function shoot(page, folder, name) {
  await leave(page);
  const path = join(folder, `${name}.png`);
  await page.screenshot({ path });
  console.log(`${path}, ${statSync(path).size} bytes`);
  return path;
}

// The sample outing, pinned, then with twice the cable: every figure has its neighbour.
async function sample_with_pin(page) {
  await press(page, 'Start from a sample outing');
  await press(page, 'Pin this plan');
  await press(page, /opens Feed line$/);
  await slide(page, 'Feed line length', 30);
}

async function guide(page) {
  const folder = join(repository, 'docs/guide');
  mkdirSync(folder, { recursive: true });
  await sample_with_pin(page);
  const paths = [await shoot(page, folder, 'feedline')];
  await press(page, /^Overview/);
  paths.push(await shoot(page, folder, 'overview'));
  for (const path of paths) {
    if (statSync(path).size > most_guide_bytes) throw new Error(`${path} is above ${most_guide_bytes} bytes`);
  }
}

const links = ['Battery', 'Radio', 'Feed line', 'Antenna', 'Sky', 'Contacts', 'Safety', 'Clock', 'Kit'];

async function dress(page, theme, text_pct) {
  for (let turns = themes.indexOf(theme); turns > 0; --turns) await press(page, /^Theme/);
  if (text_pct === 100) return;
  await press(page, /^More:/);
  const choice = page.locator('#mirror').getByRole('radio', { name: `${text_pct} %` });
  await choice.focus();
  await choice.press('Enter');
  await still(page);
  await press(page, /^Overview/);
}

async function every_sheet(page, folder, set) {
  let number = 0;
  const shot = (name) => shoot(page, folder, `${set}-${String(number++).padStart(2, '0')}-${name}`);
  await shot('begin');
  await sample_with_pin(page);
  await press(page, /^Overview/);
  await shot('overview');
  for (const link of links) {
    await press(page, /^Overview/); // safety, clock and kit stand there alone
    await press(page, new RegExp(`opens ${link}$`));
    await shot(link.toLowerCase().replace(' ', ''));
  }
  await press(page, /^Overview/);
  await press(page, /opens Feed line$/);
  await press(page, /^Why this power/);
  await shot('why');
  await press(page, 'Close');
  await press(page, /^Type Feed line length/);
  await shot('keypad');
  await page.keyboard.press('Escape');
  await press(page, /^Cable,/);
  await shot('choices');
  await press(page, 'Close');
  await press(page, 'Is this roll going bad?');
  await shot('check');
  await press(page, 'Close');
  await press(page, /^Overview/);
  await press(page, /^More:/);
  await shot('more');
  await the_day(page, shot);
}

// The day itself: not yet on the air, counting, after, words for paper.
async function the_day(page, shot) {
  await press(page, /^Overview/);
  await press(page, /opens Contacts$/);
  await press(page, /^On the air$/);
  await shot('not-on-the-air');
  await press(page, /^Set its date to today/);
  await press(page, 'Start being on the air');
  for (let i = 0; i < 7; ++i) {
    await press(page, /^Add one contact/);
    await new Promise((done) => setTimeout(done, 450));
  }
  await shot('on-the-air');
  await press(page, 'End being on the air');
  await shot('after');
  await press(page, /opens Contacts$/);
  await press(page, 'Field card');
  await shot('card');
  await history(page, shot);
}

// Five earlier outings, of our own invention, brought in as a file from another device would be.
const earlier = [
  ['Tanner Hill', '2026-04-11', 7, 95, 10, 25, 'dipole', 61, 55],
  ['Low Meadow', '2026-04-26', 14, 110, 10, 20, 'dipole', 48, 50],
  ['Old Quarry', '2026-05-09', 4, 60, 10, 12, 'quarter_wave_vertical'],
  ['Lark Common', '2026-05-17', 22, 150, 10, 22, 'dipole', 44, 37],
  ['Heron Pool', '2026-05-30', 11, 84, 10, 18, 'dipole', 66, 63],
].map(([name, date, contacts, on_air_min, target, set_up_min, antenna, left_planned_pct, left_pct]) =>
  ({ name, date, contacts, on_air_min, target, set_up_min, antenna, left_planned_pct, left_pct }));

async function history(page, shot) {
  await press(page, /^More:/);
  const chooser = page.waitForEvent('filechooser');
  await press(page, 'Open an outing file');
  const text = JSON.stringify({ groundsheet: 1, kind: 'history', outings: earlier });
  await (await chooser).setFiles({ name: 'earlier-outings.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.locator('#mirror').getByRole('button', { name: /^Earlier outings, [56]/ }).waitFor({ state: 'attached' });
  await press(page, /^Earlier outings, /);
  await shot('history');
  await press(page, /Heron Pool/);
  await shot('history-row');
}

async function pages_of_words(page, address, folder, size) {
  for (const name of ['licences', 'methods', 'methods/feedline', 'kept']) {
    await page.goto(`${address}${name}.html`);
    const path = join(folder, `${size}-words-${name.replace('/', '-')}.png`);
    await page.screenshot({ path });
    console.log(`${path}, ${statSync(path).size} bytes`);
  }
}

const endings = [];
const run = { after: (end) => endings.unshift(end) }; // what a test gives the harness
try {
  const { address } = await serve(run);
  const browser = await browse(run);
  const folder = process.argv[2];
  if (folder) mkdirSync(folder, { recursive: true });
  if (!folder) await guide((await open_page(run, browser, address, sizes[0])).page);
  for (const size of folder ? sizes : []) {
    const name = `${size.width}x${size.height}`;
    for (const theme of themes) {
      for (const text_pct of texts_pct) {
        const set = `${theme}-${name}-${text_pct}`;
        if (!set.startsWith(process.argv[3] ?? '')) continue;
        const { page, context } = await open_page(run, browser, address, size);
        await dress(page, theme, text_pct);
        await every_sheet(page, folder, set);
        if (theme === themes[0] && text_pct === 100) await pages_of_words(page, address, folder, name);
        await context?.close();
      }
    }
  }
} finally {
  for (const end of endings) await end();
}
