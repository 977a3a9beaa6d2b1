// What a record is, the second copy (localStorage), and the marker that outlives both copies when a browser clears them.
'use strict';
{
  const gs = globalThis.groundsheet;
  const shape_of_kind = /^(outing(-[1-9]\d{0,7})?|bin-[1-9]\d{0,7}|settings|things|history|open)$/; // app/store/key.cpp
  const prefix = 'groundsheet.';
  const aside_prefix = 'groundsheet.aside.';
  const marker_cache = 'groundsheet-marker';
  const marker_address = './kept-marker';

  const is_kind = (kind) => shape_of_kind.test(kind);
  /** How a sentence calls it: "outing" for "outing-7". */
  const noun = (kind) => kind.replace(/-.*/, '');

  function make_record(kind, sequence, text) {
    return { sequence, sum: gs.checksum(`${kind} ${sequence} ${text}`), text };
  }

  function is_sound(kind, record) {
    if (!record || !Number.isSafeInteger(record.sequence) || typeof record.text !== 'string') return false;
    return record.sum === make_record(kind, record.sequence, record.text).sum;
  }

  // "sequence sum text"; anything else comes back as a record that is not sound.
  function read_line(line) {
    const [, sequence, sum, text] = /^(\d{1,15}) ([0-9a-f]{8}) ([^]*)$/.exec(line) || [];
    return sequence === undefined ? { sequence: 0, sum: '', text: line } : { sequence: Number(sequence), sum, text };
  }

  const second = {
    read() {
      const records = {};
      for (let i = 0; i < localStorage.length; ++i) {
        const key = localStorage.key(i);
        const kind = key.startsWith(prefix) ? key.slice(prefix.length) : '';
        if (is_kind(kind)) records[kind] = read_line(localStorage.getItem(key));
      }
      localStorage.getItem(prefix); // a browser that refuses storage says so even where nothing is kept
      return records;
    },
    read_one(kind) {
      const line = localStorage.getItem(prefix + kind);
      return line === null ? undefined : read_line(line);
    },
    write(kind, record) {
      localStorage.setItem(prefix + kind, `${record.sequence} ${record.sum} ${record.text}`);
    },
    remove(kind) {
      localStorage.removeItem(prefix + kind);
    },
    // One place a kind: the newest damaged line.
    set_aside(kind) {
      localStorage.setItem(aside_prefix + kind, localStorage.getItem(prefix + kind));
      localStorage.removeItem(prefix + kind);
    },
    read_aside() {
      const found = [];
      for (let i = 0; i < localStorage.length; ++i) {
        const key = localStorage.key(i);
        if (!key.startsWith(aside_prefix)) continue;
        found.push({ kind: key.slice(aside_prefix.length), why: 'damaged', record: { text: localStorage.getItem(key) } });
      }
      return found;
    },
  };

  const marker = {
    async is_set() {
      return Boolean(globalThis.caches && (await caches.match(marker_address, { cacheName: marker_cache })));
    },
    async set() {
      if (!globalThis.caches) return;
      await (await caches.open(marker_cache)).put(marker_address, new Response('something was kept here'));
    },
  };

  gs.copies = { is_kind, noun, make_record, is_sound, second, marker };
}
