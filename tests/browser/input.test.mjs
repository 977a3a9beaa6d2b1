// Every press reaches the program exactly once and at the right place, whatever made it. What the program does with it is
// tested elsewhere: here a recorder stands at its door.
import assert from 'node:assert/strict';
import test from 'node:test';
import { browse, open_page, poll, serve, still, swipe } from './harness.mjs';

const [down, move, up, cancel] = [0, 1, 2, 3]; // app/platform/platform.h
const [mouse, touch] = [0, 1];
const [press, set] = [0, 1];

// The program hears nothing any more; everything that would reach it is noted. One big button and a slider stand in the mirror.
async function record(page) {
  await still(page);
  await page.evaluate(() => {
    globalThis.heard = [];
    const note = (what) => (...rest) => globalThis.heard.push([what, ...rest]);
    for (const name of ['pointer', 'wheel', 'key']) Module[`_gs_${name}`] = note(name);
    Module._gs_act = (at, size, verb, number) =>
      globalThis.heard.push(['act', new TextDecoder().decode(Module.HEAPU8.subarray(at, at + size)), verb, number]);
    globalThis.groundsheet.mirror.show({
      title: 'Recorder', focus: '', nodes: [
        { id: 'go', role: 'button', name: 'Go', x: 100, y: 100, w: 200, h: 60 },
        { id: 'power', role: 'slider', name: 'Power', value: '5 watts', now: 5, min: 0, max: 10, step: 1, x: 100, y: 200, w: 200, h: 60 },
        { id: 'modes', role: 'radiogroup', name: 'Mode' },
        { id: 'voice', role: 'radio', parent: 'modes', name: 'Voice', checked: true, x: 100, y: 300, w: 90, h: 60 },
        { id: 'morse', role: 'radio', parent: 'modes', name: 'Morse', checked: false, x: 210, y: 300, w: 90, h: 60 }],
    });
  });
}

const heard = (page, what) => page.evaluate((wanted) => globalThis.heard.filter(([name]) => name === wanted), what);
const forget = (page) => page.evaluate(() => (globalThis.heard.length = 0));
const presses = (found) => found.filter(([, kind]) => kind === down || kind === up || kind === cancel);

for (const ratio of [1, 2, 2.625]) {
  test(`100 taps are 100 presses in their places, ratio ${ratio}`, async (t) => {
    const server = await serve(t);
    const browser = await browse(t);
    const { page } = await open_page(t, browser, server.address, { ratio, touch: true });
    await record(page);
    const places = [[150, 120], [700, 500], [280, 155], [20, 20], [1000, 740]];
    for (let i = 0; i < 100; ++i) await page.touchscreen.tap(...places[i % places.length]);
    await new Promise((done) => setTimeout(done, 400)); // time for the mouse events that browsers make of taps
    const found = presses(await heard(page, 'pointer'));
    assert.equal(found.length, 200);
    for (let i = 0; i < 100; ++i) {
      const [x, y] = places[i % places.length];
      for (const [j, kind] of [down, up].entries()) {
        const [, is, device, , at_x, at_y] = found[2 * i + j];
        assert.deepEqual([is, device, Math.round(at_x), Math.round(at_y)], [kind, touch, x, y]);
      }
    }
    assert.deepEqual(await heard(page, 'act'), []);
  });
}

test('a finger drags: one press, moves along the way, one release', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const { page } = await open_page(t, browser, server.address, { ratio: 2, touch: true });
  await record(page);
  await swipe(page, { x: 120, y: 230 }, { x: 290, y: 236 });
  const found = await poll(async () => {
    const all = await heard(page, 'pointer');
    return all.some(([, kind]) => kind === up) && all;
  }, 'the release');
  assert.deepEqual(presses(found).map(([, kind]) => kind), [down, up]);
  const along = found.filter(([, kind]) => kind === move).map(([, , , , x]) => x);
  assert.ok(along.length >= 2);
  assert.deepEqual(along, [...along].sort((a, b) => a - b));
  assert.ok(Math.abs(along[along.length - 1] - 290) <= 1);
  assert.deepEqual(await heard(page, 'act'), [], 'the slider of the mirror did not move by itself');
});

test('mouse: by place, by role, double, held, wheel', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const { page } = await open_page(t, browser, server.address);
  await record(page);
  const go = page.getByRole('button', { name: 'Go' });
  const expect_presses = async (count, act) => {
    await forget(page);
    await act();
    const found = presses(await heard(page, 'pointer'));
    assert.equal(found.length, 2 * count);
    assert.ok(found.every(([, , device]) => device === mouse));
    assert.deepEqual(await heard(page, 'act'), []);
  };
  await expect_presses(1, () => page.mouse.click(150, 130));
  await expect_presses(1, () => go.click());
  await expect_presses(1, () => go.click({ force: true }));
  await expect_presses(2, () => go.dblclick());
  await expect_presses(1, () => page.getByRole('slider').dragTo(page.locator('#mirror'), { targetPosition: { x: 500, y: 600 } }));
  await expect_presses(0, () => go.click({ button: 'right' }));
  await forget(page);
  await page.mouse.move(400, 300);
  await page.mouse.wheel(0, 120);
  const [wheel] = await poll(async () => (await heard(page, 'wheel')).length && heard(page, 'wheel'), 'the wheel');
  assert.deepEqual(wheel.slice(1), [400, 300, 0, 120]);
});

test('keyboard and assistive technology: each press once, keys to the focused control', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const { page } = await open_page(t, browser, server.address);
  await record(page);
  const acts = async (verb) => (await heard(page, 'act')).filter(([, , is]) => is === verb).map(([, id, , number]) => [id, number]);
  const go = page.getByRole('button', { name: 'Go' });
  await go.focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Space');
  await go.dispatchEvent('click');
  assert.deepEqual(await acts(press), [['go', 0], ['go', 0], ['go', 0]]);
  assert.deepEqual(await heard(page, 'key'), []);
  await page.getByRole('slider').fill('8');
  assert.deepEqual(await acts(set), [['power', 8]]);
  await page.getByRole('slider').focus();
  for (const key of ['ArrowRight', 'PageUp', 'Home', 'Enter', '7', 'Escape', 'Control+z', 'Control+Shift+z']) await page.keyboard.press(key);
  assert.deepEqual((await heard(page, 'key')).map(([, key, , code]) => [key, code]),
    [[5, 0], [8, 0], [10, 0], [1, 0], [13, 55], [3, 0], [14, 0], [15, 0]]);
  assert.equal(await page.getByRole('slider').inputValue(), '8', 'the element itself did not take the keys');
  await forget(page);
  await page.keyboard.press('Tab');
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Voice');
  await page.keyboard.press('ArrowRight');
  assert.deepEqual(await acts(press), [['morse', 0]]);
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Morse');
  assert.equal((await heard(page, 'key')).length, 0, 'Tab and the arrows of a group are the page\'s own');
});
