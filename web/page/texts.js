// Lists the kept texts, those set aside too, for reading and copying: on the page of words and on kept.html.
'use strict';
{
  const gs = globalThis.groundsheet;

  // Which outing is open is no text of anybody's.
  const worth = (records) => Object.entries(records).filter(([kind]) => kind !== 'open');

  async function collect() {
    const found = [];
    const seen = new Set();
    const add = (title, text) => {
      if (!text || seen.has(text)) return;
      seen.add(text);
      found.push({ title, text });
    };
    const sources = [
      async () => worth(await gs.database.read()).map(([kind, record]) => [`Kept ${kind}`, record.text]),
      async () => worth(gs.copies.second.read()).map(([kind, record]) => [`Kept ${kind}, second copy`, record.text]),
      async () => (await gs.database.read_aside()).map(({ kind, why, record }) => [`Set aside: ${kind} (${why})`, record.text]),
      async () => gs.copies.second.read_aside().map(({ kind, why, record }) => [`Set aside: ${kind} (${why})`, record.text]),
    ];
    for (const source of sources) {
      try {
        for (const [title, text] of await source()) add(title, typeof text === 'string' ? text : JSON.stringify(text));
      } catch {
        // a copy that cannot be read is simply not in the list
      }
    }
    return found;
  }

  function entry({ title, text }, index) {
    const heading = document.createElement('h2');
    heading.textContent = title;
    const area = document.createElement('textarea');
    area.readOnly = true;
    area.value = text;
    area.setAttribute('aria-label', title);
    const copy = document.createElement('button');
    copy.textContent = 'Copy';
    copy.addEventListener('click', () => gs.glue.copy_text(text));
    const save = document.createElement('button');
    save.textContent = 'Save as a file';
    save.addEventListener('click', () => gs.glue.save_file(`groundsheet-kept-${index + 1}.json`, text));
    return [heading, area, copy, save];
  }

  async function show(place) {
    const found = await collect();
    const intro = document.createElement('p');
    intro.textContent = found.length
      ? 'What this browser keeps, as text. A saved file can be opened in Groundsheet on any device.'
      : 'Nothing is kept in this browser.';
    place.replaceChildren(intro, ...found.flatMap(entry));
  }

  gs.texts = { show };
}
