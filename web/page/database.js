// The first copy: IndexedDB. A transaction counts only when it is complete, and it is asked to reach the disk by then.
'use strict';
{
  const open_limit_ms = 3000; // some browsers never answer after a crash; then the second copy has to do
  const most_aside = 20;
  let opening = null; // promise of the open database

  function open() {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error('the database does not answer')), open_limit_ms);
      const request = indexedDB.open('groundsheet', 1);
      request.onupgradeneeded = () => {
        request.result.createObjectStore('kept');
        request.result.createObjectStore('aside', { autoIncrement: true });
      };
      request.onerror = () => {
        clearTimeout(timer);
        reject(request.error);
      };
      request.onsuccess = () => {
        clearTimeout(timer);
        const database = request.result;
        database.onclose = drop;
        database.onversionchange = () => {
          database.close();
          drop();
        };
        resolve(database);
      };
    });
  }

  function drop() {
    opening = null;
  }

  // Runs work(transaction) and gives what it left in the holder once all of it is on disk.
  async function run_once(mode, work) {
    opening = opening || open();
    const database = await opening;
    return new Promise((resolve, reject) => {
      const transaction = database.transaction(['kept', 'aside'], mode, { durability: 'strict' });
      const holder = {};
      transaction.oncomplete = () => resolve(holder);
      transaction.onabort = () => reject(transaction.error || new Error('the database gave up'));
      transaction.onerror = () => {}; // the abort that follows tells
      work(transaction, holder);
    });
  }

  // A handle may go stale at any time; one fresh try cures that.
  async function run(mode, work) {
    try {
      return await run_once(mode, work);
    } catch (problem) {
      drop();
      if (problem && problem.name === 'QuotaExceededError') throw problem;
      return run_once(mode, work);
    }
  }

  // Everything that is kept: {kind: record}.
  async function read() {
    const { records } = await run('readonly', (transaction, holder) => {
      holder.records = {};
      transaction.objectStore('kept').openCursor().onsuccess = (event) => {
        const cursor = event.target.result;
        if (!cursor) return;
        holder.records[cursor.key] = cursor.value;
        cursor.continue();
      };
    });
    return records;
  }

  // Writes the text as the next record after `known` and gives it as `record`. If another window wrote meanwhile, one of the
  // two texts is put aside, not lost: the other window's, or, where `strict`, ours, and theirs is given as `there`.
  function put(kind, text, known, make_record, strict) {
    return run('readwrite', (transaction, holder) => {
      const kept = transaction.objectStore('kept');
      kept.get(kind).onsuccess = (event) => {
        const there = event.target.result;
        const there_sequence = there && Number.isSafeInteger(there.sequence) ? there.sequence : 0;
        const other = there_sequence > known && there.text !== text;
        if (other && strict) {
          holder.there = there;
          add_aside(transaction, kind, make_record(kind, there_sequence, text), 'other window');
          return;
        }
        if (other) add_aside(transaction, kind, there, 'other window');
        holder.record = make_record(kind, Math.max(there_sequence, known) + 1, text);
        kept.put(holder.record, kind);
      };
    });
  }

  // Takes a record away; what another window wrote there meanwhile is put aside.
  async function remove(kind, known) {
    await run('readwrite', (transaction) => {
      const kept = transaction.objectStore('kept');
      kept.get(kind).onsuccess = (event) => {
        const there = event.target.result;
        if (there && there.sequence > known) add_aside(transaction, kind, there, 'other window');
        kept.delete(kind);
      };
    });
  }

  function add_aside(transaction, kind, record, why) {
    const aside = transaction.objectStore('aside');
    aside.add({ kind, why, record });
    aside.getAllKeys().onsuccess = (event) => {
      for (const key of event.target.result.slice(0, -most_aside)) aside.delete(key);
    };
  }

  // Takes a damaged record out of the way.
  async function set_aside(kind, record) {
    await run('readwrite', (transaction) => {
      add_aside(transaction, kind, record, 'damaged');
      transaction.objectStore('kept').delete(kind);
    });
  }

  async function read_aside() {
    const { records } = await run('readonly', (transaction, holder) => {
      transaction.objectStore('aside').getAll().onsuccess = (event) => {
        holder.records = event.target.result;
      };
    });
    return records;
  }

  globalThis.groundsheet.database = { read, put, remove, set_aside, read_aside };
}
