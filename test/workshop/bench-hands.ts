import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';

/** How somebody works the bench: with a knuckle and the keys on the screen, or with the keyboard alone. */
export interface BenchHands {
  /** Onto a page that was loaded anew, where nothing has the focus yet. */
  arrive(): Promise<void>;
  /** Presses a button or follows a link. */
  press(target: Locator): Promise<void>;
  /** Digits into a field: by the keys that stand on the screen, or typed. */
  enter(field: Locator, digits: string): Promise<void>;
  /** Digits into a field, and on: by the button that keeps them, or by Enter in the field. */
  send(field: Locator, digits: string, button: Locator): Promise<void>;
}

/** A greasy knuckle: design of the bench (common practice, no source). */
const TAP_PX = 64;

/** A part of a pixel is lost where a screen is scaled. */
async function expectLarge(target: Locator): Promise<void> {
  const box = await target.boundingBox();
  const size = {
    of: String(target),
    width: Math.round(box?.width ?? 0),
    height: Math.round(box?.height ?? 0),
  };
  expect.soft(size, 'what is tapped takes a knuckle').toEqual({
    of: size.of,
    width: Math.max(size.width, TAP_PX),
    height: Math.max(size.height, TAP_PX),
  });
}

/** Taps and nothing else: neither a keyboard nor a field that is filled from outside. */
export function knuckleOf(page: Page): BenchHands {
  async function press(target: Locator): Promise<void> {
    await target.waitFor();
    await expectLarge(target);
    await target.tap();
  }
  async function enter(field: Locator, digits: string): Promise<void> {
    // Fields are text: only what is tapped to act has to be large. Keys type into the field that was tapped last.
    await field.tap();
    const form = page.getByRole('form').filter({ has: field });
    const keys = form.getByRole('group', { name: 'Number keys' });
    for (const digit of digits)
      await press(keys.getByRole('button', { name: digit === '.' ? 'Point' : digit, exact: true }));
    await expect.poll(() => field.inputValue()).toBe(digits);
  }
  return {
    arrive: () => Promise.resolve(),
    press,
    enter,
    async send(field, digits, button) {
      await enter(field, digits);
      await press(button);
    },
  };
}

/** More stops than any page has; a page whose thing cannot be reached by Tab fails here. */
const MOST_STOPS = 120;

/** Between two keys of a hand: what comes faster is taken for a scale that types. */
const HAND_MS = 60;

type Where = 'here' | 'before' | 'after' | 'lost';

/** Where the target stands from where the focus is, in the order of the page. */
const whereFromFocus = (target: Locator): Promise<Where> =>
  target.evaluate((element): Where => {
    const focused = element.ownerDocument.activeElement;
    if (focused === null || focused === element.ownerDocument.body) return 'lost';
    if (focused === element) return 'here';
    // DOCUMENT_POSITION_PRECEDING of the DOM standard.
    return (focused.compareDocumentPosition(element) & 2) === 0 ? 'after' : 'before';
  });

/**
 * Runs in the page: what has the focus is marked by an outline or a shadow, lies in the window, and is not wholly behind
 * something else (WCAG 2.2, 2.4.7 and 2.4.11). As text, since the page's types are not here. Empty: all is well.
 */
const FOCUS_UNSEEN = `(() => {
  const focused = document.activeElement;
  if (!focused || focused === document.body) return 'nothing has the focus';
  // A field may be marked as a whole: the label around it, or the box.
  const around = (each, levels) => levels === 0 || !each ? [] : [each, ...around(each.parentElement, levels - 1)];
  const isMarked = around(focused, 4).some((each) => {
    const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(each);
    return (outlineStyle !== 'none' && outlineWidth !== '0px') || boxShadow !== 'none';
  });
  const box = focused.getBoundingClientRect();
  const across = [0.1, 0.5, 0.9].map((part) => box.left + box.width * part);
  const down = [0.1, 0.5, 0.9].map((part) => box.top + box.height * part);
  const isSeen = across.some((x) => down.some((y) => {
    const top = document.elementFromPoint(x, y);
    return top && (focused.contains(top) || top.closest('label')?.contains(focused));
  }));
  const name = focused.tagName + ' ' + (focused.getAttribute('aria-label') ?? focused.textContent).slice(0, 60);
  return (isMarked ? '' : 'not marked: ' + name) + (isSeen ? '' : 'not in sight: ' + name);
})()`;

export function keysOf(page: Page): BenchHands {
  /** An action may take away what had the focus: then something else on the page has it. */
  const expectFocusKept = (target: Locator) =>
    expect
      .poll(() => whereFromFocus(target), { message: `focus before ${target}`, timeout: 2_000 })
      .not.toBe('lost');
  /** A question that has just come lies behind glass for a moment, so that a second tap does not answer it. */
  const expectSeen = (target: Locator) =>
    expect.poll(() => page.evaluate(FOCUS_UNSEEN), { message: String(target), timeout: 3_000 }).toBe('');
  async function go(target: Locator): Promise<void> {
    await target.waitFor();
    await expectFocusKept(target);
    for (let stop = 0; stop < MOST_STOPS; stop += 1) {
      const where = await whereFromFocus(target);
      if (where === 'here') return expectSeen(target);
      await page.keyboard.press(where === 'before' ? 'Shift+Tab' : 'Tab');
    }
    throw new Error(`Tab never reached ${target}`);
  }
  async function enter(field: Locator, digits: string): Promise<void> {
    await go(field);
    await page.keyboard.type(digits, { delay: HAND_MS });
    await expect.poll(() => field.inputValue()).toBe(digits);
  }
  return {
    arrive: () => page.keyboard.press('Tab'),
    async press(target) {
      await go(target);
      await page.keyboard.press('Enter');
    },
    enter,
    async send(field, digits) {
      await enter(field, digits);
      await page.keyboard.press('Enter');
    },
  };
}
