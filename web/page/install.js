// The worker that makes the page work with no network, and the way from one build to the next.
'use strict';
{
  const gs = globalThis.groundsheet;
  const worker = navigator.serviceWorker; // missing outside secure addresses: then the page needs its server
  const look_again_ms = 3600e3;
  let controlled = Boolean(worker && worker.controller);
  let registration = null;
  let looked_ms = 0;
  let asked = null; // the newest worker that this window knows of

  // Every window must be of the build in use: page and assets, and the one that saves.
  async function change_over() {
    await gs.store.idle();
    location.reload();
  }

  // Another build was chosen, in this window or another: its worker took over, or says so because it had already.
  if (worker) {
    worker.addEventListener('controllerchange', () => {
      const first_install = !controlled;
      controlled = true;
      if (!first_install) change_over();
    });
    worker.addEventListener('message', ({ data }) => {
      if (data === 'reload') change_over();
      if (data === 'waits') Module._gs_update_waits();
    });
  }

  const newest = () => registration.waiting || registration.active;

  // A newer worker may wait, or be active and stand in for this build; a worker of this very build has nothing to offer.
  function ask_newest() {
    if (!worker.controller || !newest() || asked === newest()) return;
    asked = newest();
    asked.postMessage({ say: 'is yours newer?', build: gs.build });
  }

  function watch(installing) {
    if (installing) installing.addEventListener('statechange', ask_newest);
  }

  // Once the program runs: before, the worker's downloads would only slow it.
  async function start() {
    if (!worker) return;
    if (worker.controller) worker.controller.postMessage({ say: 'started', build: gs.build });
    try {
      registration = await worker.register('sw.js', { updateViaCache: 'none' }).catch(() => worker.getRegistration());
    } catch {
      return;
    }
    if (!registration) return; // no network, or the server has gone, and nothing is installed
    looked_ms = performance.now();
    registration.addEventListener('updatefound', () => watch(registration.installing));
    watch(registration.installing);
    ask_newest();
    document.addEventListener('visibilitychange', () => {
      if (document.hidden || performance.now() - looked_ms < look_again_ms) return;
      looked_ms = performance.now();
      registration.update().catch(() => {});
    });
  }

  async function take() {
    await gs.store.idle();
    if (registration && newest()) newest().postMessage({ say: 'take' });
  }

  gs.install = { start, take };
}
