// The small server and the packing script.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { request } from 'node:http';
import { join, relative } from 'node:path';
import test from 'node:test';
import { packed, repository, scratch, serve } from './harness.mjs';

const files_below = (folder) => readdirSync(folder, { recursive: true })
  .map((name) => join(folder, name)).filter((path) => statSync(path).isFile()).map((path) => relative(folder, path)).sort();

test('a taken port is named in one line', async (t) => {
  const other = createServer();
  await new Promise((done) => other.listen(0, '127.0.0.1', done));
  t.after(() => other.close());
  const { port } = other.address();
  const refused = await serve(t, { port }).then(() => null, (problem) => problem);
  assert.equal(refused.code, 1);
  assert.match(refused.errors, new RegExp(`^[^\n]*${port}[^\n]*--port[^\n]*\n$`));
});

test('types and headers', async (t) => {
  const { address } = await serve(t);
  const wasm = files_below(packed).find((name) => name.endsWith('.wasm'));
  // IANA's registry of media types; "WebAssembly Web API" section 3 asks for application/wasm.
  for (const [path, type] of [['', 'text/html'], [wasm, 'application/wasm'], ['manifest.webmanifest', 'application/manifest+json'],
    ['sw.js', 'text/javascript'], ['icon/icon-192.png', 'image/png']]) {
    const { headers, status } = await fetch(address + path);
    assert.equal(status, 200, path);
    assert.ok(headers.get('content-type').startsWith(type), path);
    assert.equal(headers.get('cache-control'), 'no-cache');
    assert.equal(headers.get('x-content-type-options'), 'nosniff');
    assert.equal(headers.get('referrer-policy'), 'no-referrer');
    assert.match(headers.get('content-security-policy'), /default-src 'none'.*frame-ancestors 'none'/);
    assert.doesNotMatch(headers.get('content-security-policy'), /unsafe-inline|'unsafe-eval'|https?:/);
  }
  assert.equal((await fetch(`${address}nothing`)).status, 404);
  assert.equal((await fetch(address, { method: 'POST' })).status, 405);
});

test('nothing outside the folder is served', async (t) => {
  const { port } = await serve(t);
  for (const path of ['/../package.json', '/..%2f..%2fetc/passwd', '/%2e%2e/%2e%2e/etc/passwd', '//etc/passwd', '/%00', '/%']) {
    const status = await new Promise((done) => request({ port, host: '127.0.0.1', path }, (answer) => {
      answer.resume();
      done(answer.statusCode);
    }).end());
    assert.equal(status, 404, path);
  }
});

test('names, digests and the worker\'s list agree with the bytes', () => {
  const worker = readFileSync(join(packed, 'sw.js'), 'utf8');
  const names = files_below(packed).filter((name) => name !== 'sw.js');
  for (const name of names) {
    const bytes = readFileSync(join(packed, name));
    const digest = (encoding) => createHash('sha256').update(bytes).digest(encoding);
    assert.ok(worker.includes(`"${name}": ["${digest('base64')}"`), name);
    if (/\.(js|css|wasm)$/.test(name)) assert.ok(name.includes(`.${digest('hex').slice(0, 12)}.`), name);
  }
  assert.equal(worker.match(/^ {2}"[^"]+": \[/gm).length, names.length);
  for (const name of names.filter((path) => path.endsWith('.html'))) {
    const html = readFileSync(join(packed, name), 'utf8');
    assert.doesNotMatch(html, /<script(?![^>]*\bsrc=)|<style|\sstyle=|\son\w+=|@[A-Z]+@/, `${name} has nothing in line`);
    for (const [tag] of html.matchAll(/<(?:script|link rel="stylesheet")[^>]*>/g)) assert.match(tag, /integrity="sha256-/, `${name}: ${tag}`);
  }
});

test('packing twice gives the same bytes; a lack leaves the old folder as it was', (t) => {
  const folder = scratch(t);
  const build = join(folder, 'build');
  mkdirSync(build);
  const pack = (out) => spawnSync(process.execPath, [join(repository, 'web/pack.mjs'), '--build', build, '--out', join(folder, out)], { encoding: 'utf8' });
  const digest_all = (out) => files_below(join(folder, out)).map((name) => [name, createHash('sha256').update(readFileSync(join(folder, out, name))).digest('hex')]);
  writeFileSync(join(build, 'app.js'), 'let app;\n');
  const lacking = pack('one');
  assert.equal(lacking.status, 1);
  assert.match(lacking.stderr, /app\.wasm is missing/);
  writeFileSync(join(build, 'app.wasm'), 'wasm');
  assert.equal(pack('one').status, 0);
  assert.equal(pack('two').status, 0);
  assert.deepEqual(digest_all('one'), digest_all('two'));
  writeFileSync(join(build, 'app.js'), 'let other;\n');
  assert.equal(pack('two').status, 0);
  assert.notDeepEqual(digest_all('one'), digest_all('two'));
  const other = join(folder, 'other');
  mkdirSync(other);
  writeFileSync(join(other, 'diary.txt'), 'mine');
  assert.equal(pack('other').status, 1);
  assert.deepEqual(readdirSync(other), ['diary.txt']);
});
