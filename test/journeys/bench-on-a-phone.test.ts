import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openBrowser, openPage } from '../workshop/open-browser.ts';
import { stampBy } from '../workshop/stamp.ts';
import { type RunningServer, startServer } from '../workshop/start-server.ts';

const PHONE = { width: 375, height: 750 };
/** A greasy knuckle (common practice, no source). */
const TAP = 64;

/** One step of a batch on a small phone, with a thumb. */
describe('the bench on a phone', () => {
  let server: RunningServer;
  let browser: Browser;
  let person = '';
  let path = '';

  beforeAll(async () => {
    server = await startServer({ args: ['--example'] });
    browser = await openBrowser();
    person = (await server.call('getWorkshop')).people[0]?.id ?? '';
    path = `/making/${await startAny(server, person)}`;
  });
  afterAll(async () => {
    await browser?.close();
    await server.stop();
  });

  const open = async () => {
    const opened = await openPage(browser, person, { viewport: PHONE, hasTouch: true });
    await opened.page.goto(server.address + path);
    await scale(opened.page).waitFor();
    return opened;
  };

  it('has all keys, the target, the scale and the button in view at once, each large enough', async () => {
    const { page, context } = await open();
    const keys = page.getByRole('group', { name: 'Number keys' }).getByRole('button');
    expect(await keys.count()).toBe(12);
    const targets = [...(await keys.all()), page.getByRole('button', { name: /^Done:/ })];
    for (const target of targets) {
      const box = await target.boundingBox();
      expect(box?.height ?? 0).toBeGreaterThanOrEqual(TAP);
      expect(box?.width ?? 0).toBeGreaterThanOrEqual(TAP);
      expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
      expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(PHONE.height);
    }
    const firstKey = (await keys.first().boundingBox())?.y ?? 0;
    for (const shown of [
      page.getByText('Weigh out'),
      scale(page),
      page.getByText('type what the scale shows'),
    ]) {
      const box = await shown.boundingBox();
      expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(firstKey);
    }
    await context.close();
  });

  it('keeps the digits through a reload, until they are weighed in', async () => {
    const { page, context } = await open();
    for (const key of ['1', '2', '3']) await page.getByRole('button', { name: key, exact: true }).tap();
    await page.reload();
    await scale(page).waitFor();
    expect(await scale(page).inputValue()).toBe('123');
    await page.getByRole('button', { name: 'Rub out' }).tap();
    expect(await scale(page).inputValue()).toBe('12');
    await context.close();
  });

  it.each([
    ['-5', 'a weight is more than 0'],
    ['0', 'a weight is more than 0'],
    ['abc', 'is not a number'],
    ['106,2', 'a comma may part thousands or decimals'],
  ])('says at once what is wrong with %s, and asks nobody what happened', async (typed, sentence) => {
    const { page, context } = await open();
    await scale(page).fill(typed);
    const said = page.getByText(sentence);
    await said.waitFor();
    await page.getByRole('button', { name: /^Done:/ }).tap();
    expect(await page.getByRole('dialog').count()).toBe(0);
    const keys = await page.getByRole('group', { name: 'Number keys' }).boundingBox();
    const done = await page.getByRole('button', { name: /^Done:/ }).boundingBox();
    // A part of a pixel is not out of view.
    expect(Math.floor((done?.y ?? 0) + (done?.height ?? 0))).toBeLessThanOrEqual(PHONE.height);
    const box = await said.boundingBox();
    expect((box?.y ?? 0) + (box?.height ?? 0), 'not behind the keys').toBeLessThanOrEqual(keys?.y ?? 0);
    await scale(page).fill('7');
    await said.waitFor({ state: 'detached' });
    await context.close();
  });

  it.each([PHONE, { width: 820, height: 1180 }, { width: 1280, height: 900 }])(
    'shows scale, verdict, keys and button beside what is wrong, at %o',
    async (viewport) => {
      const { page, context } = await openPage(browser, person, { viewport });
      await page.goto(server.address + path);
      await scale(page).fill(await moreThanTheLotHas());
      await page.getByRole('button', { name: /^Done:/ }).click();
      await itIsSo(page).click();
      const alert = page.getByRole('alert').filter({ hasText: 'by the book' });
      await alert.waitFor();
      const keys = (await page.getByRole('group', { name: 'Number keys' }).boundingBox())?.y ?? 0;
      const done = await page.getByRole('button', { name: /^Done:/ }).boundingBox();
      expect((done?.y ?? 0) + (done?.height ?? 0)).toBeLessThanOrEqual(viewport.height);
      const link = page.getByRole('link', { name: /^Weigh the tub/ });
      const shown = [
        page.getByText('Weigh out'),
        scale(page),
        page.getByText('too much', { exact: true }),
        link,
      ];
      const marks = page.getByRole('img', { name: /grams; right between/ }).locator('span');
      for (const each of [...shown, ...(await marks.all())]) {
        const box = await each.boundingBox();
        expect(box?.y ?? -1).toBeGreaterThanOrEqual(0);
        expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(keys);
      }
      await scale(page).fill('7');
      await alert.waitFor({ state: 'detached' });
      await context.close();
    },
  );

  it('takes what is typed at once where there is a keyboard, and calls none up on a phone', async () => {
    const desk = await openPage(browser, person, { viewport: { width: 1280, height: 900 } });
    await desk.page.goto(server.address + path);
    await scale(desk.page).waitFor();
    await desk.page.keyboard.type('12');
    expect(await scale(desk.page).inputValue()).toBe('12');
    await desk.context.close();
    const phone = await openPage(browser, person, { viewport: PHONE, hasTouch: true, isMobile: true });
    await phone.page.goto(server.address + path);
    await scale(phone.page).waitFor();
    expect(await scale(phone.page).evaluate((field) => field === field.ownerDocument.activeElement)).toBe(
      false,
    );
    await phone.context.close();
  });

  it('asks nothing before the lot holds enough, leads to its tub, and comes back with the digits', async () => {
    const { page, context } = await open();
    const typed = await moreThanTheLotHas();
    await scale(page).fill(typed);
    await page.getByRole('button', { name: /^Done:/ }).tap();
    await itIsSo(page).tap();
    await page.getByRole('link', { name: /^Weigh the tub/ }).tap();
    expect(await page.getByRole('dialog').count()).toBe(0);
    const full = page.getByLabel('With its tub');
    await full.fill('1');
    await page.getByLabel('The tub alone').fill('2');
    await page.getByRole('button', { name: 'Enter the count' }).tap();
    const swapped = page.getByRole('alert').filter({ hasText: 'heavier than the tub' });
    await swapped.waitFor();
    await full.fill(await onHand());
    await swapped.waitFor({ state: 'detached' });
    await page.getByLabel('The tub alone').fill('0');
    await page.getByRole('button', { name: 'Enter the count' }).tap();
    await scale(page).waitFor();
    expect(new URL(page.url()).pathname).toBe(path);
    expect(await scale(page).inputValue()).toBe(typed);
    await context.close();
  });

  it('keeps the weight that was asked about when the answer is clicked twice, and types nothing behind it', async () => {
    const { page, context } = await open();
    const first = await firstAddition();
    const keys = await boxesOf(page.getByRole('group', { name: 'Number keys' }).getByRole('button'));
    await scale(page).fill('20');
    await page.getByRole('button', { name: /^Done:/ }).tap();
    await page.getByRole('button', { name: 'Keep it as it is, and say why' }).tap();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('textbox', { name: 'What' }).fill('Too little');
    await dialog.getByRole('textbox', { name: 'Why' }).tap();
    await dialog.getByRole('textbox', { name: 'Why' }).fill('The tub was empty');
    const [save] = await boxesOf(dialog.getByRole('button', { name: 'Save' }));
    const place = keys.flatMap((key) => (save && placeInBoth(save, key)) ?? [])[0];
    if (!place) throw new Error('no key lies behind Save: the test has to click another button');
    // The answer takes as long as a busy network does.
    await page.route('**/additions', async (route) => {
      await new Promise((soon) => setTimeout(soon, 300));
      await route.continue();
    });
    await page.mouse.dblclick(place.x, place.y, { delay: 40 });
    await dialog.waitFor({ state: 'detached' });
    await expect.poll(async () => (await firstAddition()).done?.actualGrams, { timeout: 10_000 }).toBe('20');
    expect(first.done).toBeNull();
    await expect.poll(() => scale(page).inputValue(), { timeout: 10_000 }).toBe('');
    await context.close();
  });

  it('opens each step at its top, and keeps the place through a reload and on the way back', async () => {
    await weighFirst();
    const { page, context } = await open();
    const name = () => page.getByRole('heading', { level: 1 }).textContent();
    const first = await name();
    await page.evaluate('scrollTo(0, document.documentElement.scrollHeight)');
    await page.getByRole('button', { name: 'Back', exact: true }).tap();
    const before = await name();
    expect(before).not.toBe(first);
    expect(await page.evaluate('scrollY')).toBe(0);
    await page.reload();
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect(await name()).toBe(before);
    await page.goBack();
    await expect.poll(name, { timeout: 10_000 }).toBe(first);
    await context.close();
  });

  async function weighFirst() {
    const { position, lotId, scaleId, targetGrams, done } = await firstAddition();
    if (done) return;
    const body = { stamp: stampBy(person), position, lotId, scaleId, actualGrams: targetGrams };
    await server.call('recordAddition', { params: { id: path.split('/').at(-1) ?? '' }, body });
  }
  async function firstAddition() {
    const batch = await server.call('getBatch', { params: { id: path.split('/').at(-1) ?? '' } });
    const [first] = batch.screens;
    if (first?.kind !== 'addition') throw new Error('the batch does not begin with a weighing');
    return first;
  }
  async function onHand(): Promise<string> {
    const id = (await firstAddition()).lotId ?? '';
    return (await server.call('getLot', { params: { id } })).lot.onHand;
  }
  const moreThanTheLotHas = async () => String(Math.ceil(Number(await onHand())) + 1);
});

