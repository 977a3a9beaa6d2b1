// One IndexedDB database: opened when it is first wanted, opened again when the handle went stale.
'use strict';
{
  const open_limit_ms = 3000; // some browsers never answer after a crash; then the second copy has to do

  function open(name, set_up, drop) {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => reject(new Error('the database does not answer')), open_limit_ms);
      const request = indexedDB.open(name, 1);
      request.onupgradeneeded = () => set_up(request.result);
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

  // Gives run(mode, work): it runs work(transaction, holder) over all stores and gives the holder once all of it is on disk.
  // A transaction counts only when it is complete, and it is asked to reach the disk by then. `set_up` makes the stores.
  globalThis.groundsheet.connection = (name, set_up) => {
    let opening = null; // promise of the open database
    const drop = () => (opening = null);

    async function run_once(mode, work) {
      opening = opening || open(name, set_up, drop);
      const database = await opening;
      return new Promise((resolve, reject) => {
        const transaction = database.transaction([...database.objectStoreNames], mode, { durability: 'strict' });
        const holder = {};
        transaction.oncomplete = () => resolve(holder);
        transaction.onabort = () => reject(transaction.error || new Error('the database gave up'));
        transaction.onerror = () => {}; // the abort that follows tells
        work(transaction, holder);
      });
    }

    // A handle may go stale at any time; one fresh try cures that.
    return async function run(mode, work) {
      try {
        return await run_once(mode, work);
      } catch (problem) {
        drop();
        if (problem && problem.name === 'QuotaExceededError') throw problem;
        return run_once(mode, work);
      }
    };
  };
}
