// What the page asks of the machine while one is on the air, and printing: screen kept awake, a buzz, words for paper.
'use strict';
{
  const gs = globalThis.groundsheet;
  let wanted = false; // awake
  let lock = null; // of the screen, while the browser holds one for us
  let asking = false;

  // The browser takes the lock back whenever the page is out of sight, and on low battery.
  async function hold() {
    if (!wanted || lock || asking || document.hidden || !navigator.wakeLock) return;
    asking = true;
    try {
      const held = await navigator.wakeLock.request('screen');
      held.addEventListener('release', () => lock === held && (lock = null));
      lock = held;
    } catch {
      // refused: the machine's own settings say so
    }
    asking = false;
    if (!wanted) let_go();
  }

  function let_go() {
    if (lock) lock.release().catch(() => {});
    lock = null;
  }

  function keep_awake(on) {
    wanted = on;
    if (on) hold();
    else let_go();
  }
  document.addEventListener('visibilitychange', hold);

  // Asks for a buzz; browsers refuse before the first touch, and many machines have none.
  function vibrate(milliseconds) {
    if (navigator.vibrate) navigator.vibrate(milliseconds);
  }

  function element(tag, text, ...inside) {
    const made = document.createElement(tag);
    if (text) made.textContent = text;
    made.append(...inside);
    return made;
  }

  const row_of = ([label, value]) => element('tr', '', element('th', label), element('td', value));

  function part_of({ heading, rows = [], lines = [] }) {
    const inside = heading ? [element('h2', heading)] : [];
    if (rows.length) inside.push(element('table', '', element('tbody', '', ...rows.map(row_of))));
    if (lines.length) inside.push(element('ul', '', ...lines.map((line) => element('li', line))));
    return element('section', '', ...inside);
  }

  // On one page: with the largest letters, down to the smallest that can be read, that fit both A4 and US Letter.
  const sheet_px = (254 / 25.4) * 96, largest_pt = 10, smallest_pt = 6;
  function fit_one_page(paper) {
    paper.classList.add('measured');
    for (let letters_pt = largest_pt; letters_pt >= smallest_pt; letters_pt -= 0.25) {
      paper.style.fontSize = `${letters_pt}pt`;
      if (paper.scrollHeight <= sheet_px) break;
    }
    paper.classList.remove('measured');
  }

  // The words stand in the page for as long as the printing takes; only paper shows them.
  function print({ title, parts }) {
    const paper = document.getElementById('paper');
    paper.replaceChildren(element('h1', title), ...parts.map(part_of));
    fit_one_page(paper);
    const name = document.title;
    document.title = title;
    window.addEventListener('afterprint', () => (document.title = name), { once: true });
    window.print();
  }

  gs.machine = { keep_awake, vibrate, print, awake: () => Boolean(lock) };
}
