// Pictures of the packed page, for the guide and for the eye. Not a test: node --test passes this file over.
//   node tests/browser/screenshots.mjs            docs/guide/overview.png and feedline.png, 1024 x 768
//   node tests/browser/screenshots.mjs OUT_DIR    every sheet at three sizes, and the pages of words, into OUT_DIR
// GROUNDSHEET_PAGE and CHROMIUM as in harness.mjs.
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { browse, open_page, repository, serve, still } from './harness.mjs';

const most_guide_bytes = 200e3;
const sizes = [
  { width: 1024, height: 768 }, { width: 820, height: 1180, touch: true }, { width: 390, height: 844, touch: true },
];

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

async function every_sheet(page, folder, size) {
  let number = 0;
  const shot = (name) => shoot(page, folder, `${size}-${String(number++).padStart(2, '0')}-${name}`);
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
  for (const theme of ['dusk', 'night']) {
    await press(page, /^Theme/);
    await shot(`overview-${theme}`);
  }
  await press(page, /^Theme/);
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
  for (const size of folder ? sizes : sizes.slice(0, 1)) {
    const { page } = await open_page(run, browser, address, size);
    if (!folder) await guide(page);
    else {
      const name = `${size.width}x${size.height}`;
      await every_sheet(page, folder, name);
      await pages_of_words(page, address, folder, name);
    }
  }
} finally {
  for (const end of endings) await end();
}
