// Three people who cannot do what the others can: one has a keyboard and nothing else, one a finger on a phone, one hears the page
// and acts through roles and names. Each can press, move a slider and write into a field; nothing here helps them past that.
import { frames, poll, still, swipe } from './harness.mjs';

const described = { button: 'button', slider: 'input[type=range]', textbox: 'input[type=text]', checkbox: '[role=checkbox]' };

const find = (page, role, name) => page.locator('#mirror').getByRole(role, { name, exact: typeof name === 'string' }).first();

/** Waits for the control, and for the page to be still. */
async function found(page, role, name) {
  const control = find(page, role, name);
  await control.waitFor({ state: 'attached' });
  await still(page);
  return control;
}

/** Tab and Shift+Tab, Enter, arrows and letters. */
export function keyboard(page) {
  // In which direction the control lies: a person sees that, a test must look.
  const lies_ahead = (control) => control.evaluate((wanted) =>
    Boolean(document.activeElement.compareDocumentPosition(wanted) & Node.DOCUMENT_POSITION_FOLLOWING));
  async function reach(role, name) {
    const control = await found(page, role, name);
    for (let tries = 0; tries < 400; ++tries) {
      if (await control.evaluate((one) => document.activeElement === one)) return control;
      await page.keyboard.press((await lies_ahead(control)) ? 'Tab' : 'Shift+Tab');
    }
    const at = await page.evaluate(() => document.activeElement.outerHTML);
    throw new Error(`Tab never reached the ${described[role]} ${name}, it is at ${at}`);
  }
  return {
    async press(name, role = 'button') {
      await reach(role, name);
      await page.keyboard.press('Enter');
      await still(page);
    },
    async move(name) {
      await reach('slider', name);
      await page.keyboard.press('PageUp');
      await still(page);
    },
    async write(name, text) {
      await reach('textbox', name);
      await page.keyboard.press('Control+A');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
      await still(page);
    },
  };
}

/** One finger: taps, swipes that scroll, swipes along a slider. Only what lies in sight can be touched. */
export function finger(page) {
  const view = page.viewportSize();
  // What a finger would meet at the control's middle is the control itself, and all of it is in sight.
  const in_reach = (control) => control.evaluate((one) => {
    const box = one.getBoundingClientRect();
    const hit = document.elementFromPoint(box.x + box.width / 2, box.y + box.height / 2);
    return box.top >= 0 && box.bottom <= innerHeight && hit === one;
  });
  // Whoever wants to scroll does not take hold of a handle: that would move it.
  const beside_handles = (y) => page.evaluate(([places, at]) =>
    places.find((x) => !document.elementFromPoint(x, at)?.matches('input[type=range]')) ?? places[0],
  [[view.width - 20, 20, view.width / 2, view.width / 4], y]);
  async function reach(role, name) {
    const control = await found(page, role, name);
    for (let tries = 0; tries < 60; ++tries) {
      if (await in_reach(control)) return control.boundingBox();
      const box = await control.boundingBox();
      const middle = view.height * 0.45;
      const wanted = box.y + box.height / 2 - middle;
      const by = Math.max(-220, Math.min(220, wanted));
      const from = middle + by / 2, x = await beside_handles(from);
      await swipe(page, { x, y: from }, { x, y: middle - by / 2 }, 10);
      await still(page);
    }
    throw new Error(`no swipe brought the ${described[role]} ${name} into reach`);
  }
  const tap = async (box) => {
    await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
    await still(page);
  };
  return {
    async press(name, role = 'button') {
      await tap(await reach(role, name));
    },
    async move(name) {
      const box = await reach('slider', name);
      const y = box.y + box.height / 2;
      await swipe(page, { x: box.x + box.width * 0.45, y }, { x: box.x + box.width * 0.7, y: y + 2 }, 10);
      await still(page);
    },
    async write(name, text) {
      await tap(await reach('textbox', name));
      await find(page, 'textbox', name).selectText();
      await page.keyboard.insertText(text); // what the system's keyboard does
      await page.keyboard.press('Enter');
      await still(page);
    },
  };
}

/** What a screen reader does with the elements it finds: a click without a pointer, a slider's next value, a field's text. */
export function reader(page) {
  return {
    async press(name, role = 'button') {
      const control = await found(page, role, name);
      const before = await frames(page);
      await control.evaluate((one) => one.click());
      await poll(async () => (await frames(page)) > before, `${name} to do something`);
      await still(page);
    },
    async move(name) {
      const control = await found(page, 'slider', name);
      await control.evaluate((one) => {
        const [least, most] = [Number(one.min), Number(one.max)];
        one.value = String(least + (most - least) * 0.6);
        one.dispatchEvent(new Event('input', { bubbles: true }));
      });
      await still(page);
    },
    async write(name, text) {
      const field = await found(page, 'textbox', name);
      await field.fill(text);
      await field.evaluate((one) => one.blur());
      await still(page);
    },
  };
}
