// Every pointer, wheel and key event on its way to the program, each exactly once. Figures are those of platform.h.
'use strict';
{
  const gs = globalThis.groundsheet;
  const stage = document.getElementById('stage');
  const kinds = { down: 0, move: 1, up: 2, cancel: 3 };
  const devices = { mouse: 0, touch: 1, pen: 2 };
  const keys = {
    Enter: 1, ' ': 2, Escape: 3, ArrowLeft: 4, ArrowRight: 5, ArrowUp: 6, ArrowDown: 7, PageUp: 8, PageDown: 9, Home: 10,
    End: 11, Backspace: 12,
  };
  const character_key = 13, undo_key = 14, redo_key = 15;
  const radio_steps = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 };
  const line_px = 16;
  const wander_px = 8; // as in app/parts/hand.cpp
  const echo_ms = 1000; // a click this soon after a pointer's press is that press's own

  let pressed = null; // id of the one pointer that is down
  let last_press_ms = -Infinity;
  let field_below = null; // the text field that the finger came down on, and where

  function send(kind, event) {
    if (!gs.ready) return;
    const device = devices[event.pointerType] ?? devices.mouse;
    Module._gs_pointer(kinds[kind], device, event.pointerId, event.clientX - gs.surface.left, event.clientY - gs.surface.top);
  }

  function release(kind, event) {
    pressed = null;
    last_press_ms = performance.now();
    send(kind, event);
  }

  const on_pointer = {
    pointerdown(event) {
      if (gs.fields.is_own(event)) return; // the browser's: caret, selection, its menu
      if (pressed !== null || event.button !== 0) return; // a second finger, another button
      gs.fields.leave(document.activeElement); // what was typed counts before what is pressed now
      field_below = gs.fields.is_field(event.target) ? { element: event.target, x: event.clientX, y: event.clientY } : null;
      pressed = event.pointerId;
      last_press_ms = performance.now();
      try {
        stage.setPointerCapture(event.pointerId);
      } catch {
        // a pointer made by a script has nothing to capture
      }
      send('down', event);
    },
    pointermove(event) {
      if (pressed === null) {
        if (event.pointerType !== 'touch') send('move', event);
      } else if (event.pointerId === pressed) {
        // With a second mouse button down the first one's release is told as a move.
        if (event.pointerType === 'mouse' && !(event.buttons & 1)) release('up', event);
        else send('move', event);
      }
    },
    pointerup(event) {
      if (event.pointerId !== pressed) return;
      release('up', event);
      // Some browsers show their keyboard only when the focus moves inside the finger's own event.
      const still = field_below && Math.hypot(event.clientX - field_below.x, event.clientY - field_below.y) <= wander_px;
      if (still) gs.fields.enter(field_below.element);
      field_below = null;
    },
    pointercancel(event) {
      if (event.pointerId === pressed) release('cancel', event);
    },
    lostpointercapture(event) {
      if (event.pointerId === pressed) release('cancel', event);
    },
    pointerout(event) {
      // The mouse has left the window: nothing is under it any more.
      if (pressed === null && event.pointerType !== 'touch' && !event.relatedTarget) send('cancel', event);
    },
  };

  function on_click(event) {
    if (gs.fields.is_own(event) && event.detail !== 0) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    const id = gs.mirror.id_of(event.target);
    // A keyboard's click has no count. Assistive technology may click with a count but without a pointer before it.
    const echo = event.detail !== 0 && performance.now() - last_press_ms < echo_ms;
    if (gs.ready && id !== undefined && !echo) gs.mirror.act(id, 'press');
  }

  function on_wheel(event) {
    if (event.ctrlKey) return; // the browser's zoom
    event.preventDefault();
    event.stopImmediatePropagation();
    if (!gs.ready) return;
    const scale = [1, line_px, stage.clientHeight][event.deltaMode];
    Module._gs_wheel(
      event.clientX - gs.surface.left, event.clientY - gs.surface.top, event.deltaX * scale, event.deltaY * scale);
  }

  // [key, code point] for the program, or nothing.
  function key_of(event) {
    if (event.ctrlKey || event.metaKey) {
      const letter = event.key.toLowerCase();
      if (letter === 'z') return [event.shiftKey ? redo_key : undo_key, 0];
      return letter === 'y' ? [redo_key, 0] : null;
    }
    if (keys[event.key] !== undefined) return [keys[event.key], 0];
    return [...event.key].length === 1 ? [character_key, event.key.codePointAt(0)] : null;
  }

  function on_key(event) {
    if (!gs.ready || event.altKey || event.isComposing) return;
    const element = document.activeElement || document.body;
    const id = gs.mirror.id_of(element);
    if (id === undefined && element !== document.body) return;
    if (gs.fields.is_field(element)) return void gs.fields.on_key(event);
    const is_button = element.localName === 'button';
    const plain = !event.ctrlKey && !event.metaKey;
    if (is_button && plain && (event.key === 'Enter' || event.key === ' ')) {
      if (event.repeat) event.preventDefault();
      return; // becomes a click
    }
    if (plain && element.getAttribute('role') === 'radio' && radio_steps[event.key]) {
      event.preventDefault();
      gs.mirror.step_radio(element, radio_steps[event.key]);
      return;
    }
    const key = key_of(event);
    if (!key) return;
    event.preventDefault();
    Module._gs_key(key[0], event.shiftKey ? 1 : 0, key[1]);
  }

  function swallow(event) {
    if (gs.fields.is_own(event)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  }

  function listen() {
    const options = { capture: true, passive: false };
    for (const [type, handler] of Object.entries(on_pointer)) stage.addEventListener(type, handler, options);
    // No compatibility mouse events, no double clicks, no focus or dragging by the elements of the mirror themselves.
    for (const type of ['touchstart', 'touchmove', 'touchend', 'touchcancel', 'mousedown', 'mouseup', 'dblclick', 'auxclick',
      'contextmenu', 'dragstart', 'selectstart']) stage.addEventListener(type, swallow, options);
    stage.addEventListener('click', on_click, options);
    stage.addEventListener('wheel', on_wheel, options);
    document.addEventListener('keydown', on_key, true);
    window.addEventListener('blur', () => {
      if (pressed !== null) release('cancel', { pointerId: pressed, clientX: 0, clientY: 0 });
    });
  }

  gs.input = { listen };
}
