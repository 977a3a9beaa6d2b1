// The drawing surface's size in CSS and in device px, the safe area, and the wish for little motion.
'use strict';
{
  const gs = globalThis.groundsheet;
  const stage = document.getElementById('stage');
  const canvas = document.getElementById('canvas');
  const insets = document.getElementById('insets');
  const calm = matchMedia('(prefers-reduced-motion: reduce)');
  let exact = null; // device px as the browser's layout has them, where it tells
  let last = '';

  function device_size(box, ratio) {
    const rounded = [Math.round(box.width * ratio), Math.round(box.height * ratio)];
    if (!exact || exact.ratio !== ratio || exact.width !== box.width || exact.height !== box.height) return rounded;
    // Layout may place an edge one device px off; more than that is a browser that imitates another ratio.
    const near = exact.device.every((px, i) => Math.abs(px - rounded[i]) <= 1);
    return near ? exact.device : rounded;
  }

  function measure() {
    const box = stage.getBoundingClientRect();
    if (!box.width || !box.height) return; // hidden behind the page of words
    const ratio = window.devicePixelRatio || 1;
    const [wide, high] = device_size(box, ratio);
    const edge = getComputedStyle(insets);
    const safe = ['Left', 'Top', 'Right', 'Bottom'].map((side) => parseFloat(edge['padding' + side]) || 0);
    const state = [box.width, box.height, wide, high, ratio, ...safe, calm.matches ? 1 : 0];
    gs.surface.left = box.left;
    gs.surface.top = box.top;
    if (state.join() === last) return;
    last = state.join();
    if (canvas.width !== wide) canvas.width = wide;
    if (canvas.height !== high) canvas.height = high;
    Module._gs_resize(...state);
  }

  // Moves the whole surface up by some px, so that what stands low stays above the system's keyboard. Nothing is laid out
  // anew: a field that moved to another place in the page would lose the keyboard.
  let lifted = 0;
  function lift(px) {
    if (px === lifted) return;
    lifted = px;
    stage.style.transform = px ? `translateY(${-px}px)` : '';
    if (gs.ready) measure();
  }

  function when_running(measure_now) {
    if (gs.ready) measure_now();
  }

  function follow_ratio() {
    const query = matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`);
    query.addEventListener('change', () => {
      when_running(measure);
      follow_ratio();
    }, { once: true });
  }

  function follow() {
    const observer = new ResizeObserver((entries) => {
      const entry = entries[entries.length - 1];
      const pixels = entry.devicePixelContentBoxSize && entry.devicePixelContentBoxSize[0];
      if (pixels) {
        const box = stage.getBoundingClientRect();
        exact = {
          ratio: window.devicePixelRatio, width: box.width, height: box.height,
          device: [pixels.inlineSize, pixels.blockSize],
        };
      }
      when_running(measure);
    });
    try {
      observer.observe(stage, { box: 'device-pixel-content-box' });
    } catch {
      observer.observe(stage);
    }
    follow_ratio();
    calm.addEventListener('change', () => when_running(measure));
    window.addEventListener('resize', () => when_running(measure));
    if (window.visualViewport) window.visualViewport.addEventListener('resize', () => when_running(measure));
    document.addEventListener('visibilitychange', () => {
      if (!document.hidden && gs.ready) {
        measure();
        Module._gs_wake(2); // some browsers drop what was drawn while the page was out of sight
      }
    });
  }

  gs.surface = { measure, follow, lift, left: 0, top: 0 };
}
