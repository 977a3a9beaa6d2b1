// Real elements over the canvas, unseen, one for each record of the program's tree: for screen readers, keyboards and tests.
'use strict';
{
  const gs = globalThis.groundsheet;
  const root = document.getElementById('mirror');
  const announcer = document.getElementById('announce');
  const verbs = { press: 0, set: 1, focus: 2, blur: 3 }; // platform.h; texts: fields.js
  const announce_every_ms = 1000;

  const tags = { button: 'button', radio: 'button', checkbox: 'button', slider: 'input', textbox: 'input', main: 'main', text: 'p' };
  const words = { heading: '', text: '', slider: '', textbox: '', button: '', main: '', image: 'img' }; // '': the tag says it
  const boxes = new Set(['banner', 'navigation', 'main', 'group', 'list', 'dialog', 'radiogroup', 'table', 'row']);
  const cells = new Set(['listitem', 'columnheader', 'cell']); // text of their own, or children, or both
  const hands = new Set(['button', 'slider', 'radio', 'checkbox', 'textbox']);

  const shown = new Map(); // id -> what make() gives, and the node as last shown
  const ids = new WeakMap(); // element -> id
  let wanted_focus = ''; // the program's, as last told
  let moving_focus = false; // ours: the program knows already
  let showing = false; // the program has called and is waiting
  let title = '';

  const act = (id, verb, number = 0) => gs.glue.lend([id], (at, size) => Module._gs_act(at, size, verbs[verb], number));

  function set(element, name, value) {
    if (value === undefined || value === null || value === '') {
      if (element.hasAttribute(name)) element.removeAttribute(name);
    } else if (element.getAttribute(name) !== String(value)) {
      element.setAttribute(name, value);
    }
  }

  // A list may hold nothing but list items: other children get one around them.
  const needs_item = (node, parent) => Boolean(parent) && parent.role === 'list' && node.role !== 'listitem';

  function wrap(element) {
    const item = document.createElement('div');
    item.setAttribute('role', 'listitem');
    item.className = 'box';
    item.append(element);
    return item;
  }

  function make(node, parent) {
    const tag = node.role === 'heading' ? `h${node.level || 2}` : node.lines ? 'textarea' : tags[node.role] || 'div';
    const element = document.createElement(tag);
    const role = words[node.role] ?? node.role;
    if (role) element.setAttribute('role', role);
    if (tag === 'button') element.type = 'button';
    if (node.role === 'slider') element.type = 'range';
    if (node.role === 'status') element.setAttribute('aria-live', 'off'); // the one announcer below speaks
    if (hands.has(node.role)) element.className = 'hand';
    if (node.role === 'textbox') gs.fields.adopt(element, node.id);
    if (boxes.has(node.role)) element.className = 'box';
    const own = cells.has(node.role) ? element.appendChild(document.createTextNode('')) : null;
    ids.set(element, node.id);
    const wrapped = needs_item(node, parent);
    return { element, outer: wrapped ? wrap(element) : element, wrapped, own, role: node.role, level: node.level };
  }

  function say(entry, node) {
    const { element } = entry;
    const set_text = (holder, text) => holder.textContent !== text && (holder.textContent = text);
    const name = node.name || '';
    const value = node.value || '';
    switch (node.role) {
      case 'slider':
        set(element, 'aria-label', name);
        set(element, 'aria-valuetext', value);
        set(element, 'min', node.min ?? 0);
        set(element, 'max', node.max ?? 0);
        set(element, 'step', 'any'); // a value typed or asked for is set as it is; the program knows its own steps
        if (element.value !== String(node.now ?? 0)) element.value = node.now ?? 0;
        break;
      case 'textbox':
        set(element, 'aria-label', name);
        gs.fields.show(element, value, node.max, node.trouble);
        break;
      case 'image':
        set(element, 'aria-label', value ? `${name}: ${value}` : name);
        break;
      case 'status':
        set(element, 'aria-label', value ? name : '');
        set_text(element, value || name);
        break;
      case 'listitem':
      case 'columnheader':
      case 'cell':
        set_text(entry.own, value ? `${name}: ${value}` : name);
        break;
      case 'button':
      case 'radio':
      case 'checkbox':
        set(element, 'aria-description', value);
        set_text(element, name);
        break;
      case 'heading':
      case 'text':
        set_text(element, value ? `${name}: ${value}` : name);
        break;
      default:
        set(element, 'aria-label', name);
        set(element, 'aria-description', value);
    }
    const choice = node.role === 'radio' || node.role === 'checkbox';
    set(element, 'aria-checked', choice ? Boolean(node.checked) : '');
    set(element, 'aria-pressed', node.role === 'button' && node.checked !== undefined ? Boolean(node.checked) : '');
    set(element, 'aria-expanded', node.expanded === undefined ? '' : Boolean(node.expanded));
    set(element, 'aria-current', node.current ? 'true' : '');
    if (hands.has(node.role)) element.disabled = Boolean(node.disabled);
    else set(element, 'aria-disabled', node.disabled ? 'true' : '');
  }

  function place(entry, node, parent) {
    const [x, y] = [node.x || 0, node.y || 0];
    const style = entry.element.style;
    const put = (name, figure) => {
      const text = `${Math.round(figure * 100) / 100}px`;
      if (style[name] !== text) style[name] = text;
    };
    put('left', x - (parent ? parent.x || 0 : 0));
    put('top', y - (parent ? parent.y || 0 : 0));
    put('width', node.w || 0);
    put('height', node.h || 0);
    const [top, bottom] = node.cut || [0, 0];
    const clip = node.cut ? `inset(${top}px 0px ${bottom}px)` : '';
    if (entry.clip !== clip) style.clipPath = entry.clip = clip;
  }

  // Puts the children of one element in order without moving those that stand right: a moved element loses the focus.
  function order(parent, children) {
    let next = parent.firstChild;
    while (next && next.nodeType === Node.TEXT_NODE) next = next.nextSibling;
    for (const child of children) {
      if (child === next) next = next.nextSibling;
      else parent.insertBefore(child, next);
    }
  }

  // One tab stop for a group of radio buttons: the chosen one, or the first.
  function set_tab_stops(by_parent) {
    for (const children of by_parent.values()) {
      const radios = children.filter((node) => node.role === 'radio');
      const stop = radios.find((node) => node.checked) || radios[0];
      for (const node of radios) set(shown.get(node.id).element, 'tabindex', node === stop ? '' : '-1');
    }
  }

  function show(tree) {
    const had_focus = document.activeElement;
    const nodes = tree.nodes || [];
    const by_id = new Map(nodes.map((node) => [node.id, node]));
    const by_parent = new Map([['', []]]);
    moving_focus = showing = true;
    for (const [id, entry] of shown) {
      const node = by_id.get(id);
      const same = node && node.role === entry.role && node.level === entry.level;
      if (same && entry.wrapped === needs_item(node, by_id.get(node.parent))) continue;
      gs.fields.leave(entry.element);
      entry.outer.remove();
      shown.delete(id);
    }
    for (const node of nodes) {
      const parent = by_id.has(node.parent) ? node.parent : '';
      if (!by_parent.has(parent)) by_parent.set(parent, []);
      by_parent.get(parent).push(node);
      let entry = shown.get(node.id);
      if (!entry) shown.set(node.id, (entry = make(node, by_id.get(parent))));
      if (node.live && entry.node && (entry.node.name !== node.name || entry.node.value !== node.value)) announce(node);
      say(entry, node);
      place(entry, node, by_id.get(parent));
      entry.node = node;
    }
    for (const [parent, children] of by_parent) {
      order(parent ? shown.get(parent).element : root, children.map((node) => shown.get(node.id).outer));
    }
    set_tab_stops(by_parent);
    gs.fields.dress(root, tree.skin);
    if (tree.title && tree.title !== title) document.title = title = tree.title;
    follow_focus(tree.focus || '', had_focus);
    moving_focus = showing = false;
  }

  function follow_focus(focus, had_focus) {
    const at = ids.get(document.activeElement) || '';
    const entry = shown.get(focus);
    if (focus !== wanted_focus && focus !== at) {
      if (entry) take_focus(entry.element);
      else if (at && at === wanted_focus) document.activeElement.blur();
    } else if (had_focus !== document.activeElement && had_focus.isConnected && ids.has(had_focus)) {
      take_focus(had_focus);
    } else if (entry && focus !== at && !at && !had_focus.isConnected) {
      take_focus(entry.element); // the element was made anew
    }
    wanted_focus = focus;
  }

  function take_focus(element) {
    if (!element.matches('.hand')) element.tabIndex = -1;
    element.focus({ preventScroll: true });
  }

  // Changes of live texts: spoken together, at most once a second, the newest words of each.
  const to_say = new Map();
  let speaking = 0;
  let spoken_at = -Infinity;
  function announce(node) {
    to_say.set(node.id, node.value ? `${node.name}: ${node.value}` : node.name);
    if (speaking) return;
    speaking = setTimeout(() => {
      speaking = 0;
      spoken_at = performance.now();
      announcer.textContent = [...to_say.values()].join('. ');
      to_say.clear();
    }, Math.max(150, spoken_at + announce_every_ms - performance.now()));
  }

  // Arrow keys inside a group of radio buttons move and choose, as everywhere.
  function step_radio(element, step) {
    const group = [...element.parentElement.children].filter((other) => other.getAttribute('role') === 'radio' && !other.disabled);
    const next = group[(group.indexOf(element) + step + group.length) % group.length];
    take_focus(next);
    act(ids.get(next), 'press');
  }

  root.addEventListener('focusin', (event) => moving_focus || act(ids.get(event.target), 'focus'));
  root.addEventListener('focusout', (event) => moving_focus || act(ids.get(event.target), 'blur'));
  root.addEventListener('input', (event) => {
    if (event.target.type === 'range') act(ids.get(event.target), 'set', Number(event.target.value));
  });
  root.addEventListener('scroll', () => root.scrollTo(0, 0), true);

  const text_of = (id) => {
    const element = shown.get(id)?.element;
    return element && (element.getAttribute('aria-label') || element.textContent);
  };

  const is_showing = () => showing;
  gs.mirror = { show, act, is_showing, step_radio, id_of: (element) => ids.get(element), text_of };
}
