// The elements over the canvas: roles, names, states, places, order, focus; and what one update costs.
import assert from 'node:assert/strict';
import test from 'node:test';
import { axe, browse, open_page, poll, serve, still } from './harness.mjs';

async function stage(t) {
  const server = await serve(t);
  const browser = await browse(t);
  const { page } = await open_page(t, browser, server.address);
  await still(page);
  await page.evaluate(() => (Module._gs_act = () => {})); // the program stays as it is
  return page;
}

const show = (page, nodes, focus = '') => page.evaluate((tree) => globalThis.groundsheet.mirror.show(tree), { title: 'Test', focus, nodes });
const box = (x, y, w = 100, h = 50) => ({ x, y, w, h });

const tree = [
  { id: 'top', role: 'banner', ...box(0, 0, 1024, 60) },
  { id: 'title', parent: 'top', role: 'heading', level: 1, name: 'Outing', ...box(20, 5, 300, 50) },
  { id: 'links', role: 'navigation', name: 'Chain', ...box(0, 60, 1024, 60) },
  { id: 'radio', parent: 'links', role: 'button', name: 'Radio', value: 'holds', current: true, ...box(20, 65) },
  { id: 'line', parent: 'links', role: 'button', name: 'Feed line', ...box(140, 65) },
  { id: 'sheet', role: 'main', ...box(0, 120, 1024, 600) },
  { id: 'power', parent: 'sheet', role: 'slider', name: 'Transmit power', value: '10 watts', now: 10, min: 1, max: 100, step: 1, ...box(20, 130, 300) },
  { id: 'runtime', parent: 'sheet', role: 'status', name: 'Runtime', value: '6 hours', live: true, ...box(20, 190, 300) },
  { id: 'more', parent: 'sheet', role: 'button', name: 'More', expanded: false, ...box(20, 250) },
  { id: 'shut', parent: 'sheet', role: 'button', name: 'Undo', disabled: true, ...box(140, 250) },
  { id: 'pack', parent: 'sheet', role: 'checkbox', name: 'Fuse', checked: true, ...box(20, 310) },
  { id: 'curve', parent: 'sheet', role: 'image', name: 'Discharge', value: 'falls from 13.2 to 12.8 volts', ...box(20, 370) },
  { id: 'kit', parent: 'sheet', role: 'list', name: 'Kit' },
  { id: 'kit1', parent: 'kit', role: 'listitem', name: 'Coax', ...box(20, 430) },
  { id: 'kit2', parent: 'kit', role: 'button', name: 'Tape', ...box(140, 430) },
  { id: 'table', parent: 'sheet', role: 'table', name: 'Loss' },
  { id: 'row1', parent: 'table', role: 'row' },
  { id: 'cell1', parent: 'row1', role: 'cell', name: '14 MHz', ...box(20, 490) },
  { id: 'cell2', parent: 'row1', role: 'cell', name: '1.2 dB', ...box(140, 490) },
];

test('every role is the real thing', async (t) => {
  const page = await stage(t);
  await show(page, tree);
  const snapshot = await page.locator('#mirror').ariaSnapshot();
  for (const line of ['- banner:', '- heading "Outing" [level=1]', '- navigation "Chain":', '- button "Radio"', '- main:',
    '- slider "Transmit power": "10"', '- button "Undo" [disabled]', '- checkbox "Fuse" [checked]',
    'img "Discharge: falls from 13.2 to 12.8 volts"', '- list "Kit":', '- listitem: Coax', '- listitem:', '- table "Loss":', '- cell "14 MHz"']) {
    assert.ok(snapshot.includes(line), `${line}\n${snapshot}`);
  }
  assert.equal(await page.getByRole('slider').getAttribute('aria-valuetext'), '10 watts');
  assert.equal(await page.getByRole('status', { name: 'Runtime' }).textContent(), '6 hours');
  assert.equal(await page.getByRole('button', { name: 'Radio' }).getAttribute('aria-current'), 'true');
  assert.equal(await page.getByRole('button', { name: 'More' }).getAttribute('aria-expanded'), 'false');
  assert.equal(await page.title(), 'Test');
  for (const { id, name, role, x, y, w, h } of tree.filter((node) => node.role === 'button' || node.role === 'slider')) {
    const found = await page.getByRole(role, { name, exact: true }).boundingBox();
    assert.deepEqual(found, { x, y, width: w, height: h }, id);
  }
  assert.deepEqual((await axe(page)).faults, []);
});

