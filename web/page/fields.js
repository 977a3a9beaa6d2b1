// Text fields: real inputs that lie exactly over the drawn ones, seen while they have the keyboard. Caret, selection, soft
// keyboard, composing, dictation and paste are the browser's; the program hears every change and how it ends.
'use strict';
{
  const gs = globalThis.groundsheet;
  const verbs = { type: 4, commit: 5, cancel: 6 }; // platform.h
  const air_px = 12; // between a field and the keyboard
  const composing_code = 229; // what some keyboards send for every key while they compose
  const fields = new WeakMap(); // element -> { id, value: what the program last said, edited }
  let open = null; // the field that has the keyboard

  const is_field = (element) => fields.has(element);
  /** The field that is being typed in answers to the browser alone. */
  const is_own = (event) => open !== null && event.target === open;
  const tell = (field, verb, text) =>
    gs.glue.lend([field.id, text], (at, size, text_at, text_size) => Module._gs_text(at, size, text_at, text_size, verbs[verb]));

  function adopt(element, id) {
    const lines = element.localName === 'textarea';
    if (!lines) element.type = 'text';
    element.className = 'hand field';
    element.autocomplete = 'off';
    element.spellcheck = false;
    element.enterKeyHint = lines ? 'enter' : 'done';
    for (const [name, value] of [['autocapitalize', 'off'], ['autocorrect', 'off']]) {
      element.setAttribute(name, value);
    }
    fields.set(element, { id, value: '', edited: false });
    element.addEventListener('input', () => {
      const field = fields.get(element);
      field.edited = true;
      tell(field, 'type', element.value);
    });
    element.addEventListener('focus', () => {
      open = element;
      if (!lines) element.select();
      keep_in_sight();
    });
    element.addEventListener('blur', () => {
      if (open === element) open = null;
      keep_in_sight();
      finish(element);
    });
  }

  function show(element, value, most, trouble) {
    const field = fields.get(element);
    field.value = value;
    if (!field.edited && element.value !== value) element.value = value;
    if (element.maxLength !== most) element.maxLength = most;
    const say = (name, text) => (text ? element.setAttribute(name, text) : element.removeAttribute(name));
    say('aria-invalid', trouble ? 'true' : '');
    say('aria-description', trouble);
  }

  // Colours and size of letters are those of the program's theme.
  let dressed = '';
  function dress(root, skin) {
    if (!skin || skin.join() === dressed) return;
    dressed = skin.join();
    const [ink, paper, edge, letter] = skin;
    for (const [name, value] of [['ink', ink], ['paper', paper], ['edge', edge], ['letter', `${letter}px`]]) {
      root.style.setProperty(`--field-${name}`, value);
    }
  }

  // What was typed counts. Never inside a call of the program's own: a field may go while the program shows its tree.
  function finish(element) {
    const field = fields.get(element);
    if (!field || !field.edited) return;
    field.edited = false;
    const text = element.value;
    if (gs.mirror.is_showing()) queueMicrotask(() => gs.ready && tell(field, 'commit', text));
    else if (gs.ready) tell(field, 'commit', text);
  }

  function enter(element) {
    element.focus({ preventScroll: true });
  }

  function leave(element) {
    if (!fields.has(element)) return;
    finish(element);
    if (document.activeElement === element) element.blur();
  }

  function on_key(event) {
    const element = event.target;
    const field = fields.get(element);
    if (event.isComposing || event.keyCode === composing_code) return;
    if (event.key === 'Enter' && element.localName === 'textarea') {
      // a new line, and the browser's
    } else if (event.key === 'Enter') {
      event.preventDefault();
      finish(element);
      // A finger's keyboard goes away; a desk's stays where it is.
      if (matchMedia('(pointer: coarse)').matches) element.blur();
      else element.select();
    } else if (event.key === 'Escape') {
      event.preventDefault();
      const had = field.edited || element.hasAttribute('aria-invalid');
      field.edited = false;
      element.value = field.value;
      tell(field, 'cancel', '');
      if (!had) element.blur();
    }
  }

  // The system's keyboard may cover the field: the surface is lifted by what is missing.
  function keep_in_sight() {
    const seen = window.visualViewport;
    if (!seen) return;
    if (!open || Math.abs(seen.scale - 1) > 0.01) return gs.surface.lift(0);
    gs.surface.lift(0);
    const below = open.getBoundingClientRect().bottom + air_px - (seen.offsetTop + seen.height);
    gs.surface.lift(Math.max(0, Math.round(below)));
  }
  if (window.visualViewport) window.visualViewport.addEventListener('resize', keep_in_sight);

  // The page may be ended without another word.
  document.addEventListener('visibilitychange', () => document.hidden && open && finish(open));
  window.addEventListener('pagehide', () => open && finish(open));

  gs.fields = { adopt, show, dress, is_field, is_own, enter, leave, on_key };
}
