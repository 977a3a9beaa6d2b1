// compare.mjs NATIVE WASM.js: readings of both builds agree to 1e-12 relative, printed text is identical.
import { spawnSync } from 'node:child_process';
import { closeSync, mkdtempSync, openSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const limit = 1e-12;
// Through a file: a pipe may be full for a moment, and the WebAssembly build then loses what it prints.
function lines(command, args) {
  const folder = mkdtempSync(join(tmpdir(), 'agree-'));
  const path = join(folder, 'lines');
  const file = openSync(path, 'w');
  const { status } = spawnSync(command, args, { stdio: ['ignore', file, 'inherit'] });
  closeSync(file);
  const text = readFileSync(path, 'utf8');
  rmSync(folder, { recursive: true });
  if (status !== 0) throw new Error(`${command} ended with ${status}`);
  return text.trim().split('\n');
}
const native = lines(process.argv[2], []);
const wasm = lines(process.execPath, [process.argv[3]]);

let worst = 0, compared = 0, different_text = 0, failed = native.length !== wasm.length;
for (let i = 0; i < Math.min(native.length, wasm.length); ++i) {
  const [a_numbers, ...a_text] = native[i].split('|'), [b_numbers, ...b_text] = wasm[i].split('|');
  if (a_text.join('|') !== b_text.join('|')) {
    if (different_text++ < 5) console.error(`text differs:\n  ${native[i]}\n  ${wasm[i]}`);
  }
  const a = a_numbers.split(' '), b = b_numbers.split(' ');
  for (let k = 2; k < 5; ++k) {
    if (/nan|inf/.test(a[k] + b[k])) {
      if (a[k].replace('-', '') !== b[k].replace('-', '')) failed = true;
      continue;
    }
    ++compared;
    const [x, y] = [Number(a[k]), Number(b[k])];
    // Watts are differences of watts: what is left after they cancel is measured against what was subtracted (at most 200 W).
    const size = / (radio|feedline)\.\w+_w$/.test(` ${a[1]}`) ? Math.max(Math.abs(x), 1) : Math.max(Math.abs(x), 1e-9);
    worst = Math.max(worst, Math.abs(x - y) / size);
  }
}
console.log(`${native.length} readings, ${compared} numbers: largest relative difference ${worst.toExponential(2)} (limit ${limit}), texts that differ: ${different_text}`);
process.exit(failed || worst > limit || different_text > 0 ? 1 : 0);
