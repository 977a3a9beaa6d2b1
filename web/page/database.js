// The first copy: IndexedDB.
'use strict';
{
  const most_aside = 20;
  const run = globalThis.groundsheet.connection('groundsheet', (database) => {
    database.createObjectStore('kept');
    database.createObjectStore('aside', { autoIncrement: true });
  });

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
