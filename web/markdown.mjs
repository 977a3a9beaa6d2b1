// Turns the part of Markdown that our own documents use into HTML: headings, paragraphs, lists, tables, code blocks; in the
// line code, bold, emphasis, links. Everything else is text.

const escape = (text) => text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign]);

export const anchor_of = (heading) =>
  heading.toLowerCase().replace(/[^\p{L}\p{N} -]/gu, '').trim().replace(/ +/g, '-');

// `link(target)` gives the address to use, or undefined: then only the words stay.
function inline(text, link) {
  const parts = text.split(/(`[^`]+`)/);
  return parts.map((part) => {
    if (part.length > 2 && part.startsWith('`') && part.endsWith('`')) return `<code>${escape(part.slice(1, -1))}</code>`;
    return escape(part)
      .replace(/\[([^\]]+)\]\(([^)\s]+)\)/g, (_, words, target) => {
        const address = link(target);
        return address === undefined ? words : `<a href="${address}">${words}</a>`;
      })
      .replace(/&lt;(https:\/\/[^\s]+?)&gt;/g, '<a href="$1">$1</a>')
      .replace(/\*\*([^*]+)\*\*/g, '<strong>$1</strong>')
      .replace(/(^|[^\w*])[*_]([^*_\s](?:[^*_]*[^*_\s])?)[*_](?![\w*])/g, '$1<em>$2</em>');
  }).join('');
}

const item = /^(\s*)(?:([-*])|(\d+)[.)])\s+(.*)$/;
const is_rule = (line) => /^\s*\|?[\s:|-]*-[\s:|-]*\|[\s:|-]*$/.test(line);
const starts_block = (line) => /^(#{1,6} |```|\s*\||$)/.test(line.trimEnd()) || item.test(line);

function split_row(line) {
  const row = line.trim().replace(/^\||\|$/g, '');
  return row.split(/(?<!\\)\|/).map((cell) => cell.trim().replace(/\\\|/g, '|'));
}

// A list with its sub-lists; gives the HTML and the first line after it.
function read_list(lines, from, say) {
  const depth = item.exec(lines[from])[1].length;
  const tag = item.exec(lines[from])[2] ? 'ul' : 'ol';
  const items = [];
  let at = from;
  while (at < lines.length) {
    const found = item.exec(lines[at]);
    if (found && found[1].length > depth) {
      const [inner, next] = read_list(lines, at, say);
      items[items.length - 1].inner += inner;
      at = next;
    } else if (found && found[1].length === depth) {
      items.push({ text: found[4], inner: '' });
      ++at;
    } else if (!found && lines[at].trim() && /^\s/.test(lines[at]) && items.length) {
      items[items.length - 1].text += ` ${lines[at].trim()}`;
      ++at;
    } else {
      break;
    }
  }
  return [`<${tag}>\n${items.map(({ text, inner }) => `<li>${say(text)}${inner}</li>`).join('\n')}\n</${tag}>`, at];
}

function read_table(lines, from, say) {
  const row = (line, tag) => `<tr>${split_row(line).map((cell) => `<${tag}>${say(cell)}</${tag}>`).join('')}</tr>`;
  let at = from + 2;
  const body = [];
  while (at < lines.length && lines[at].includes('|')) body.push(row(lines[at++], 'td'));
  const head = `<thead>${row(lines[from], 'th')}</thead>`;
  return [`<div class="wide" tabindex="0"><table>${head}<tbody>\n${body.join('\n')}\n</tbody></table></div>`, at];
}

/** Markdown text to HTML; `deeper` shifts headings down. The text must not hold HTML: it is shown as written. */
export function to_html(markdown, { link = (target) => target, deeper = 0 } = {}) {
  const lines = markdown.replace(/\r\n?/g, '\n').split('\n');
  const say = (text) => inline(text, link);
  const out = [];
  let at = 0;
  while (at < lines.length) {
    const line = lines[at];
    const heading = /^(#{1,6}) +(.*?) *#*$/.exec(line);
    let block;
    if (!line.trim()) {
      ++at;
      continue;
    }
    if (heading) {
      const level = Math.min(heading[1].length + deeper, 6);
      out.push(`<h${level} id="${anchor_of(heading[2])}">${say(heading[2])}</h${level}>`);
      ++at;
    } else if (line.startsWith('```')) {
      const end = lines.findIndex((other, i) => i > at && other.startsWith('```'));
      const last = end < 0 ? lines.length : end;
      out.push(`<pre>${escape(lines.slice(at + 1, last).join('\n'))}</pre>`);
      at = last + 1;
    } else if (line.includes('|') && at + 1 < lines.length && is_rule(lines[at + 1])) {
      [block, at] = read_table(lines, at, say);
      out.push(block);
    } else if (item.test(line)) {
      [block, at] = read_list(lines, at, say);
      out.push(block);
    } else if (/^ {4}\S/.test(line)) {
      const from = at;
      while (at < lines.length && /^( {4}|\s*$)/.test(lines[at])) ++at;
      out.push(`<pre>${escape(lines.slice(from, at).map((text) => text.slice(4)).join('\n').trimEnd())}</pre>`);
    } else {
      const words = [line.trim()];
      ++at;
      while (at < lines.length && !starts_block(lines[at])) words.push(lines[at++].trim());
      out.push(`<p>${say(words.join(' '))}</p>`);
    }
  }
  return out.join('\n');
}

export { escape };
