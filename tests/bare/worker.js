// As little as a page needs to start with no network.
const files = ['./', 'page.css', 'page.js', 'bare.js', 'bare.wasm'];
self.addEventListener('install', (event) => event.waitUntil(caches.open('bare').then((cache) => cache.addAll(files))));
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));
self.addEventListener('fetch', (event) => event.respondWith(caches.match(event.request).then((kept) => kept || fetch(event.request))));
