// After one visit the page works with no network, asks nobody else for anything, and breaks no rule of its own policy.
import assert from 'node:assert/strict';
import { createServer } from 'node:net';
import test from 'node:test';
import { browse, frames, installed, open, poll, ready, serve, watch } from './harness.mjs';

async function visit(t) {
  const server = await serve(t);
  const browser = await browse(t);
  const context = await browser.newContext();
  const seen = await watch(context, server.address);
  const page = await open(await context.newPage(), server.address);
  await installed(page);
  return { server, context, page, seen };
}

test('reloads and opens its other pages with the server gone', async (t) => {
  const { server, context, page, seen } = await visit(t);
  await server.stop();
  await context.setOffline(true);
  const start = performance.now();
  await page.reload();
  await ready(page);
  console.log(`offline reload to first frame: ${(performance.now() - start).toFixed(0)} ms`);
  assert.ok((await frames(page)) > 0);
  assert.ok((await page.locator('#mirror *').count()) > 0, 'the accessible tree is there');
  for (const [path, heading] of [['licences.html', 'Licences'], ['methods.html', 'Methods'], ['kept.html', 'Kept texts']]) {
    await page.goto(server.address + path);
    assert.equal(await page.locator('h1').first().textContent(), heading);
  }
  await page.goto(`${server.address}methods.html`);
  const methods = await page.locator('li a').evaluateAll((links) => links.map((link) => link.href));
  for (const method of methods) {
    await page.goto(method);
    assert.ok(await page.locator('h1').first().textContent());
  }
  await page.goto(`${server.address}no/such/page`);
  await ready(page);
  assert.deepEqual(seen.strangers, []);
  assert.deepEqual(seen.violations, []);
});

test('a network that accepts and never answers delays nothing', async (t) => {
  const { server, page } = await visit(t);
  await server.stop();
  const sockets = new Set();
  const mute = createServer((socket) => sockets.add(socket));
  await new Promise((done) => mute.listen(server.port, '127.0.0.1', done));
  t.after(() => {
    for (const socket of sockets) socket.destroy();
    mute.close();
  });
  const start = performance.now();
  await page.reload();
  await ready(page);
  const took_ms = performance.now() - start;
  console.log(`reload to first frame with a mute network: ${took_ms.toFixed(0)} ms`);
  assert.ok(took_ms < 10e3);
});

test('a cleared cache is repaired online and named in words offline', async (t) => {
  const { server, page } = await visit(t);
  const clear = () => page.evaluate(async () => Promise.all((await caches.keys()).map((name) => caches.delete(name))));
  const count = () => page.evaluate(async () => {
    const name = (await caches.keys()).find((key) => key.startsWith('groundsheet-build-'));
    return name ? (await (await caches.open(name)).keys()).length : 0;
  });
  const files = await count();
  await clear();
  await page.reload();
  await ready(page);
  await poll(async () => (await count()) === files, 'the whole build is there again');
  await server.stop();
  await page.reload();
  await ready(page);
  await page.goto(`${server.address}licences.html`);
  assert.equal(await page.locator('h1').first().textContent(), 'Licences');
  await clear();
  await page.reload();
  assert.match(await page.locator('body').innerText(), /cleared the stored program[^]*Connect to the network/);
});

test('manifest and icons are what an install needs', async (t) => {
  const { address } = await serve(t);
  const browser = await browse(t);
  const page = await browser.newPage();
  await page.goto(`${address}licences.html`);
  const found = await page.evaluate(async () => {
    const manifest = await (await fetch('manifest.webmanifest')).json();
    const sizes = await Promise.all(manifest.icons.map(async ({ src }) => {
      const image = await createImageBitmap(await (await fetch(src)).blob());
      return `${image.width}x${image.height}`;
    }));
    return { manifest, sizes };
  });
  assert.equal(found.manifest.name, 'Groundsheet');
  assert.equal(found.manifest.display, 'standalone');
  assert.deepEqual(found.sizes, found.manifest.icons.map((icon) => icon.sizes));
  // W3C "Web Application Manifest" section on icons' purposes; 192 and 512 px are what Chromium asks for before it installs.
  assert.ok(found.sizes.includes('192x192') && found.sizes.includes('512x512'));
  assert.ok(found.manifest.icons.some((icon) => icon.purpose === 'maskable'));
});
