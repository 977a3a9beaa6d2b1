'use strict';
globalThis.Module = { canvas: document.getElementById('canvas') };
navigator.serviceWorker.register('worker.js');
