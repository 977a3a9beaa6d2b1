// Starts the program, or says in words why it cannot and shows what is kept.
'use strict';
{
  const gs = globalThis.groundsheet;
  const stage = document.getElementById('stage');
  const canvas = document.getElementById('canvas');
  const page_of_words = document.getElementById('words');
  const restore_limit_ms = 3000;
  const surface_wishes = { alpha: false, depth: false, stencil: false, antialias: false, powerPreference: 'low-power' };
  const file = (name) => document.querySelector(`meta[name="app-${name}"]`);
  let failed = false;
  let patience = 0;

  function show_words(on) {
    stage.hidden = on;
    page_of_words.hidden = !on;
  }

  function paragraph(text) {
    const line = document.createElement('p');
    line.textContent = text;
    return line;
  }

  // One page of words: what is missing, what to do, and the kept texts.
  function words(sentences) {
    const again = document.createElement('button');
    again.textContent = 'Start again';
    again.addEventListener('click', () => location.reload());
    const state = document.createElement('div');
    state.id = 'state';
    state.setAttribute('role', 'alert');
    state.append(...sentences.map(paragraph), again);
    document.getElementById('state').replaceWith(state);
    show_words(true);
    gs.texts.show(document.getElementById('kept'));
  }

  function fail(...sentences) {
    if (failed) return;
    failed = true;
    gs.ready = false;
    words(sentences);
  }

  const no_wasm = [
    'Groundsheet cannot start: WebAssembly is missing or blocked in this browser.',
    'Use a current browser, or allow WebAssembly for this page (a lockdown or security setting may forbid it).'];
  const no_surface = [
    'Groundsheet cannot start: this browser gives no WebGL 2 drawing surface.',
    'Use a current browser, switch its graphics acceleration on, or close other pages that draw much.'];
  const not_loaded = [
    'Groundsheet cannot start: a part of the program did not arrive whole.',
    'Connect to the network once and start again. What you keep here is not touched.'];
  const taken_away = [
    'The system took the drawing surface away and has not given it back.',
    'Start again. What was on screen is kept.'];
  const stopped = [
    'The program stopped because of a fault in it.',
    'Start again. What was on screen is kept; the text below can be copied or saved first.'];

  async function compile() {
    const meta = file('wasm');
    const answer = await fetch(meta.content, { integrity: meta.dataset.integrity, credentials: 'same-origin' });
    if (!answer.ok) throw new Error(`${meta.content}: ${answer.status}`);
    // Compiling while it arrives needs the right type from the host; a host that does not know it is no reason to fail.
    const streams = WebAssembly.compileStreaming && answer.headers.get('Content-Type') === 'application/wasm';
    return streams ? WebAssembly.compileStreaming(answer) : WebAssembly.compile(await answer.arrayBuffer());
  }

  function load_script() {
    const meta = file('script');
    const script = document.createElement('script');
    script.src = meta.content;
    if (meta.dataset.integrity) script.integrity = meta.dataset.integrity;
    script.addEventListener('error', () => fail(...not_loaded));
    document.head.append(script);
  }

  function on_fault(problem) {
    const inside = globalThis.WebAssembly && (problem instanceof WebAssembly.RuntimeError || typeof problem === 'number');
    if (inside) fail(...stopped);
  }

  async function start() {
    window.addEventListener('error', (event) => on_fault(event.error));
    window.addEventListener('unhandledrejection', (event) => on_fault(event.reason));
    if (typeof WebAssembly !== 'object' || typeof WebAssembly.compile !== 'function') return fail(...no_wasm);
    // The program asks the same canvas for a surface later and gets this one.
    if (!canvas.getContext('webgl2', surface_wishes)) return fail(...no_surface);
    const reading = Promise.all([gs.store.read(), gs.journal.read()]);
    let compiled;
    try {
      compiled = await compile();
    } catch (problem) {
      return fail(...(problem instanceof WebAssembly.CompileError ? no_wasm : not_loaded));
    }
    await reading;
    stage.hidden = false; // under the words until the first frame is there
    globalThis.Module = {
      canvas,
      instantiateWasm(imports, receive) {
        WebAssembly.instantiate(compiled, imports).then(receive, () => fail(...not_loaded));
        return {};
      },
      onAbort: () => fail(...stopped),
      locateFile: () => file('wasm').content,
    };
    load_script();
  }

  function started() {
    show_words(false);
    gs.surface.follow();
    gs.input.listen();
    gs.install.start();
  }

  function context(lost) {
    clearTimeout(patience);
    if (lost) patience = setTimeout(() => words(taken_away), restore_limit_ms);
    else if (!failed) show_words(false);
  }

  gs.build = file('build').content;
  gs.boot = { fail: (text) => fail(`Groundsheet cannot start. ${text}`, ...no_surface.slice(1)), started, context };
  start();
}
