// What every browser test needs: the packed page served on a free port, Chromium, a page that is ready.
// GROUNDSHEET_PAGE names the packed folder (default: build/page of the repository), CHROMIUM the browser.
import { spawn } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { after } from 'node:test';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const here = dirname(fileURLToPath(import.meta.url));
export const repository = join(here, '../..');
export const packed = resolve(process.env.GROUNDSHEET_PAGE || join(repository, 'build/page'));
const executablePath = process.env.CHROMIUM || '/usr/bin/chromium';

// Software drawing, and nothing of the browser's own on the network.
const args = [
  '--no-sandbox', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
  '--use-gl=angle', '--use-angle=swiftshader', '--enable-unsafe-swiftshader',
];

const axe_source = readFileSync(fileURLToPath(import.meta.resolve('axe-core/axe.min.js')), 'utf8');

/** Runs axe over the page as it stands: what it finds, one line a rule, and how many rules the page passed. */
export async function axe(page) {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe_source);
  return page.evaluate(async () => {
    // of what passes, axe need not describe every element
    const { violations, passes } = await globalThis.axe.run({ resultTypes: ['violations'] });
    return { faults: violations.map((found) => `${found.id} ${found.nodes[0].html}`), passed: passes.length };
  });
}

/** A folder of its own that is removed when the test ends. */
export function scratch(t) {
  const folder = mkdtempSync(join(tmpdir(), 'groundsheet-'));
  t.after(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }));
  return folder;
}

/** A copy of the packed page that the test may alter. */
export function copy_of_page(t) {
  const folder = join(scratch(t), 'page');
  cpSync(packed, folder, { recursive: true });
  return folder;
}

/** Starts web/serve.mjs; gives its address, its port and stop(). Output and exit code of a refused start are thrown. */
export async function serve(t, { dir = packed, port = 0 } = {}) {
  const script = join(repository, 'web/serve.mjs');
  const child = spawn(process.execPath, [script, '--dir', dir, '--port', String(port)], { stdio: ['ignore', 'pipe', 'pipe'] });
  const gone = new Promise((done) => child.on('exit', done));
  const stop = async () => {
    child.kill();
    await gone;
  };
  t.after(stop);
  let said = '';
  let errors = '';
  child.stderr.on('data', (text) => (errors += text));
  const address = await new Promise((done, refuse) => {
    child.stdout.on('data', (text) => {
      said += text;
      if (said.includes('\n')) done(said.trim());
    });
    gone.then((code) => refuse(Object.assign(new Error(errors), { code, errors })));
  });
  return { address, port: Number(new URL(address).port), stop };
}

// One browser serves a whole file: starting one takes longer than most tests. What tests must not share, storage and caches,
// belongs to a context, and each context goes with its test.
let browser_of_file;
if (process.argv[1]?.includes('.test.')) after(async () => (await browser_of_file)?.close());

/** The file's browser; contexts and pages made through what this gives are closed when the test ends. */
export async function browse(t) {
  if (!('signal' in t)) { // a script, which ends its browser itself
    const browser = await chromium.launch({ executablePath, args });
    t.after(() => browser.close());
    return browser;
  }
  browser_of_file ??= chromium.launch({ executablePath, args });
  const browser = await browser_of_file;
  const close_after = (context) => t.after(() => context.close());
  return {
    async newContext(options) {
      const context = await browser.newContext(options);
      close_after(context);
      return context;
    },
    async newPage(options) {
      const page = await browser.newPage(options);
      close_after(page.context());
      return page;
    },
  };
}

/** A browser with its profile on disk, so that it can be ended and started again; gives the context. */
export async function browse_profile(profile, options = {}) {
  for (const name of ['SingletonLock', 'SingletonSocket', 'SingletonCookie']) rmSync(join(profile, name), { force: true });
  return chromium.launchPersistentContext(profile, { executablePath, args, ...options });
}

/** A browser for tools that drive it themselves; gives the port at which it listens. */
export async function browse_by_port(t) {
  const profile = scratch(t);
  const child = spawn(executablePath, [...args, '--headless=new', '--remote-debugging-port=0', `--user-data-dir=${profile}`, 'about:blank'],
    { stdio: ['ignore', 'ignore', 'pipe'] });
  const gone = new Promise((done) => child.on('exit', done));
  t.after(async () => {
    child.kill();
    await gone;
  });
  let said = '';
  return new Promise((done, refuse) => {
    child.stderr.on('data', (text) => {
      said += text;
      const [, port] = /DevTools listening on ws:\/\/[^:]*:(\d+)\//.exec(said) || [];
      if (port) done(Number(port));
    });
    gone.then((code) => refuse(new Error(`the browser ended with ${code}: ${said}`)));
  });
}

