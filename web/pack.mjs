// Packs the page into one folder that any static https host serves: node web/pack.mjs --build BUILD_DIR --out DIR
// Same input, same bytes. DIR is replaced as a whole, or left as it was.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { make_pages } from './make_pages.mjs';
import { header_policy, page_policy, type_of } from './policy.mjs';

const here = dirname(fileURLToPath(import.meta.url));
const icons = ['icon-192.png', 'icon-512.png', 'icon-maskable-512.png', 'apple-touch-icon-180.png'];
const by_name = ([a], [b]) => (a < b ? -1 : a > b ? 1 : 0);

const digest = (bytes, encoding) => createHash('sha256').update(bytes).digest(encoding);

function read(path) {
  if (!existsSync(path)) throw new Error(`${path} is missing.`);
  return readFileSync(path);
}

// name -> bytes of everything, still under plain names.
function collect(build, root) {
  const files = new Map();
  for (const name of readdirSync(join(here, 'page')).sort()) files.set(name, read(join(here, 'page', name)));
  for (const [name, html] of make_pages(root)) files.set(name, Buffer.from(html));
  for (const name of icons) files.set(`icon/${name}`, read(join(root, 'assets/icon', name)));
  for (const name of ['app.js', 'app.wasm']) files.set(name, read(join(build, name)));
  return files;
}

// Scripts, styles and the program get their digest into their name, so that no cache can mix two builds.
function hash_names(files) {
  const names = new Map();
  const hashed = new Map();
  for (const [name, bytes] of files) {
    if (!/\.(js|css|wasm)$/.test(name)) {
      hashed.set(name, bytes);
      continue;
    }
    const dot = name.lastIndexOf('.');
    const new_name = `${name.slice(0, dot)}.${digest(bytes, 'hex').slice(0, 12)}${name.slice(dot)}`;
    names.set(name, { name: new_name, integrity: `sha256-${digest(bytes, 'base64')}` });
    hashed.set(new_name, bytes);
  }
  return { names, hashed };
}

function fill(html, names) {
  const look_up = (name) => {
    if (!names.has(name)) throw new Error(`A page names ${name}, which is not there.`);
    return names.get(name);
  };
  return html
    .replaceAll('@CSP@', page_policy)
    .replace(/(src|href)="((?:\.\.\/)*)([\w-]+\.(?:js|css))"/g, (_, attribute, up, name) => {
      const found = look_up(name);
      return `${attribute}="${up}${found.name}" integrity="${found.integrity}"`;
    })
    .replace(/content="(app\.(?:js|wasm))"/g, (_, name) => {
      const found = look_up(name);
      return `content="${found.name}" data-integrity="${found.integrity}"`;
    });
}

function make_worker(files, build) {
  const rows = [...files].sort(by_name).map(([name, bytes]) =>
    `  ${JSON.stringify(name)}: [${JSON.stringify(digest(bytes, 'base64'))}, ${JSON.stringify(type_of(name))}],`);
  const list = `{\n${rows.join('\n')}\n}`;
  return read(join(here, 'sw.js')).toString()
    .replace('@BUILD@', build)
    .replace('@POLICY@', header_policy)
    .replace('{ /*@FILES@*/ }', () => list);
}

/** Every file of the packed folder: path -> bytes. */
export function pack(build, root) {
  const { names, hashed } = hash_names(collect(build, root));
  const pages = [...hashed.keys()].filter((name) => name.endsWith('.html'));
  for (const name of pages) hashed.set(name, Buffer.from(fill(hashed.get(name).toString(), names)));
  // Page and worker know the same name of the build: a digest of everything, before the name stands in it.
  const rows = [...hashed].sort(by_name).map(([name, bytes]) => `${name} ${digest(bytes, 'hex')}\n`);
  const name_of_build = digest(rows.join(''), 'hex').slice(0, 16);
  for (const name of pages) hashed.set(name, Buffer.from(hashed.get(name).toString().replaceAll('@BUILD@', name_of_build)));
  return new Map([...hashed, ['sw.js', Buffer.from(make_worker(hashed, name_of_build))]]);
}

function write(files, out) {
  const known = !existsSync(out) || existsSync(join(out, 'sw.js')) || readdirSync(out).length === 0;
  if (!known) throw new Error(`${out} holds something else; give an empty or a new folder.`);
  const [fresh, old] = [`${out}.new-${process.pid}`, `${out}.old-${process.pid}`];
  try {
    for (const [name, bytes] of files) {
      mkdirSync(dirname(join(fresh, name)), { recursive: true });
      writeFileSync(join(fresh, name), bytes);
    }
    if (existsSync(out)) renameSync(out, old);
    renameSync(fresh, out);
  } finally {
    rmSync(fresh, { recursive: true, force: true });
    rmSync(old, { recursive: true, force: true });
  }
}

if (process.argv[1] && resolve(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    const options = { build: { type: 'string' }, out: { type: 'string' }, root: { type: 'string', default: join(here, '..') } };
    const { values } = parseArgs({ options });
    if (!values.build || !values.out) throw new Error('Give --build BUILD_DIR (with app.js and app.wasm) and --out DIR.');
    const files = pack(resolve(values.build), resolve(values.root));
    write(files, resolve(values.out));
    const size = [...files.values()].reduce((sum, bytes) => sum + bytes.length, 0);
    console.log(`Packed ${files.size} files, ${(size / 1024).toFixed(0)} KiB, into ${values.out}`);
  } catch (problem) {
    console.error(`Nothing was packed: ${problem.message}`);
    process.exit(1);
  }
}
