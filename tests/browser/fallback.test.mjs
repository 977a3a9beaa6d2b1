// What the person sees when the program cannot run: words that say what is missing and what to do, and the kept texts.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { axe, browse, copy_of_page, open, serve } from './harness.mjs';

const kept_text = '{"groundsheet":1,"kind":"outing","name":"kept before"}';

// Opens the page after `spoil`, with something kept, and gives the words of its alert.
async function words(t, spoil, { dir } = {}) {
  const server = await serve(t, dir ? { dir } : {});
  const browser = await browse(t);
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  await page.goto(`${server.address}kept.html`);
  await page.evaluate((text) => {
    const record = globalThis.groundsheet.copies.make_record('outing', 1, text);
    globalThis.groundsheet.copies.second.write('outing', record);
  }, kept_text);
  await spoil(page, server);
  await page.goto(server.address);
  const said = await page.getByRole('alert').innerText();
  await page.getByRole('textbox').first().waitFor();
  assert.equal(await page.getByRole('textbox').first().inputValue(), kept_text);
  assert.ok(await page.getByRole('button', { name: 'Copy' }).first().isVisible());
  assert.deepEqual((await axe(page)).faults, []);
  return said;
}

test('no WebGL 2', async (t) => {
  const said = await words(t, (page) => page.addInitScript(() => {
    const real = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, ...rest) {
      return kind === 'webgl2' ? null : real.call(this, kind, ...rest);
    };
  }));
  assert.match(said, /WebGL 2[^]*graphics acceleration/);
});

test('no WebAssembly', async (t) => {
  const said = await words(t, (page) => page.addInitScript(() => delete globalThis.WebAssembly));
  assert.match(said, /WebAssembly is missing or blocked[^]*current browser/);
});

test('WebAssembly forbidden by a policy', async (t) => {
  const said = await words(t, (page) => page.route('**/', async (route) => {
    const answer = await route.fetch();
    const headers = { ...answer.headers(), 'content-security-policy': "script-src 'self'" };
    await route.fulfill({ response: answer, headers });
  }));
  assert.match(said, /WebAssembly is missing or blocked/);
});

for (const kind of ['js', 'wasm']) {
  test(`the program's .${kind} does not arrive`, async (t) => {
    const said = await words(t, (page) => page.route(`**/app.*.${kind}`, (route) => route.abort()));
    assert.match(said, /did not arrive whole[^]*Connect to the network/);
  });

  test(`one byte of the program's .${kind} is altered on the way`, async (t) => {
    const dir = copy_of_page(t);
    const path = join(dir, readdirSync(dir).find((name) => name.startsWith('app.') && name.endsWith(`.${kind}`)));
    const bytes = readFileSync(path);
    bytes[bytes.length >> 1] ^= 1;
    writeFileSync(path, bytes);
    assert.match(await words(t, () => {}, { dir }), /did not arrive whole/);
  });
}

test('a fault inside the running program', async (t) => {
  const server = await serve(t);
  const browser = await browse(t);
  const page = await open(await browser.newPage(), server.address);
  // A trap of the machine, thrown where the program's own would surface: in an event handler.
  await page.evaluate(() => setTimeout(() => {
    const module = new WebAssembly.Module(new Uint8Array([
      0, 97, 115, 109, 1, 0, 0, 0, 1, 4, 1, 96, 0, 0, 3, 2, 1, 0, 7, 5, 1, 1, 102, 0, 0, 10, 5, 1, 3, 0, 0, 11]));
    new WebAssembly.Instance(module).exports.f();
  }));
  assert.match(await page.getByRole('alert').innerText(), /stopped because of a fault[^]*Start again/);
});
