// Keeps outings, settings and the person's own things: read before the program starts, written behind its back, two copies
// each. Windows that are open at once follow each other; of two changes at the same time none is lost.
'use strict';
{
  const gs = globalThis.groundsheet;
  const { is_kind, noun, make_record, is_sound, second, marker } = gs.copies;
  const last_wins = new Set(['settings', 'open']); // small, and the person sees what became of it

  const texts = new Map(); // kind -> text
  const sequence = new Map(); // kind -> number of the newest record this window read or wrote
  const notes = new Set();
  const waiting = new Map(); // kind -> newest text that is not yet being written; null: to be taken away
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
      notes.add(`A damaged copy of the ${noun(kind)} was set aside; the other copy is in use.`);
    } else if (damaged) {
      notes.add(`What was kept of the ${noun(kind)} is damaged. It was set aside; the page kept.html shows its text.`);
    } else if (found.length && first && !first[kind]) {
      notes.add(`The browser lost one of the two copies of the ${noun(kind)}; the other copy is in use.`);
    }
    return { record: found[0], damaged };
  }

  async function read() {
    const first = await attempt(() => gs.database.read());
    const other = await attempt(() => second.read());
    let anything = false;
    for (const kind of new Set([...Object.keys(first.value || {}), ...Object.keys(other.value || {})])) {
      if (!is_kind(kind)) continue; // of a later version: left alone
      const { record, damaged } = await choose(kind, first.value, other.value);
      anything = anything || Boolean(record) || damaged > 0;
      if (!record) continue;
      texts.set(kind, record.text);
      sequence.set(kind, record.sequence);
      await complete(kind, record, first.value, other.value);
    }
    if (first.problem && other.problem) {
      notes.add('Nothing will be kept: this browser refuses storage here. Save the outing as a file before you leave.');
    } else if (first.problem || other.problem) {
      notes.add('This browser lets only one copy be kept instead of two.');
    }
    if (!anything && (await attempt(marker.is_set)).value) {
      notes.add('What was kept here is gone: the browser, or somebody, cleared it. A saved file can be opened again.');
    }
    if (!(await alone())) {
      notes.add('Groundsheet is open in another window too. The two follow each other; an outing that both change at the same ' +
        'moment is kept twice.');
    }
  }

  // Both copies hold the same again.
  async function complete(kind, record, first, other) {
    const behind = (copies) => copies && (!copies[kind] || copies[kind].sequence !== record.sequence);
    if (behind(first)) await attempt(() => gs.database.put(kind, record.text, record.sequence - 1, make_record, false));
    if (behind(other)) await attempt(() => second.write(kind, record));
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

  // The windows of this browser tell each other what they have kept. One that slept finds out when it writes.
  const others = globalThis.BroadcastChannel ? new BroadcastChannel('groundsheet-kept') : null;
  const tell_others = (kind, record) => others && others.postMessage({ kind, record });
  if (others) {
    others.onmessage = ({ data: { kind, record } }) => {
      if (!is_kind(kind) || (record && (!is_sound(kind, record) || record.sequence <= (sequence.get(kind) || 0)))) return;
      if (waiting.has(kind) || (in_flight && in_flight[0] === kind)) return; // the write itself settles it
      take_over(kind, record, false);
    };
  }

  // The program goes on from what the other window keeps. One that has not started yet was not told, and knows nothing of it.
  function take_over(kind, record, refused) {
    if (!gs.ready) return;
    if (record) {
      texts.set(kind, record.text);
      sequence.set(kind, record.sequence);
    } else {
      texts.delete(kind);
    }
    gs.glue.lend([kind, record ? record.text : ''], (key, key_size, text, size) =>
      Module._gs_kept_elsewhere(key, key_size, text, size, refused ? 1 : 0));
  }

  // True when at least one copy is safe, or another window's came first: then ours is put aside and the program told.
  async function write(kind, text) {
    if (text === null) return take_away(kind);
    const known = sequence.get(kind) || 0;
    const strict = !last_wins.has(kind);
    const first = await attempt(() => gs.database.put(kind, text, known, make_record, strict));
    let there = first.value && first.value.there;
    if (first.problem && strict) {
      const { value } = await attempt(() => second.read_one(kind));
      if (value && is_sound(kind, value) && value.sequence > known && value.text !== text) there = value;
    }
    if (there) {
      take_over(kind, there, true);
      return true;
    }
    const record = (first.value && first.value.record) || make_record(kind, known + 1, text);
    sequence.set(kind, record.sequence);
    const other = await attempt(() => second.write(kind, record));
    const ok = !first.problem || !other.problem;
    if (ok) tell_others(kind, record);
    if (!marked) {
      marked = true;
      await attempt(marker.set);
      ask_to_persist();
    }
    return ok;
  }

  async function take_away(kind) {
    const other = await attempt(() => second.remove(kind));
    const first = await attempt(() => gs.database.remove(kind, sequence.get(kind) || 0));
    tell_others(kind, null);
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

  function keep(kind, text) {
    texts.set(kind, text);
    waiting.set(kind, text);
    if (!busy) start_writing();
  }

  function remove(kind) {
    texts.delete(kind);
    waiting.set(kind, null);
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
    const now = (kind, text, steps) => text !== null &&
      attempt(() => second.write(kind, make_record(kind, (sequence.get(kind) || 0) + steps, text)));
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
    remove,
    keys: () => [...texts.keys()],
    kept: (kind) => texts.get(kind) || '',
    notes: () => [...notes].join('\n'),
    idle: async () => {
      while (busy) await idle;
    },
  };
}
