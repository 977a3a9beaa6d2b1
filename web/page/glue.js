// The first script: the one global, and what both sides need to talk to each other.
'use strict';
globalThis.groundsheet = { ready: false };
{
  const gs = globalThis.groundsheet;
  const encoder = new TextEncoder();
  const types = { json: 'application/json', csv: 'text/csv' };
  const most_file_bytes = 4e6; // the program's own limit on files is lower and has its own words

  // A zero-terminated copy in the program's memory; the caller frees it.
  function to_heap(text) {
    const bytes = encoder.encode(text);
    const at = Module._gs_alloc(bytes.length + 1);
    Module.HEAPU8.set(bytes, at);
    Module.HEAPU8[at + bytes.length] = 0;
    return at;
  }

  // Calls use(pointer, size, pointer, size, ...) with the texts.
  function lend(texts, use) {
    const lent = texts.flatMap((text) => [to_heap(text), encoder.encode(text).length]);
    try {
      return use(...lent);
    } finally {
      for (let i = 0; i < lent.length; i += 2) Module._gs_free(lent[i]);
    }
  }

  // The window library's own handlers double taps and know no touch position; ours replace all of them.
  function drop_glfw_listeners(GLFW, canvas) {
    const on_window = {
      gamepadconnected: GLFW.onGamepadConnected, gamepaddisconnected: GLFW.onGamepadDisconnected,
      keydown: GLFW.onKeydown, keypress: GLFW.onKeyPress, keyup: GLFW.onKeyup, blur: GLFW.onBlur,
    };
    const on_canvas = {
      touchmove: GLFW.onMousemove, touchstart: GLFW.onMouseButtonDown, touchcancel: GLFW.onMouseButtonUp,
      touchend: GLFW.onMouseButtonUp, mousemove: GLFW.onMousemove, mousedown: GLFW.onMouseButtonDown,
      mouseup: GLFW.onMouseButtonUp, wheel: GLFW.onMouseWheel, mousewheel: GLFW.onMouseWheel,
      mouseenter: GLFW.onMouseenter, mouseleave: GLFW.onMouseleave, drop: GLFW.onDrop, dragover: GLFW.onDragover,
    };
    for (const [type, handler] of Object.entries(on_window)) window.removeEventListener(type, handler, true);
    for (const [type, handler] of Object.entries(on_canvas)) canvas.removeEventListener(type, handler, true);
  }

  function first_frame() {
    gs.ready = true;
    gs.boot.started();
  }

  async function copy_text(text) {
    try {
      await navigator.clipboard.writeText(text);
    } catch {
      const area = document.createElement('textarea');
      area.value = text;
      document.body.append(area);
      area.select();
      document.execCommand('copy');
      area.remove();
    }
  }

  const type_of = (name) => types[name.slice(name.lastIndexOf('.') + 1)] || 'text/plain';

  // Some systems hand on no JSON files, but all of them plain text; an outing opens under either name.
  function shareable(name, text) {
    const forms = [[name, type_of(name)], [`${name}.txt`, 'text/plain']];
    return forms.map(([as, type]) => new File([text], as, { type })).find((file) => navigator.canShare({ files: [file] }));
  }

  const can_share = () => Boolean(navigator.share && navigator.canShare && shareable('outing.json', '{}'));

  // The system's own sheet; true when it took the file or the person closed it.
  async function share(name, text) {
    const file = can_share() && shareable(name, text);
    if (!file) return false;
    try {
      await navigator.share({ files: [file] });
      return true;
    } catch (problem) {
      return problem.name === 'AbortError';
    }
  }

  async function share_file(name, text) {
    if (!(await share(name, text))) download(name, text);
  }

  async function save_file(name, text) {
    // An installed page on a tablet may have no download list: there the system's share sheet takes the file.
    const installed = matchMedia('(display-mode: standalone)').matches && matchMedia('(pointer: coarse)').matches;
    if (!installed || !(await share(name, text))) download(name, text);
  }

  function download(name, text) {
    const file = new File([text], name, { type: type_of(name) });
    const link = document.createElement('a');
    link.href = URL.createObjectURL(file);
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60e3);
  }

  function pick_file() {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = '.json,application/json,text/plain';
    input.addEventListener('change', async () => {
      const file = input.files[0];
      if (!file) return;
      const text = await file.slice(0, most_file_bytes).text();
      lend([file.name, text], Module._gs_file_picked);
    });
    input.click();
  }

  function open_page(page) {
    window.open(new URL(page, document.baseURI), '_blank', 'noopener');
  }

  Object.defineProperty(gs, 'frames', { get: () => (gs.ready ? Module._gs_frames() : 0) });
  gs.glue = { to_heap, lend, drop_glfw_listeners, first_frame, copy_text, save_file, can_share, share_file, pick_file, open_page };
}