/** Ends the browser of a profile as a crash or an empty battery does: no farewell, no last write. */
export async function kill_profile(profile, context) {
  const gone = new Promise((done) => context.on('close', done));
  for (const entry of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    let words;
    try {
      words = readFileSync(`/proc/${entry}/cmdline`, 'utf8').split('\0');
    } catch {
      continue; // it has ended meanwhile
    }
    const ours = words.includes(`--user-data-dir=${profile}`) && !words.some((word) => word.startsWith('--type='));
    if (ours) process.kill(Number(entry), 'SIGKILL');
  }
  await gone;
}

/** Watches a context: requests to other hosts, policy violations, page errors. */
export async function watch(context, address) {
  const seen = { strangers: [], violations: [], errors: [] };
  const origin = new URL(address).origin;
  context.on('console', (message) => message.type() === 'error' && seen.errors.push(message.text()));
  context.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(origin) && !/^(data|blob|about):/.test(url)) seen.strangers.push(url);
  });
  context.on('weberror', (event) => seen.errors.push(String(event.error())));
  await context.exposeFunction('tell_violation', (text) => seen.violations.push(text));
  await context.addInitScript(() => {
    addEventListener('securitypolicyviolation', (event) => {
      globalThis.tell_violation(`${event.violatedDirective} ${event.blockedURI} ${event.sourceFile}`);
    });
  });
  return seen;
}

/** Loads the page and waits until the program has drawn. */
export async function open(page, address) {
  await page.goto(address, { waitUntil: 'load' });
  await ready(page);
  return page;
}

export const ready = (page) => page.waitForFunction(() => globalThis.groundsheet?.ready === true, undefined, { timeout: 60e3 });

/** Waits until the worker holds the whole build and answers for the page. */
export const installed = (page) =>
  page.waitForFunction(() => Boolean(navigator.serviceWorker.controller), undefined, { timeout: 60e3 });

/** A context with one ready page. `touch` makes a phone or a tablet of it. */
export async function open_page(t, browser, address, { width = 1024, height = 768, ratio = 1, touch = false } = {}) {
  const context = await browser.newContext({
    viewport: { width, height }, deviceScaleFactor: ratio, hasTouch: touch, isMobile: touch,
  });
  t.after(() => context.close());
  const page = await open(await context.newPage(), address);
  return { context, page };
}

/** Waits until `probe` gives something true, and gives it. */
export async function poll(probe, what, limit_ms = 10e3) {
  const until = Date.now() + limit_ms;
  for (;;) {
    const found = await probe();
    if (found) return found;
    if (Date.now() > until) throw new Error(`waited ${limit_ms} ms in vain: ${what}`);
    await new Promise((done) => setTimeout(done, 25));
  }
}

export const frames = (page) => page.evaluate(() => globalThis.groundsheet.frames);

/**
 * Waits until nothing more is drawn: the screen has had this many chances in a row and the program took none. What an input set
 * in motion draws at the next chance, what moves on draws at each.
 */
export const still = (page, chances = 4) => page.evaluate(async (wanted) => {
  const until = performance.now() + 10e3;
  for (let left = wanted, last = globalThis.groundsheet.frames; left > 0; --left) {
    await new Promise(requestAnimationFrame);
    const drawn = globalThis.groundsheet.frames;
    if (drawn !== last) left = wanted + 1;
    last = drawn;
    if (performance.now() > until) throw new Error('the page goes on drawing');
  }
}, chances);

/** A finger: down, the steps between, up; CSS px. Real touch events through the browser's own input. */
export async function swipe(page, from, to, steps = 8) {
  const session = await page.context().newCDPSession(page);
  const touch = (type, points) => session.send('Input.dispatchTouchEvent', { type, touchPoints: points });
  await touch('touchStart', [{ x: from.x, y: from.y }]);
  for (let i = 1; i <= steps; ++i) {
    const part = i / steps;
    await touch('touchMove', [{ x: from.x + (to.x - from.x) * part, y: from.y + (to.y - from.y) * part }]);
  }
  await touch('touchEnd', []);
  await session.detach();
}
