// The tally's lines, each a record of its own that is put away the moment it is made: in a database of their own, which
// confirms each line on the disk, and as the second copy in localStorage. Read before the program starts.
'use strict';
{
  const gs = globalThis.groundsheet;
  const run = gs.connection('groundsheet-tally', (database) => database.createObjectStore('lines'));
  const second_key = 'groundsheet.tally';
  const shape = /^(\d{1,15}) ([0-9a-f]{8}) (.*)$/;

  let lines = []; // of the last start, in order
  let last = 0; // number of the newest record
  let any = false; // of them
  let pending = Promise.resolve();

  const record_of = (number, text) => `${number} ${gs.checksum(`${number} ${text}`)} ${text}`;

  // [number, text] of a whole record, else nothing.
  function read_record(record) {
    const [, number, sum, text] = shape.exec(String(record)) || [];
    return number !== undefined && sum === gs.checksum(`${number} ${text}`) ? [Number(number), text] : undefined;
  }

  async function attempt(work) {
    try {
      return await work();
    } catch {
      return undefined; // the other copy has to do
    }
  }

  async function read_first() {
    const { records } = await run('readonly', (at, holder) => {
      at.objectStore('lines').getAll().onsuccess = (event) => (holder.records = event.target.result);
    });
    return records;
  }

  const second = () => attempt(() => (localStorage.getItem(second_key) || '').split('\n').filter(Boolean));

  // Both copies together: what either of them has whole.
  async function read() {
    const found = new Map();
    for (const copy of [await attempt(read_first), await second()]) {
      for (const record of copy || []) {
        const whole = read_record(record);
        if (whole) found.set(...whole);
      }
    }
    const in_order = [...found].sort(([a], [b]) => a - b);
    lines = in_order.map(([, text]) => text);
    any = in_order.length > 0;
    last = in_order.length ? in_order[in_order.length - 1][0] : 0;
  }

  function note(text) {
    const number = ++last;
    any = true;
    const record = record_of(number, text);
    pending = attempt(() => run('readwrite', (at) => at.objectStore('lines').put(record, number)));
    attempt(() => localStorage.setItem(second_key, `${localStorage.getItem(second_key) || ''}${record}\n`));
  }

  function forget() {
    if (!any) return;
    any = false;
    lines = [];
    const up_to = last; // a line that is noted meanwhile stays
    pending = attempt(() => run('readwrite', (at) => at.objectStore('lines').delete(IDBKeyRange.upperBound(up_to))));
    attempt(() => {
      const rest = (localStorage.getItem(second_key) || '').split('\n').filter((line) => Number.parseInt(line, 10) > up_to);
      if (rest.length) localStorage.setItem(second_key, `${rest.join('\n')}\n`);
      else localStorage.removeItem(second_key);
    });
  }

  gs.journal = { read, note, forget, noted: () => lines.join('\n'), idle: () => pending };
}
