// Runs the program from the command line, as a script would.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const program = process.env.GROUNDSHEET;
assert.ok(program, 'GROUNDSHEET must hold the path of the program');

/** Its exit status and what it printed; never longer than 20 s. */
export function run(args, env = {}) {
  const done = spawnSync(program, args, { encoding: 'utf8', timeout: 20_000, maxBuffer: 1 << 26, env: { ...process.env, ...env } });
  assert.equal(done.error, undefined, `${args.join(' ')}: ${done.error}`);
  assert.equal(done.signal, null, `${args.join(' ').slice(0, 200)}: ended by ${done.signal}`);
  return { status: done.status, out: done.stdout, err: done.stderr };
}

/** The JSON it prints; it must succeed and, unless `notes` are expected, say nothing else. */
export function ask(args, { notes = false } = {}) {
  const { status, out, err } = run(args);
  assert.equal(status, 0, err);
  if (!notes) assert.equal(err, '');
  return JSON.parse(out);
}

/** A refusal: non-zero exit, nothing printed, one line that names `key`. */
export function refused(args, key) {
  const { status, out, err } = run(args);
  const shown = args.map((arg) => arg.slice(0, 80)).join(' ');
  assert.notEqual(status, 0, `${shown} passed`);
  assert.equal(out, '', shown);
  assert.match(err, /^[^\n]+\n$/, `${shown}: not one line: ${err.slice(0, 300)}`);
  assert.ok(err.includes(key), `${shown}: "${err.trim()}" does not name ${key}`);
  assert.ok(err.length < 2000, `${shown}: ${err.length} characters`);
  return err.trim();
}

export const sets = (values) => Object.entries(values).flatMap(([key, value]) => ['--set', `${key}=${value}`]);

/** A folder for outing files that goes with the test; file(text) writes one and gives its path. */
export function folder(t) {
  const path = mkdtempSync(join(tmpdir(), 'groundsheet-test-'));
  t.after(() => rmSync(path, { recursive: true, force: true }));
  let count = 0;
  return {
    path,
    file: (text) => {
      const name = join(path, `outing-${++count}.json`);
      writeFileSync(name, text);
      return name;
    },
    outing(levers) {
      return this.file(JSON.stringify({ groundsheet: 1, kind: 'outing', name: 'Test', date: '2026-06-13', levers }));
    },
  };
}

const states = ['holds', 'tight', 'fails', 'none', 'not known'];

/** What every outlook and every check must look like. */
export function check_shape(answer, kind) {
  assert.equal(answer.groundsheet, 1);
  assert.equal(answer.kind, kind);
  for (const [key, lever] of Object.entries(answer.levers)) {
    assert.deepEqual(Object.keys(lever).sort(), ['from', 'name', 'unit', 'value'], key);
    assert.ok(lever.name.length > 0, key);
    assert.ok(['missing', 'usual', 'yours'].includes(lever.from), key);
    assert.equal(lever.value === null, lever.from === 'missing', key);
  }
  for (const [key, reading] of Object.entries(answer.readings)) {
    assert.deepEqual(Object.keys(reading).sort(), ['high', 'low', 'name', 'reason', 'state', 'unit', 'value'], key);
    assert.ok(states.includes(reading.state), `${key}: ${reading.state}`);
    assert.equal(reading.value === null, reading.state === 'not known', key);
    if (reading.value === null) {
      assert.ok(reading.reason.length > 0, `${key}: null without a reason`);
      assert.equal(reading.low, null, key);
      assert.equal(reading.high, null, key);
    } else {
      for (const number of [reading.value, reading.low, reading.high]) assert.ok(Number.isFinite(number), key);
      assert.ok(reading.low <= reading.value && reading.value <= reading.high, key);
    }
  }
}
