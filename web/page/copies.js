// What a record is, the second copy (localStorage), and the marker that outlives both copies when a browser clears them.
'use strict';
{
  const gs = globalThis.groundsheet;
  const kinds = ['outing', 'settings'];
  const marker_cache = 'groundsheet-marker';
  const marker_address = './kept-marker';

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
      for (const kind of kinds) {
        const line = localStorage.getItem(`groundsheet.${kind}`);
        if (line !== null) records[kind] = read_line(line);
      }
      return records;
    },
    write(kind, record) {
      localStorage.setItem(`groundsheet.${kind}`, `${record.sequence} ${record.sum} ${record.text}`);
    },
    // One place a kind: the newest damaged line.
    set_aside(kind) {
      const line = localStorage.getItem(`groundsheet.${kind}`);
      localStorage.setItem(`groundsheet.aside.${kind}`, line);
      localStorage.removeItem(`groundsheet.${kind}`);
    },
    read_aside() {
      return kinds.flatMap((kind) => {
        const line = localStorage.getItem(`groundsheet.aside.${kind}`);
        return line === null ? [] : [{ kind, why: 'damaged', record: { text: line } }];
      });
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

  gs.copies = { kinds, make_record, is_sound, second, marker };
}
