// The drawing surface: sharp at every ratio, still when nothing changes, back after the system took it away.
import assert from 'node:assert/strict';
import test from 'node:test';
import { browse, frames, open, open_page, serve, still } from '../harness.mjs';

const canvas_size = (page) => page.evaluate(() => {
  const canvas = document.getElementById('canvas');
  const box = canvas.getBoundingClientRect();
  return { device: [canvas.width, canvas.height], css: [box.width, box.height] };
});

test('the canvas has one pixel for each pixel of the screen', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  for (const ratio of [1, 1.25, 1.5, 2, 2.625, 3]) {
    const { page, context } = await open_page(t, browser, server.address, { width: 820, height: 611, ratio });
    const size = await canvas_size(page);
    assert.deepEqual(size.css, [820, 611], `ratio ${ratio}`);
    assert.deepEqual(size.device, [Math.round(820 * ratio), Math.round(611 * ratio)], `ratio ${ratio}`);
    await context.close();
  }
});

test('turning the screen settles at once, and a change of ratio is followed', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const { page } = await open_page(t, browser, server.address, { width: 768, height: 1024, ratio: 2 });
  await still(page);
  const before = await frames(page);
  await page.evaluate(() => {
    globalThis.resizes = 0;
    const resize = Module._gs_resize;
    Module._gs_resize = (...state) => {
      ++globalThis.resizes;
      resize(...state);
    };
  });
  await page.setViewportSize({ width: 1024, height: 768 });
  await page.waitForFunction(() => document.getElementById('canvas').width === 2048);
  await still(page);
  const [resizes, drawn] = [await page.evaluate(() => globalThis.resizes), (await frames(page)) - before];
  console.log(`one turn: ${resizes} resize calls, ${drawn} frames`);
  assert.ok(resizes >= 1 && resizes <= 4);
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setDeviceMetricsOverride', { width: 1024, height: 768, deviceScaleFactor: 3, mobile: false });
  await page.evaluate(() => Module._gs_wake(1)); // the tool gives no event for it: at the latest the next frame sees it
  await page.waitForFunction(() => document.getElementById('canvas').width === 3072);
});

test('a lost drawing surface comes back with the same picture', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const { page } = await open_page(t, browser, server.address);
  await still(page);
  const before = await page.screenshot();
  const longest_ms = await page.evaluate(async () => {
    const pause = (ms) => new Promise((done) => setTimeout(done, ms));
    const surface = document.getElementById('canvas').getContext('webgl2').getExtension('WEBGL_lose_context');
    let longest = 0;
    for (let i = 0; i < 100; ++i) {
      surface.loseContext();
      await pause(20);
      const drawn = globalThis.groundsheet.frames;
      const start = performance.now();
      surface.restoreContext();
      while (globalThis.groundsheet.frames === drawn) await pause(2);
      longest = Math.max(longest, performance.now() - start);
    }
    return longest;
  });
  console.log(`100 losses: longest way back ${longest_ms.toFixed(0)} ms`);
  assert.ok(longest_ms < 500);
  await still(page);
  assert.ok(before.equals(await page.screenshot()), 'pixel for pixel');
});

test('a surface that stays away is named in words, and one that comes late is taken', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const page = await open(await browser.newPage(), server.address);
  await page.evaluate(() => {
    globalThis.surface = document.getElementById('canvas').getContext('webgl2').getExtension('WEBGL_lose_context');
    globalThis.surface.loseContext();
  });
  assert.match(await page.getByRole('alert').innerText(), /drawing surface away[^]*Start again/);
  await page.evaluate(() => globalThis.surface.restoreContext());
  await page.getByRole('alert').waitFor({ state: 'hidden' });
  assert.ok(await page.locator('#canvas').isVisible());
});
