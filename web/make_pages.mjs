// The pages of words beside the program: licences.html from docs/licences, methods.html and methods/*.html from docs/methods.
import { readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { escape, to_html } from './markdown.mjs';

// Same frame as web/page/kept.html; pack.mjs fills the policy and the style sheet's real name in.
function page(title, up, body, back) {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="@CSP@">
<title>${escape(title)} — Groundsheet</title>
<meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover">
<meta name="referrer" content="no-referrer">
<link rel="icon" type="image/png" href="${up}icon/icon-192.png">
<link rel="stylesheet" href="${up}page.css">
</head>
<body>
<main>
${body}
<p><a href="${up}${back.target}">${back.words}</a></p>
</main>
</body>
</html>
`;
}

function files_of(folder, pattern) {
  if (!statSync(folder, { throwIfNoEntry: false })) return [];
  return readdirSync(folder).filter((name) => pattern.test(name)).sort();
}

const title_of = (markdown, name) => (/^# +(.+)$/m.exec(markdown) || [undefined, name.replace(/\.md$/, '').replace(/[-_]/g, ' ')])[1];

// Links between the methods stay links; links to files that are not on the page become plain words.
function link_among(names) {
  return (target) => {
    if (/^(https:|#)/.test(target)) return target;
    const [path, anchor] = target.split('#');
    if (!names.includes(path)) return undefined;
    return `${path.replace(/\.md$/, '.html')}${anchor ? `#${anchor}` : ''}`;
  };
}

function licences(root) {
  const folder = join(root, 'docs/licences');
  const parts = files_of(folder, /\.(md|txt)$/).map((name) => {
    const text = readFileSync(join(folder, name), 'utf8');
    if (name.endsWith('.md')) return to_html(text, { deeper: 1, link: link_among([]) });
    return `<h2>${escape(name.replace(/\.txt$/, ''))}</h2>\n<pre>${escape(text)}</pre>`;
  });
  const body = parts.length ? parts.join('\n') : '<p>No licence texts were packed.</p>';
  return page('Licences', '', `<h1>Licences</h1>\n${body}`, { target: './', words: 'Back to Groundsheet' });
}

/** Path on the page -> HTML, with the marks that pack.mjs fills. */
export function make_pages(root) {
  const pages = new Map([['licences.html', licences(root)]]);
  const folder = join(root, 'docs/methods');
  const names = files_of(folder, /\.md$/);
  const listed = names.map((name) => {
    const markdown = readFileSync(join(folder, name), 'utf8');
    const html = name.replace(/\.md$/, '.html');
    const title = title_of(markdown, name);
    const body = to_html(markdown, { link: link_among(names) });
    pages.set(`methods/${html}`, page(title, '../', body, { target: 'methods.html', words: 'All methods' }));
    return `<li><a href="methods/${html}">${escape(title)}</a></li>`;
  });
  const list = listed.length ? `<ul>\n${listed.join('\n')}\n</ul>` : '<p>No methods were packed.</p>';
  pages.set('methods.html', page('Methods', '', `<h1>Methods</h1>\n${list}`, { target: './', words: 'Back to Groundsheet' }));
  return pages;
}
