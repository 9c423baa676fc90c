import type { Locator, Page } from 'playwright-core';

/** How somebody works a page: with a thumb, or with the keyboard alone. Both see names and roles, never selectors. */
export interface PageHands {
  /** Presses a button or follows a link. */
  press(target: Locator): Promise<void>;
  type(target: Locator, text: string): Promise<void>;
  choose(target: Locator, option: string): Promise<void>;
  /** YYYY-MM-DD. */
  setDate(target: Locator, date: string): Promise<void>;
}

export const thumb: PageHands = {
  press: (target) => target.tap(),
  async type(target, text) {
    await target.tap();
    await target.fill(text);
  },
  async choose(target, option) {
    await target.tap();
    await target.selectOption({ label: option });
  },
  setDate: (target, date) => target.fill(date),
};

/** More stops than any page has; a page whose thing cannot be reached by Tab fails here. */
const MOST_STOPS = 250;

/** Moves the focus by Tab alone until it stands on the target. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    if (await target.evaluate((element) => element === element.ownerDocument.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never reached ${target}`);
}

export const keyboardOf = (page: Page): PageHands => ({
  async press(target) {
    await tabTo(page, target);
    await page.keyboard.press('Enter');
  },
  async type(target, text) {
    await tabTo(page, target);
    await page.keyboard.press('Control+A');
    await page.keyboard.type(text);
  },
  async choose(target, option) {
    await tabTo(page, target);
    await page.keyboard.type(option);
  },
  async setDate(target, date) {
    await tabTo(page, target);
    const [year, month, day] = date.split('-');
    await page.keyboard.type(`${day}${month}${year}`);
    if ((await target.inputValue()) === date) return;
    // A browser in American dress shows the month first.
    for (let part = 0; part < 2; part += 1) await page.keyboard.press('ArrowLeft');
    await page.keyboard.type(`${month}${day}${year}`);
  },
});
