// What is kept survives: a killed browser, a damaged copy, a lost copy, two windows, a full disk. The program is held back so
// that only the store itself writes.
import assert from 'node:assert/strict';
import test from 'node:test';
import { browse, browse_profile, kill_profile, poll, scratch, serve } from './harness.mjs';

const outing = 'outing'; // a key of app/store/store.h
const notes = 'notes';

// The page with its store read and no program.
async function store_alone(context, address) {
  await context.route('**/app.*.js', (route) => route.abort());
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole('alert').waitFor();
  return page;
}

const keep = (page, text) => page.evaluate(async ([kind, words]) => {
  globalThis.groundsheet.store.keep(kind, words);
  await globalThis.groundsheet.store.idle();
}, [outing, text]);
const kept = (page, which = outing) => page.evaluate(
  (kind) => (kind === 'notes' ? globalThis.groundsheet.store.notes() : globalThis.groundsheet.store.kept(kind)), which);

async function setup(t) {
  const server = await serve(t);
  const browser = await browse(t);
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const again = async () => store_alone(context, server.address);
  return { server, browser, context, again };
}

const spoil_database = (page) => page.evaluate(() => new Promise((done) => {
  indexedDB.open('groundsheet').onsuccess = ({ target: { result: database } }) => {
    const transaction = database.transaction('kept', 'readwrite');
    const store = transaction.objectStore('kept');
    store.get('outing').onsuccess = ({ target: { result } }) => store.put({ ...result, text: result.text.replace('a', 'b') }, 'outing');
    transaction.oncomplete = () => done(database.close());
  };
}));
const spoil_second = (page) => page.evaluate(() =>
  localStorage.setItem('groundsheet.outing', localStorage.getItem('groundsheet.outing').replace('a', 'b')));
const delete_database = (page) => page.evaluate(() => new Promise((done) => {
  indexedDB.deleteDatabase('groundsheet').onsuccess = done;
}));

test('the checksum is the published one', async (t) => {
  const { again } = await setup(t);
  const page = await again();
  // The check value that catalogues of CRC algorithms give for CRC-32 (ISO-HDLC) over "123456789".
  assert.equal(await page.evaluate(() => globalThis.groundsheet.checksum('123456789')), 'cbf43926');
  assert.equal(await page.evaluate(() => globalThis.groundsheet.checksum('')), '00000000');
});

test('texts come back as they were, signs of every kind included', async (t) => {
  const { again } = await setup(t);
  let page = await again();
  const text = '{"name":"Wiese \u00fcber Tal, \u03a9 \u2212 \u{1f332}\\u0000"}\n'.repeat(2000);
  await keep(page, text);
  await page.close();
  page = await again();
  assert.equal(await kept(page), text);
  assert.equal(await kept(page, notes), '');
});

for (const [what, spoil, note] of [
  ['the database\'s copy damaged', spoil_database, /damaged copy of the outing was set aside/],
  ['the second copy damaged', spoil_second, /damaged copy of the outing was set aside/],
  ['the database gone', delete_database, /lost one of the two copies/],
]) {
  test(`${what}: the other copy is used, and said`, async (t) => {
    const { again } = await setup(t);
    let page = await again();
    await keep(page, 'a text');
    await spoil(page);
    await page.close();
    page = await again();
    assert.equal(await kept(page), 'a text');
    assert.match(await kept(page, notes), note);
    await keep(page, 'a next text');
    await page.close();
    page = await again();
    assert.equal(await kept(page), 'a next text');
    assert.equal(await kept(page, notes), '', 'both copies are whole again');
  });
}

test('both copies damaged: nothing wrong is used, and the damaged text can be read', async (t) => {
  const { server, again } = await setup(t);
  let page = await again();
  await keep(page, 'a text');
  await spoil_database(page);
  await spoil_second(page);
  await page.close();
  page = await again();
  assert.equal(await kept(page), '');
  assert.match(await kept(page, notes), /outing is damaged[^]*kept\.html/);
  await page.goto(`${server.address}kept.html`);
  await page.getByRole('textbox').first().waitFor();
  assert.equal(await page.getByRole('textbox').first().inputValue(), 'b text');
});

test('everything cleared: the page says that something was there', async (t) => {
  const { again } = await setup(t);
  let page = await again();
  await keep(page, 'a text');
  await poll(() => page.evaluate(() => caches.has('groundsheet-marker')), 'the marker');
  await delete_database(page);
  await page.evaluate(() => localStorage.clear());
  await page.close();
  page = await again();
  assert.equal(await kept(page), '');
  assert.match(await kept(page, notes), /kept here is gone/);
});