/** More than this scale holds: it stood on one that holds it. */
const itIsSo = (page: Page) => page.getByRole('button', { name: /^(Yes:|It stood on)/ }).first();

const scale = (page: Page) => page.getByRole('textbox', { name: 'Grams on the scale' });

type Box = NonNullable<Awaited<ReturnType<Locator['boundingBox']>>>;

const boxesOf = async (all: Locator): Promise<Box[]> =>
  (await Promise.all((await all.all()).map((each) => each.boundingBox()))).flatMap((box) => box ?? []);

/** A point that lies well within both, or nothing. */
function placeInBoth(one: Box, other: Box): { x: number; y: number } | undefined {
  const left = Math.max(one.x, other.x);
  const right = Math.min(one.x + one.width, other.x + other.width);
  const top = Math.max(one.y, other.y);
  const foot = Math.min(one.y + one.height, other.y + other.height);
  return right - left > 4 && foot - top > 4 ? { x: (left + right) / 2, y: (top + foot) / 2 } : undefined;
}

/** Whichever mixture of the example can be started as a trial now. */
async function startAny(server: RunningServer, person: string): Promise<string> {
  for (const formula of await server.call('listFormulas')) {
    const wish = {
      revisionId: formula.latest?.id,
      purpose: 'trial',
      markets: ['GB'],
      size: { by: 'grams', grams: '100' },
    };
    const started = await server.send('startBatch', { body: { stamp: stampBy(person), wish } });
    const batch = (await started.json()) as { id?: string; screens?: { kind: string }[] };
    if (started.ok && batch.id !== undefined && batch.screens?.[0]?.kind === 'addition') return batch.id;
  }
  throw new Error('no mixture of the example could be started');
}
