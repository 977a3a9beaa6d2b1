// The worker: keeps whole, checked builds and answers from one of them alone, the one the person chose. web/pack.mjs bakes this
// worker's own build in. A page or a worker of another build may be at work beside it, so all builds must agree on the names of
// the caches, on the text of the choice and on the messages.
'use strict';
const BUILD = '@BUILD@';
const FILES = new Map(Object.entries({ /*@FILES@*/ })); // path below the worker's own folder -> [SHA-256 in base64, type]
const POLICY = "@POLICY@";
const PREFIX = 'groundsheet-build-';
const CACHE = PREFIX + BUILD;
const STATE = 'groundsheet-state';
const base = new URL('./', self.location.href);
const CHOICE = new URL('chosen-build', base); // holds "BUILD FILES": a build's name, and of how many files it is made

const base64 = (buffer) => btoa(String.fromCharCode(...new Uint8Array(buffer)));

// Fetches one file past every cache and gives it as a fresh answer, or throws when it is not exactly the baked one.
async function fetch_checked(path) {
  const [digest, type] = FILES.get(path);
  const answer = await fetch(new URL(path, base), { cache: 'no-store', credentials: 'same-origin' });
  if (!answer.ok) throw new Error(`${path}: ${answer.status}`);
  const bytes = await answer.arrayBuffer();
  if (base64(await crypto.subtle.digest('SHA-256', bytes)) !== digest) throw new Error(`${path} is not of build ${BUILD}`);
  // Made anew: an answer that came by a redirect may not be used for a page, and the host's headers may be wrong.
  return new Response(bytes, {
    headers: {
      'Content-Type': type, 'Content-Security-Policy': POLICY, 'X-Content-Type-Options': 'nosniff',
      'Referrer-Policy': 'no-referrer',
    },
  });
}

// All or nothing: nothing is put away before every file is there and checked.
async function fetch_build() {
  const paths = [...FILES.keys()];
  const answers = await Promise.all(paths.map(fetch_checked));
  const was_there = await caches.has(CACHE); // the same build came back while it is still in use
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(paths.map((path, i) => cache.put(new URL(path, base), answers[i])));
  } catch (problem) {
    if (!was_there) await caches.delete(CACHE);
    throw problem;
  }
}

// A build was whole when it was chosen; since then the browser can only have taken something away.
async function is_whole(name, files) {
  return (await caches.has(name)) && (await (await caches.open(name)).keys()).length === files;
}

async function choose() {
  await (await caches.open(STATE)).put(CHOICE, new Response(`${BUILD} ${FILES.size}`));
}

// The cache to answer from. The browser may start this worker unasked, once all windows are closed: then it stands in for the
// chosen build. Only when there is none (the first install) or it is not whole any more, this worker's own becomes the choice.
async function in_use() {
  const kept = await caches.match(CHOICE, { cacheName: STATE });
  const [build, files] = kept ? (await kept.text()).split(' ') : [];
  if (build === BUILD) return CACHE;
  if (build && (await is_whole(PREFIX + build, Number(files)))) return PREFIX + build;
  await choose().catch(() => {}); // a full disk is no reason not to answer
  return CACHE;
}

async function install() {
  await fetch_build();
  await in_use();
}

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// A page runs. If it is of the build in use, the other builds are not needed any more, but for this worker's own, which may wait
// for the person's word, and for that of a worker on its way here. If not, it was loaded just before another build was chosen.
async function started(build, page) {
  const name = await in_use();
  if (name !== PREFIX + build) return page.postMessage('reload');
  if (!self.registration.installing && !self.registration.waiting) {
    const others = (await caches.keys()).filter((other) => other.startsWith(PREFIX) && other !== name && other !== CACHE);
    await Promise.all(others.map((other) => caches.delete(other)));
  }
  if (!(await is_whole(CACHE, FILES.size))) await fetch_build().catch(() => {}); // no network: another time
}

// The person takes this build. While this worker waits it has no windows; they notice by themselves that it takes over.
async function take() {
  if (!(await is_whole(CACHE, FILES.size))) await fetch_build();
  await choose();
  for (const page of await self.clients.matchAll({ type: 'window' })) page.postMessage('reload');
  await self.skipWaiting();
}

self.addEventListener('message', (event) => {
  const { say, build } = event.data; // build: of the page that says it
  if (say === 'started') event.waitUntil(started(build, event.source));
  if (say === 'is yours newer?' && build !== BUILD) event.source.postMessage('waits');
  if (say === 'take') event.waitUntil(take());
});

// The path below the worker's folder that a request means; undefined for what is none of ours.
function path_of(request) {
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== base.origin || !url.pathname.startsWith(base.pathname)) return undefined;
  return decodeURIComponent(url.pathname.slice(base.pathname.length)) || 'index.html';
}

// A name with a digest means the same bytes in every build: a window that still runs another one gets its own files.
async function find(path, name) {
  const found = await caches.match(new URL(path, base), { cacheName: name });
  if (found || !/\.[0-9a-f]{12}\.(js|css|wasm)$/.test(path)) return found;
  const builds = (await caches.keys()).filter((other) => other.startsWith(PREFIX));
  const all = await Promise.all(builds.map((build) => caches.match(new URL(path, base), { cacheName: build })));
  return all.find(Boolean);
}

const gone = () => new Response(
  '<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">' +
  '<title>Groundsheet</title><h1>Groundsheet</h1><p>The browser has cleared the stored program. ' +
  'Connect to the network once and load this page again.</p></html>',
  { status: 503, headers: { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': POLICY } });

async function answer(path, request) {
  const navigates = request.mode === 'navigate';
  const name = await in_use();
  const stored = await find(path, name);
  if (stored) return stored;
  if (name !== CACHE || !FILES.has(path)) return navigates ? Response.redirect(base, 302) : fetch(request);
  try {
    const fresh = await fetch_checked(path); // the browser cleared the cache: repair it, with the same build only
    await (await caches.open(CACHE)).put(new URL(path, base), fresh.clone());
    return fresh;
  } catch {
    return navigates ? gone() : Response.error();
  }
}

self.addEventListener('fetch', (event) => {
  const path = path_of(event.request);
  if (path !== undefined) event.respondWith(answer(path, event.request));
});