test('storage refused: it works and says that nothing is kept', async (t) => {
  const { again, context } = await setup(t);
  await context.addInitScript(() => {
    indexedDB.open = () => { throw new DOMException('denied', 'SecurityError'); };
    Storage.prototype.getItem = Storage.prototype.setItem = () => { throw new DOMException('denied', 'SecurityError'); };
  });
  const page = await again();
  assert.match(await kept(page, notes), /Nothing will be kept/);
  await page.evaluate(() => {
    globalThis.groundsheet.ready = true;
    globalThis.Module._gs_stored = (ok) => (globalThis.outcome = ok);
  });
  await keep(page, 'a text');
  assert.equal(await page.evaluate(() => globalThis.outcome), 0, 'the program is told');
});

test('a full disk: the refused save is told, what was kept stays, and it works again', async (t) => {
  const { server, again } = await setup(t);
  let page = await again();
  await page.evaluate(() => {
    globalThis.groundsheet.ready = true;
    globalThis.outcomes = [];
    globalThis.Module._gs_stored = (ok) => globalThis.outcomes.push(ok);
  });
  const session = await page.context().newCDPSession(page);
  const origin = server.address.replace(/\/$/, '');
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1e6 });
  await keep(page, 'a text');
  await page.evaluate(async () => {
    globalThis.groundsheet.store.keep('outing', 'x'.repeat(12e6)); // more than the second copy takes, too
    await globalThis.groundsheet.store.idle();
  });
  assert.deepEqual(await page.evaluate(() => globalThis.outcomes), [1, 0], 'the program is told');
  await keep(page, 'a next text');
  assert.deepEqual(await page.evaluate(() => globalThis.outcomes), [1, 0, 1]);
  await page.close();
  page = await again();
  assert.equal(await kept(page), 'a next text');
  await page.close();
});

test('a full disk keeps the last text that still went in', async (t) => {
  const { server, again } = await setup(t);
  let page = await again();
  const session = await page.context().newCDPSession(page);
  await session.send('Storage.overrideQuotaForOrigin', { origin: server.address.replace(/\/$/, ''), quotaSize: 1e6 });
  await keep(page, 'a text');
  await page.evaluate(async () => {
    globalThis.groundsheet.store.keep('outing', 'x'.repeat(12e6));
    await globalThis.groundsheet.store.idle();
  });
  await page.close();
  page = await again();
  const found = await kept(page);
  assert.ok(found === 'a text', `${found.length} characters`);
  assert.equal(await kept(page, notes), '');
});

test('a second window is told, and neither text is lost', async (t) => {
  const { server, again } = await setup(t);
  const first = await again();
  await keep(first, 'text of the first');
  const second = await again();
  assert.match(await kept(second, notes), /open in another window/);
  await keep(second, 'text of the second');
  await keep(first, 'newer text of the first');
  await first.goto(`${server.address}kept.html`);
  await first.getByRole('textbox').first().waitFor();
  const texts = await first.getByRole('textbox').evaluateAll((all) => all.map((area) => area.value));
  assert.ok(texts.includes('text of the second') && texts.includes('newer text of the first'), texts.join(' | '));
});

test('a fast run of changes ends with the last one in both copies', async (t) => {
  const { again } = await setup(t);
  const page = await again();
  const took_ms = await page.evaluate(async () => {
    const start = performance.now();
    for (let i = 1; i <= 500; ++i) {
      globalThis.groundsheet.store.keep('outing', `text ${i}`);
      if (i % 10 === 0) await new Promise(requestAnimationFrame);
    }
    await globalThis.groundsheet.store.idle();
    return performance.now() - start;
  });
  console.log(`500 changes in ${took_ms.toFixed(0)} ms`);
  const copies = await page.evaluate(async () => [
    (await globalThis.groundsheet.database.read()).outing, globalThis.groundsheet.copies.second.read().outing]);
  assert.deepEqual(copies.map(({ text }) => text), ['text 500', 'text 500']);
});

test('killing the browser loses nothing that was confirmed', async (t) => {
  const server = await serve(t);
  const profile = scratch(t);
  const runs = Number(process.env.GROUNDSHEET_KILLS || 5);
  let last = 0;
  for (let run = 0; run < runs; ++run) {
    const context = await browse_profile(profile, { serviceWorkers: 'block' });
    let confirmed = last;
    await context.exposeFunction('confirm_kept', (count) => (confirmed = count));
    const page = await store_alone(context, server.address);
    const found = Number((await kept(page)).split(' ')[1] || 0);
    assert.ok(found >= last, `run ${run}: ${found} found, ${last} was confirmed`);
    assert.doesNotMatch(await kept(page, notes), /damaged|gone/);
    page.evaluate(async (from) => {
      for (let i = from + 1; ; ++i) {
        globalThis.groundsheet.store.keep('outing', `text ${i} ${'x'.repeat(4000)}`);
        await globalThis.groundsheet.store.idle();
        await globalThis.confirm_kept(i);
      }
    }, found).catch(() => {}); // ends with the browser
    const target = found + 10 + ((run * 7) % 13);
    await poll(() => confirmed >= target, 'some confirmed saves');
    await kill_profile(profile, context);
    last = confirmed;
  }
  console.log(`${runs} kills, ${last} confirmed saves, none lost`);
});
