// Lighthouse over the served page: accessibility and best practices without a fault. What it calls performance rests on drawing in
// software on a busy machine here, so it is printed and gates nothing.
import assert from 'node:assert/strict';
import test from 'node:test';
import lighthouse from 'lighthouse';
import { browse_by_port, serve } from '../harness.mjs';

const categories = ['accessibility', 'best-practices', 'performance'];

for (const form of ['mobile', 'desktop']) {
  test(`Lighthouse, ${form}: accessibility and best practices 100`, async (t) => {
    const { address } = await serve(t);
    const port = await browse_by_port(t);
    const settings = form === 'desktop'
      ? { formFactor: 'desktop', screenEmulation: { mobile: false, width: 1350, height: 940, deviceScaleFactor: 1, disabled: false } } : {};
    const { lhr } = await lighthouse(address, { port, onlyCategories: categories, logLevel: 'error', ...settings });
    assert.equal(lhr.runtimeError, undefined);
    const score = (name) => (lhr.categories[name].score === null ? 'none' : Math.round(lhr.categories[name].score * 100));
    t.diagnostic(`${form}: ${categories.map((name) => `${name} ${score(name)}`).join(', ')}`);
    for (const name of ['accessibility', 'best-practices']) {
      const short = lhr.categories[name].auditRefs.map(({ id, weight }) => ({ ...lhr.audits[id], weight }))
        .filter((audit) => audit.weight > 0 && audit.score !== null && audit.score < 1).map(({ id, title }) => `${id}: ${title}`);
      assert.deepEqual(short, [], name);
      assert.equal(score(name), 100, name);
    }
  });
}
