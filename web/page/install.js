// The worker that makes the page work with no network, and the way from one build to the next.
'use strict';
{
  const gs = globalThis.groundsheet;
  const worker = navigator.serviceWorker; // missing outside secure addresses: then the page needs its server
  const look_again_ms = 3600e3;
  let controlled = Boolean(worker && worker.controller);
  let registration = null;
  let looked_ms = 0;
  let told = null;

  // Another build took over, by this window's wish or another's: page and assets must be of one build.
  if (worker) {
    worker.addEventListener('controllerchange', async () => {
      const first_install = !controlled;
      controlled = true;
      if (first_install) return;
      await gs.store.idle();
      location.reload();
    });
  }

  function tell_of_waiting() {
    const waiting = registration.waiting;
    if (!waiting || !worker.controller || told === waiting) return;
    told = waiting;
    Module._gs_update_waits();
  }

  function watch(installing) {
    if (installing) installing.addEventListener('statechange', tell_of_waiting);
  }

  // Once the program runs: before, the worker's downloads would only slow it.
  async function start() {
    if (!worker) return;
    if (worker.controller) worker.controller.postMessage('started');
    try {
      registration = await worker.register('sw.js', { updateViaCache: 'none' });
    } catch {
      return; // no network, or the server has gone: the installed build goes on
    }
    looked_ms = performance.now();
    registration.addEventListener('updatefound', () => watch(registration.installing));
    watch(registration.installing);
    tell_of_waiting();
    document.addEventListener('visibilitychange', () => {
      if (document.hidden || performance.now() - looked_ms < look_again_ms) return;
      looked_ms = performance.now();
      registration.update().catch(() => {});
    });
  }

  async function take() {
    await gs.store.idle();
    if (registration && registration.waiting) registration.waiting.postMessage('SKIP');
  }

  gs.install = { start, take };
}
