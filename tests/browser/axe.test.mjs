// What a checker of accessibility finds on the page: nothing, on any sheet or panel, wide or narrow.
import assert from 'node:assert/strict';
import test from 'node:test';
import { axe, browse, open_page, serve, still } from './harness.mjs';

async function press(page, name) {
  const control = page.getByRole('button', { name }).first();
  await control.focus();
  await still(page);
  await control.click();
  await still(page);
}

for (const [width, height] of [[1024, 768], [390, 844]]) {
  test(`axe finds nothing on any sheet or panel at ${width}x${height}`, async (t) => {
    const server = await serve(t);
    const { page } = await open_page(t, await browse(t), server.address, { width, height });
    let passes = 0;
    const check = async (where) => {
      const { faults, passed } = await axe(page);
      passes += passed;
      assert.deepEqual(faults, [], where);
    };
    await check('first run');
    await press(page, 'Start from a sample outing');
    await check('overview');
    await press(page, /^Feed line,.*opens Feed line/);
    await check('feed line');
    for (const link of ['Battery', 'Radio', 'Antenna', 'Sky', 'Contacts', 'Safety', 'Kit']) {
      await press(page, /^Overview$/); // on a phone the links alongside stand there only
      await press(page, new RegExp(`^${link},.*opens ${link}`));
      await check(link);
    }
    await press(page, /^Feed line,.*opens Feed line/);
    await press(page, /^SWR at radio,.*Why/);
    await check('why');
    await press(page, 'Close');
    await press(page, /^Type Feed line length/);
    await check('keypad');
    await press(page, 'Close');
    await press(page, 'Is this roll going bad?');
    await check('check');
    await press(page, 'Close');
    await press(page, /^More: /);
    await check('more');
    t.diagnostic(`axe: ${passes} rules passed, no violation`);
  });
}
