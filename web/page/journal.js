// The tally's lines, each a record of its own that is put away the moment it is made: in a database of their own, which
// confirms each line on the disk, and as the second copy in localStorage. Read before the program starts.
'use strict';
{
  const gs = globalThis.groundsheet;
  const open_limit_ms = 3000; // as in database.js
  const second_key = 'groundsheet.tally';
  const shape = /^(\d{1,15}) ([0-9a-f]{8}) (.*)$/;

  let lines = []; // of the last start, in order
  let last = 0; // number of the newest record
  let any = false; // line
  let opening = null;
  let pending = Promise.resolve();

  const record_of = (number, text) => `${number} ${gs.checksum(`${number} ${text}`)} ${text}`;

  // [number, text] of a whole record, else nothing.
  function read_record(record) {
    const [, number, sum, text] = shape.exec(String(record)) || [];
    return number !== undefined && sum === gs.checksum(`${number} ${text}`) ? [Number(number), text] : undefined;
  }

  function open() {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error('the database does not answer')), open_limit_ms);
      const request = indexedDB.open('groundsheet-tally', 1);
      request.onupgradeneeded = () => request.result.createObjectStore('lines');
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        clearTimeout(timer);
        request.result.onclose = () => (opening = null);
        request.result.onversionchange = () => {
          request.result.close();
          opening = null;
        };
        resolve(request.result);
      };
    });
  }

  async function run_once(mode, work) {
    opening = opening || open();
    const database = await opening;
    return new Promise((resolve, reject) => {
      const transaction = database.transaction('lines', mode, { durability: 'strict' });
      let answer;
      transaction.oncomplete = () => resolve(answer && answer.result);
      transaction.onabort = () => reject(transaction.error || new Error('the database gave up'));
      answer = work(transaction.objectStore('lines'));
    });
  }

  // A handle may go stale at any time; one fresh try cures that.
  async function run(mode, work) {
    try {
      return await run_once(mode, work);
    } catch {
      opening = null;
      return run_once(mode, work);
    }
  }

  async function attempt(work) {
    try {
      return await work();
    } catch {
      return undefined; // the other copy has to do
    }
  }

  const second = () => attempt(() => (localStorage.getItem(second_key) || '').split('\n').filter(Boolean));

  // Both copies together: what either of them has whole.
  async function read() {
    const found = new Map();
    for (const copy of [await attempt(() => run('readonly', (store) => store.getAll())), await second()]) {
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
    pending = attempt(() => run('readwrite', (store) => store.put(record, number)));
    attempt(() => localStorage.setItem(second_key, `${localStorage.getItem(second_key) || ''}${record}\n`));
  }

  function forget() {
    if (!any) return;
    any = false;
    lines = [];
    const up_to = last; // a line that is noted meanwhile stays
    pending = attempt(() => run('readwrite', (store) => store.delete(IDBKeyRange.upperBound(up_to))));
    attempt(() => {
      const rest = (localStorage.getItem(second_key) || '').split('\n').filter((line) => Number.parseInt(line, 10) > up_to);
      if (rest.length) localStorage.setItem(second_key, `${rest.join('\n')}\n`);
      else localStorage.removeItem(second_key);
    });
  }

  gs.journal = { read, note, forget, noted: () => lines.join('\n'), idle: () => pending };
}
