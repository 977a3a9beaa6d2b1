// What people asked, answered in their own units within their tolerance: one test a question.
import assert from 'node:assert/strict';
import test from 'node:test';
import { questions as antenna } from './antenna_questions.mjs';
import { questions as feedline } from './feedline_questions.mjs';
import { questions as power } from './power_questions.mjs';
import { ask, check_shape, folder, sets } from './program.mjs';
import { questions as safety } from './safety_questions.mjs';
import { questions as sky } from './sky_questions.mjs';

const questions = [...power, ...feedline, ...antenna, ...sky, ...safety];

/** Asks one question with everything set; results and inputs by key. */
function figures(question, outings, values) {
  const args = question.check ? ['--check', question.check] : ['--evaluate', outings.outing({})];
  const answer = ask([...args, ...sets(values)]);
  check_shape(answer, question.check ? 'check' : 'outlook');
  return { ...Object.fromEntries(Object.entries(answer.levers).map(([key, row]) => [key, row.value])), ...Object.fromEntries(Object.entries(answer.readings).map(([key, row]) => [key, row.value])) };
}

/** The step at which a result comes nearest to what the asker knew; results grow or fall all the way. */
function sought(question, outings, values) {
  const { lever, from, to, step, result, target, within } = question.seek;
  const at = (n) => figures(question, outings, { ...values, [lever]: String(Number((from + n * step).toFixed(6))) });
  let low = 0, high = Math.round((to - from) / step);
  const rises = at(high)[result] > at(low)[result];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (at(middle)[result] < target === rises) low = middle;
    else high = middle;
  }
  const nearest = [at(low), at(high)].sort((a, b) => Math.abs(a[result] - target) - Math.abs(b[result] - target))[0];
  assert.ok(Math.abs(nearest[result] - target) <= within, `${result} ${nearest[result]}, wanted ${target}`);
  return nearest;
}

for (const question of questions) {
  test(`asked: ${question.id}`, (t) => {
    const outings = folder(t);
    for (const { set = {}, expect } of question.cases) {
      const values = { ...(question.levers ?? question.inputs), ...set };
      const found = question.seek ? sought(question, outings, values) : figures(question, outings, values);
      for (const [key, [wanted, tolerance]] of Object.entries(expect)) {
        assert.equal(typeof found[key], 'number', key);
        const off = Math.abs(found[key] - wanted);
        console.log(`  ${question.id}: ${key} ${found[key].toPrecision(4)}, wanted ${wanted}, off ${off.toPrecision(2)} of ${tolerance}`);
        assert.ok(off <= tolerance + 1e-9, `${key}: ${found[key]}, wanted ${wanted} within ${tolerance}`);
      }
    }
  });
}
