// Keeps the outing and the settings: read before the program starts, written behind its back, two copies each.
'use strict';
{
  const gs = globalThis.groundsheet;
  const { kinds, make_record, is_sound, second, marker } = gs.copies;

  const texts = { outing: '', settings: '' };
  const sequence = { outing: 0, settings: 0 }; // of the newest record this window read or wrote
  const notes = [];
  const waiting = new Map(); // kind -> newest text that is not yet being written
  let in_flight = null; // [kind, text]
  let idle = Promise.resolve();
  let busy = false;
  let marked = false;

  async function attempt(work) {
    try {
      return { value: await work() };
    } catch (problem) {
      return { problem };
    }
  }

  // The newest sound record of the two copies; unsound ones are set aside. A copy that cannot be read at all is undefined.
  async function choose(kind, first, other) {
    const found = [];
    let damaged = 0;
    const weigh = async (record, set_aside) => {
      if (!record) return;
      if (is_sound(kind, record)) return void found.push(record);
      ++damaged;
      await attempt(set_aside);
    };
    await weigh(first && first[kind], () => gs.database.set_aside(kind, first[kind]));
    await weigh(other && other[kind], () => second.set_aside(kind));
    found.sort((a, b) => b.sequence - a.sequence);
    if (damaged && found.length) {
      notes.push(`A damaged copy of the ${kind} was set aside; the other copy is in use.`);
    } else if (damaged) {
      notes.push(`What was kept of the ${kind} is damaged. It was set aside; the page kept.html shows its text.`);
    } else if (found.length && first && !first[kind]) {
      notes.push(`The browser lost one of the two copies of the ${kind}; the other copy is in use.`);
    }
    return { record: found[0], damaged };
  }

  async function read() {
    const first = await attempt(() => gs.database.read());
    const other = await attempt(() => second.read());
    let anything = false;
    for (const kind of kinds) {
      const { record, damaged } = await choose(kind, first.value, other.value);
      if (record) [texts[kind], sequence[kind]] = [record.text, record.sequence];
      anything = anything || Boolean(record) || damaged > 0;
    }
    if (first.problem && other.problem) {
      notes.push('Nothing will be kept: this browser refuses storage here. Save the outing as a file before you leave.');
    } else if (first.problem || other.problem) {
      notes.push('This browser lets only one copy be kept instead of two.');
    }
    if (!anything && (await attempt(marker.is_set)).value) {
      notes.push('What was kept here is gone: the browser, or somebody, cleared it. A saved file can be opened again.');
    }
    if (!(await alone())) {
      notes.push('Groundsheet is open in another window too. Change the outing in one of them only: the last change wins.');
    }
  }

  // Holds a lock for as long as this window lives. A reload may meet its own old lock, so ask twice.
  async function alone() {
    if (!navigator.locks) return true;
    const take = () => new Promise((resolve) => {
      navigator.locks.request('groundsheet-window', { ifAvailable: true }, (lock) => {
        resolve(Boolean(lock));
        return lock ? new Promise(() => {}) : undefined;
      }).catch(() => resolve(true));
    });
    if (await take()) return true;
    await new Promise((resolve) => setTimeout(resolve, 300));
    return take();
  }

  // True when at least one copy is safe.
  async function write(kind, text) {
    const first = await attempt(() => gs.database.put(kind, text, sequence[kind], make_record));
    const record = first.value || make_record(kind, sequence[kind] + 1, text);
    sequence[kind] = record.sequence;
    const other = await attempt(() => second.write(kind, record));
    if (!marked) {
      marked = true;
      await attempt(marker.set);
      ask_to_persist();
    }
    return !first.problem || !other.problem;
  }

  async function write_all() {
    let ok = true;
    while (waiting.size) {
      const [kind, text] = waiting.entries().next().value;
      waiting.delete(kind);
      in_flight = [kind, text];
      ok = (await write(kind, text)) && ok;
      in_flight = null;
    }
    if (gs.ready) Module._gs_stored(ok ? 1 : 0);
  }

  function keep(which, text) {
    texts[kinds[which]] = text;
    waiting.set(kinds[which], text);
    if (!busy) start_writing();
  }

  function start_writing() {
    busy = true;
    idle = write_all().finally(() => {
      busy = false;
      if (waiting.size) start_writing();
    });
  }

  // The page may be ended without another word: what has not reached the database goes to the second copy at once.
  function hurry() {
    const now = (kind, text, steps) => attempt(() => second.write(kind, make_record(kind, sequence[kind] + steps, text)));
    if (in_flight) now(...in_flight, 1);
    for (const [kind, text] of waiting) now(kind, text, in_flight && in_flight[0] === kind ? 2 : 1);
  }
  document.addEventListener('visibilitychange', () => document.hidden && hurry());
  window.addEventListener('pagehide', hurry);

  // Once in this browser's life: some browsers show the person a question.
  async function ask_to_persist() {
    await attempt(async () => {
      if (!navigator.storage || !navigator.storage.persist || localStorage.getItem('groundsheet.asked')) return;
      localStorage.setItem('groundsheet.asked', 'persist');
      await navigator.storage.persist();
    });
  }

  gs.store = {
    read,
    keep,
    kept: (which) => (which < kinds.length ? texts[kinds[which]] : notes.join('\n')),
    idle: async () => {
      while (busy) await idle;
    },
  };
}
