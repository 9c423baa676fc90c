import type { Locator, Page } from 'playwright-core';
import type { BenchHands } from './bench-hands.ts';

export interface Walk {
  readonly page: Page;
  readonly hands: BenchHands;
}

export const button = ({ page }: Walk, name: string | RegExp): Locator => page.getByRole('button', { name });
const field = ({ page }: Walk, name: string | RegExp): Locator => page.getByRole('textbox', { name });
const scaleOf = (walk: Walk) => field(walk, 'Grams on the scale');

/** The name of the screen, once it is that. */
export const untilScreen = ({ page }: Walk, name: string): Promise<void> =>
  page.getByRole('heading', { level: 1, name, exact: true }).waitFor();

/** The button that keeps what was entered, and goes on. */
const done = (walk: Walk): Locator => button(walk, /(^|\. )Done:/);

/** What the screen asks for, in its large digits. */
async function readTarget({ page }: Walk, above: 'Weigh out' | 'Still to weigh'): Promise<string> {
  const said = await page.getByText(above, { exact: true }).locator('xpath=..').textContent();
  const target = /([\d.]+)\s*g$/.exec(said ?? '')?.[1];
  if (target === undefined) throw new Error(`no target in “${said}”`);
  return target;
}

const presses = async (walk: Walk, ...names: readonly (string | RegExp)[]): Promise<void> => {
  for (const name of names) await walk.hands.press(button(walk, name));
};

/** Before the first weighing of the day: the check weight, which the scale shows to its last digit. */
export async function checkScale(walk: Walk): Promise<void> {
  await walk.hands.press(walk.page.getByText(/^First of all today: check/));
  await walk.hands.send(field(walk, 'The scale shows'), '100.00', button(walk, 'Enter the check'));
  await walk.page.getByText(/^checked .*: good$/).waitFor();
}

/** An addition, by its target. */
export async function weigh(walk: Walk, item: string): Promise<void> {
  await untilScreen(walk, item);
  await walk.hands.send(scaleOf(walk), await readTarget(walk, 'Weigh out'), done(walk));
}

/** Too much by so many grams: the rest is made larger in one tap. */
export async function pourOver(walk: Walk, item: string, moreGrams: number): Promise<void> {
  await untilScreen(walk, item);
  const target = Number(await readTarget(walk, 'Weigh out'));
  await walk.hands.send(scaleOf(walk), (target + moreGrams).toFixed(2), done(walk));
  await presses(walk, /^Make it larger: /);
}

/** So much is left of the planned lot; the rest comes of the other one. */
export async function weighFromTwo(walk: Walk, item: string, firstGrams: string): Promise<void> {
  await untilScreen(walk, item);
  await walk.hands.enter(scaleOf(walk), firstGrams);
  await presses(walk, 'Too much, too little, spilt?', /^The lot is empty/, /^Lot .* there$/);
  await presses(walk, 'The tub is empty: book it so');
  await walk.page.getByText('Still to weigh').waitFor();
  await walk.page.getByText(/^Not lot L-\d+ any more$/).waitFor();
  await walk.hands.send(scaleOf(walk), await readTarget(walk, 'Still to weigh'), done(walk));
}

/** Both waits are begun and left to run: the next thing is weighed meanwhile. */
export async function beginHeat(walk: Walk): Promise<void> {
  await untilScreen(walk, 'Melt in a water bath');
  await presses(walk, 'The heat is on: begin', /^It is hot: hold it/, 'Next step');
  await untilScreen(walk, 'Hold it warm');
  await presses(walk, 'Begin to hold it', 'Next step');
}

/** Once time is up, the strip on top leads back; then on to where the work stands. */
export async function endHeat(walk: Walk): Promise<void> {
  await presses(walk, /^Show Melt in a water bath: Time is up/);
  await untilScreen(walk, 'Melt in a water bath');
  await walk.hands.send(field(walk, /^How hot is it/), '72', done(walk));
  await untilScreen(walk, 'Hold it warm');
  await walk.page.getByText('Time is up', { exact: true }).waitFor();
  await walk.hands.send(field(walk, /^Temperature at the end/), '71', done(walk));
  await untilScreen(walk, 'Sunflower oil');
  await presses(walk, 'Next step');
  await untilScreen(walk, 'Rice starch');
  await presses(walk, 'Next step');
}

export async function coolAndSet(walk: Walk): Promise<void> {
  await untilScreen(walk, 'Cool until lukewarm');
  await presses(walk, 'Take it off the heat: begin to cool');
  await walk.hands.send(field(walk, /^How warm is it now/), '38', done(walk));
  await untilScreen(walk, 'Cover and let it set');
  await presses(walk, 'It stands still and covered: begin');
  await walk.page.getByText(/^Press it in the middle/).waitFor();
  await presses(walk, /^It is firm\. Done:/);
}

/** One round, looked at and good as it is; then a tin full and levelled tells how much goes in. */
export async function whipAndTest(walk: Walk): Promise<void> {
  await untilScreen(walk, 'Whip until pale');
  await presses(walk, 'Begin round 1', 'Stop the machine and look', 'Firm peaks', 'Stop: this is it');
  await presses(walk, /^All is whipped\. Done:/);
  await untilScreen(walk, 'Weigh a full tin');
  await presses(walk, /^Tin of Whole whipped butter: 66/);
  await walk.hands.send(field(walk, /^Full/), '51.4', done(walk));
}

export async function finish(walk: Walk, grossGrams: string): Promise<void> {
  await untilScreen(walk, 'Everything is in. What came out?');
  await walk.hands.send(field(walk, /^Gross/), grossGrams, button(walk, 'It is made'));
}

/** As many tins as the batch was sized for, on the scale that is proposed, less what an empty one is known to weigh. */
export async function startFilling(walk: Walk): Promise<void> {
  await walk.hands.press(walk.page.getByRole('link', { name: 'Fill tins' }));
  await presses(walk, 'Start filling');
  await button(walk, 'It is clear').waitFor();
}

export async function makeReady(walk: Walk): Promise<void> {
  await presses(walk, 'It is clear', 'Washed and dried', 'That is what lies here');
  await scaleOf(walk).waitFor();
}

export async function fill(walk: Walk, ...gross: readonly string[]): Promise<void> {
  for (const each of gross) {
    await walk.hands.send(scaleOf(walk), each, button(walk, 'Keep this tin'));
    await scaleOf(walk).and(walk.page.locator('[value=""]')).waitFor();
  }
}

/** One tin that is too light, filled up and weighed again. */
export async function fillUp(walk: Walk, lightGrams: string, grossGrams: string): Promise<void> {
  await fill(walk, lightGrams);
  await presses(walk, /is filled up: weigh it again$/);
  await fill(walk, grossGrams);
}

export async function closeAndRelease(walk: Walk): Promise<void> {
  await presses(walk, 'Filling is over', 'Release for sale');
  await walk.page.getByText(/^Released by Ada Quill/).waitFor();
}
