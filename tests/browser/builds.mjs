// Makes a second build out of the packed page: another index.html, baked into the worker as web/pack.mjs does it.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const digest = (bytes) => createHash('sha256').update(bytes).digest('base64');

/** Changes one file of a copied page and gives the worker its new digest and another build name. */
export function make_other_build(folder, { name = 'index.html', change, build = 'b'.repeat(16) }) {
  const path = join(folder, name);
  const old = readFileSync(path);
  const fresh = Buffer.from(change(old.toString()));
  if (old.equals(fresh)) throw new Error(`the change left ${name} as it was`);
  writeFileSync(path, fresh);
  const worker = join(folder, 'sw.js');
  const text = readFileSync(worker, 'utf8').replace(digest(old), digest(fresh)).replace(/BUILD = '[^']*'/, `BUILD = '${build}'`);
  writeFileSync(worker, text);
}

export const retitle = (html) => html.replace('<h1>Groundsheet</h1>', '<h1>Groundsheet, other build</h1>');

/** Which build the page in the window is of, and what the worker keeps. */
export const which = (page) => page.evaluate(() => document.querySelector('#words h1').textContent);
export const kept_builds = (page) =>
  page.evaluate(async () => (await caches.keys()).filter((name) => name.startsWith('groundsheet-build-')));
export const waits = (page) =>
  page.waitForFunction(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting), undefined, { timeout: 30e3 });
