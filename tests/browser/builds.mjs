// Makes another build out of a copied page as web/pack.mjs would: a page and a script differ, names and digests follow.
import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { poll } from './harness.mjs';

const digest = (bytes, encoding = 'base64') => createHash('sha256').update(bytes).digest(encoding);

/** The boot script of a packed page: its name carries a digest, so each build has another. */
export const boot_script = (folder) => readdirSync(folder).find((name) => /^boot\.[0-9a-f]{12}\.js$/.test(name));

/** Turns the copied page into the build of this name (16 digits): title, boot script, digests, worker. */
export function make_other_build(folder, { title = 'Groundsheet, other build', build = 'b'.repeat(16) } = {}) {
  const old_script = boot_script(folder);
  const old = readFileSync(join(folder, old_script));
  const script = Buffer.concat([old, Buffer.from(`globalThis.groundsheet.script_of = '${build}';\n`)]);
  const name = `boot.${digest(script, 'hex').slice(0, 12)}.js`;
  rmSync(join(folder, old_script)); // the host's folder is replaced as a whole
  writeFileSync(join(folder, name), script);

  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const fresh = page.replace(/<h1>[^<]*<\/h1>/, `<h1>${title}</h1>`).replace(/(name="app-build" content=)"[^"]*"/, `$1"${build}"`)
    .replace(old_script, name).replace(digest(old), digest(script));
  for (const part of [`<h1>${title}</h1>`, `"${build}"`, name, digest(script)]) {
    assert.ok(fresh.includes(part), `${part} is not in the page`);
  }
  writeFileSync(join(folder, 'index.html'), fresh);

  const worker = readFileSync(join(folder, 'sw.js'), 'utf8').replace(/BUILD = '[^']*'/, `BUILD = '${build}'`)
    .replace(old_script, name).replace(digest(old), digest(script)).replace(digest(page), digest(fresh));
  for (const part of [build, name, digest(script), digest(fresh)]) assert.ok(worker.includes(part), `${part} is not in the worker`);
  writeFileSync(join(folder, 'sw.js'), worker);
}

/** The title of the build that runs in the window; its page, script and stated name must be of one build. */
export async function which(page) {
  const { title, build, script_of } = await page.evaluate(() => ({
    title: document.querySelector('#words h1').textContent,
    build: globalThis.groundsheet.build,
    script_of: globalThis.groundsheet.script_of,
  }));
  assert.equal(script_of, title === 'Groundsheet' ? undefined : build, `${title} of ${build} runs with the script of ${script_of}`);
  return title;
}

/** The names of the builds that are kept. */
export const kept_builds = (page) =>
  page.evaluate(async () => (await caches.keys()).filter((name) => name.startsWith('groundsheet-build-')));

/** The name of the build that the person chose, '' for none. */
export const chosen_build = (page) => page.evaluate(async () => {
  const kept = await caches.match('chosen-build', { cacheName: 'groundsheet-state' });
  return kept ? (await kept.text()).split(' ')[0] : '';
});

/** Whether a worker waits, whatever its build. */
export const worker_waits = (page) =>
  page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting));
export const waits = (page) => poll(() => worker_waits(page), 'a new worker waits', 30e3);
