// The worker: holds one whole, checked build and answers from it alone. web/pack.mjs bakes the build in.
'use strict';
const BUILD = '@BUILD@';
const FILES = new Map(Object.entries({ /*@FILES@*/ })); // path below the worker's own folder -> [SHA-256 in base64, type]
const POLICY = "@POLICY@";
const PREFIX = 'groundsheet-build-';
const CACHE = PREFIX + BUILD;
const base = new URL('./', self.location.href);

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
async function install() {
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

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

// The page of this build runs: earlier builds are not needed any more. Later ones, which wait, stay.
async function drop_earlier() {
  const builds = (await caches.keys()).filter((name) => name.startsWith(PREFIX)); // in the order of their making
  const earlier = builds.slice(0, Math.max(builds.indexOf(CACHE), 0));
  await Promise.all(earlier.map((name) => caches.delete(name)));
}

self.addEventListener('message', (event) => {
  if (event.data === 'SKIP') event.waitUntil(self.skipWaiting());
  if (event.data === 'started') event.waitUntil(drop_earlier());
});

// The file of the build that a request means; '' for a page that is none of ours; undefined for everything else.
function known(request) {
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== base.origin || !url.pathname.startsWith(base.pathname)) return undefined;
  const path = decodeURIComponent(url.pathname.slice(base.pathname.length)) || 'index.html';
  if (FILES.has(path)) return path;
  return request.mode === 'navigate' ? '' : undefined;
}

const gone = () => new Response(
  '<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">' +
  '<title>Groundsheet</title><h1>Groundsheet</h1><p>The browser has cleared the stored program. ' +
  'Connect to the network once and load this page again.</p></html>',
  { status: 503, headers: { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': POLICY } });

async function answer(path, request) {
  const stored = await (await caches.open(CACHE)).match(new URL(path, base));
  if (stored) return stored;
  try {
    const fresh = await fetch_checked(path); // the browser cleared the cache: repair it, with the same build only
    await (await caches.open(CACHE)).put(new URL(path, base), fresh.clone());
    return fresh;
  } catch {
    return request.mode === 'navigate' ? gone() : Response.error();
  }
}

self.addEventListener('fetch', (event) => {
  const path = known(event.request);
  if (path === undefined) return;
  event.respondWith(path ? answer(path, event.request) : Response.redirect(base, 302));
});
