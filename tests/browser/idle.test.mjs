// Nothing is drawn while nothing changes: no frame, no work, no heat in a pocket. Both waits run side by side.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { browse, frames, open_page, serve, still } from './harness.mjs';

const rest = (ms) => new Promise((done) => setTimeout(done, ms));

describe('idle', { concurrency: 2 }, () => {
  test('held clock, idle 30 s: no frame is drawn', async (t) => {
    const server = await serve(t);
    const { page } = await open_page(t, await browse(t), server.address);
    for (const name of ['Start from a sample outing', /^Feed line,.*opens Feed line/]) {
      await page.getByRole('button', { name }).first().click();
      await still(page);
    }
    await page.getByRole('slider', { name: 'Feed line length' }).waitFor();
    await still(page);
    const before = await frames(page);
    await rest(30e3);
    const drawn = (await frames(page)) - before;
    t.diagnostic(`frames drawn in 30 s: ${drawn}`);
    assert.equal(drawn, 0);
  });

  test('nothing is drawn while nothing changes, and next to nothing is worked', async (t) => {
    const server = await serve(t);
    const { page } = await open_page(t, await browse(t), server.address);
    // The program may know a next change by the clock, once a minute; between two of them it must be still.
    await still(page);
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable');
    const busy_s = async () => {
      const { metrics } = await session.send('Performance.getMetrics');
      return metrics.find((metric) => metric.name === 'TaskDuration').value;
    };
    const [from, from_s] = [await frames(page), await busy_s()];
    await rest(10e3);
    const [drawn, worked_s] = [(await frames(page)) - from, (await busy_s()) - from_s];
    t.diagnostic(`10 s idle: ${drawn} frames, ${(worked_s * 1e3).toFixed(1)} ms of work`);
    assert.ok(drawn <= 1);
    assert.ok(worked_s < 0.1, 'less than 1 % of one core');
  });
});