test('elements and focus live on while texts, order and places change', async (t) => {
  const page = await stage(t);
  await show(page, tree);
  await page.getByRole('slider').focus();
  await page.evaluate(() => {
    globalThis.before = document.activeElement;
    globalThis.moved = 0;
    document.addEventListener('focusout', () => ++globalThis.moved);
  });
  const changed = tree.filter(({ id }) => id !== 'line').map((node) => ({ ...node, y: (node.y || 0) + 7 }));
  const [power] = changed.splice(changed.findIndex(({ id }) => id === 'power'), 1);
  changed.push({ ...power, now: 20, value: '20 watts' });
  await show(page, changed, 'power');
  assert.ok(await page.evaluate(() => document.activeElement === globalThis.before));
  assert.equal(await page.getByRole('slider').inputValue(), '20');
  assert.equal(await page.getByRole('button', { name: 'Feed line' }).count(), 0);
  const order = await page.locator('#mirror main > *').evaluateAll((all) => all.map((element) => element.localName));
  assert.equal(order[order.length - 1], 'input', 'in the order of the tree');
});

test('the program can move the focus into a panel and back; what stands beside the panel stays in reach', async (t) => {
  const page = await stage(t);
  await show(page, tree);
  const dialog = [
    { id: 'why', role: 'dialog', name: 'Why', ...box(200, 100, 600, 500) },
    { id: 'close', parent: 'why', role: 'button', name: 'Close', ...box(700, 110) },
  ];
  await show(page, [...tree, ...dialog], 'close');
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Close');
  await page.getByRole('button', { name: 'Feed line' }).focus();
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'Feed line');
  await show(page, tree, 'more');
  assert.equal(await page.evaluate(() => document.activeElement.textContent), 'More');
  await page.getByRole('button', { name: 'Feed line' }).focus();
});

test('changes of live readings are spoken together and at most once a second', async (t) => {
  const page = await stage(t);
  await show(page, tree);
  await page.evaluate(() => {
    globalThis.spoken = [];
    const place = document.getElementById('announce');
    new MutationObserver(() => globalThis.spoken.push([performance.now(), place.textContent])).observe(place, { childList: true });
  });
  for (let i = 1; i <= 30; ++i) {
    await show(page, tree.map((node) => (node.id === 'runtime' ? { ...node, value: `${i} hours` } : node)));
    await new Promise((done) => setTimeout(done, 50));
  }
  const spoken = await poll(async () => {
    const all = await page.evaluate(() => globalThis.spoken);
    return all.some(([, words]) => words === 'Runtime: 30 hours') && all;
  }, 'the last words');
  for (let i = 1; i < spoken.length; ++i) assert.ok(spoken[i][0] - spoken[i - 1][0] >= 990);
  assert.ok(spoken.length <= 4, String(spoken.length));
});

test('one update of 150 elements', async (t) => {
  const page = await stage(t);
  const ms = await page.evaluate(() => {
    const nodes = (shift) => Array.from({ length: 150 }, (_, i) => ({
      id: `n${i}`, role: i % 3 ? 'button' : 'status', name: `Element ${i}`, value: i % 3 ? '' : `${shift + i} metres`,
      x: (i % 10) * 100, y: Math.floor(i / 10) * 50 + shift, w: 90, h: 48,
    }));
    const texts = Array.from({ length: 100 }, (_, k) => JSON.stringify({ title: 'Test', focus: '', nodes: nodes(k % 7) }));
    globalThis.groundsheet.mirror.show(JSON.parse(texts[0]));
    const start = performance.now();
    for (const text of texts) globalThis.groundsheet.mirror.show(JSON.parse(text));
    return (performance.now() - start) / texts.length;
  });
  console.log(`150 elements, all moved: ${ms.toFixed(2)} ms an update (aim 2 ms on a quiet machine)`);
  assert.ok(ms < 10);
});
