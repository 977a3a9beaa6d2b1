// The small converter behind licences.html and methods/*.html. Expected forms: CommonMark's examples for headings, lists, code
// and links; tables as in the GitHub flavour.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import test from 'node:test';
import { to_html } from '../../web/markdown.mjs';
import { axe, browse, packed, serve } from './harness.mjs';

test('the parts that our documents use', () => {
  const cases = [
    ['# One & two', '<h1 id="one-two">One &amp; two</h1>'],
    ['first\nsecond\n\nnext', '<p>first second</p>\n<p>next</p>'],
    ['a **b** *c* _d_ `e*f*` g_h_i', '<p>a <strong>b</strong> <em>c</em> <em>d</em> <code>e*f*</code> g_h_i</p>'],
    ['2 * 3 * 4 and x < y', '<p>2 * 3 * 4 and x &lt; y</p>'],
    ['- a\n- b\n  goes on\n  - c', '<ul>\n<li>a</li>\n<li>b goes on<ul>\n<li>c</li>\n</ul></li>\n</ul>'],
    ['1. a\n2. b', '<ol>\n<li>a</li>\n<li>b</li>\n</ol>'],
    ['```\na < b\n\n# c\n```', '<pre>a &lt; b\n\n# c</pre>'],
    ['    a\n\n    b', '<pre>a\n\nb</pre>'],
    ['[words](other.md#part)', '<p><a href="other.md#part">words</a></p>'],
    ['<https://example.org/a>', '<p><a href="https://example.org/a">https://example.org/a</a></p>'],
    ['<script>x</script>', '<p>&lt;script&gt;x&lt;/script&gt;</p>'],
    ['| a | b |\n|---|--:|\n| `1` | 2 |', '<div class="wide" tabindex="0"><table><thead><tr><th>a</th><th>b</th></tr></thead>' +
      '<tbody>\n<tr><td><code>1</code></td><td>2</td></tr>\n</tbody></table></div>'],
  ];
  for (const [markdown, html] of cases) assert.equal(to_html(markdown), html);
});

test('links to what is not packed become words', () => {
  assert.equal(to_html('see [the source](../core/x.h)', { link: () => undefined }), '<p>see the source</p>');
});

test('the pages of words are sound', async (t) => {
  const { address } = await serve(t);
  const browser = await browse(t);
  const page = await browser.newPage();
  const methods = readdirSync(join(packed, 'methods'), { withFileTypes: true }).map(({ name }) => `methods/${name}`);
  for (const path of ['licences.html', 'methods.html', 'kept.html', ...methods]) {
    await page.goto(address + path);
    assert.deepEqual((await axe(page)).faults, [], path);
    const dead = await page.evaluate(async () => {
      const own = [...document.querySelectorAll('a')].map((link) => link.href).filter((href) => href.startsWith(location.origin));
      const answers = await Promise.all(own.map(async (href) => [(await fetch(href)).status, href]));
      return answers.filter(([status]) => status !== 200);
    });
    assert.deepEqual(dead, [], path);
  }
});
