import type { ReadingAndWriting } from './bench-hand.ts';
import { drawPhoto } from './draw-photo.ts';

/** The cup full, in grams: 200 ml and 45 g empty, lighter from round to round. */
const ROUNDS = [
  { looked: 'loose', goes: 'on', grossGrams: '195' },
  { looked: 'soft-peaks', goes: 'on', grossGrams: '181' },
  { looked: 'firm-peaks', goes: 'stop', grossGrams: '169' },
] as const;

export const LAST_CUP = { grossGrams: '169', tareGrams: '45', cupMl: '200', unwhippedGrams: '182' };

/** Three rounds of two minutes, each looked at with a cup, and a picture of the last. */
export async function whip(hand: ReadingAndWriting, batchId: string, position: number): Promise<void> {
  const at = { id: batchId };
  for (const [index, { grossGrams, ...seen }] of ROUNDS.entries()) {
    const place = { position, load: 1, round: index + 1 };
    await hand.write('beginStep', place, at);
    const cups = [{ ...LAST_CUP, grossGrams }];
    await hand.write('recordRound', { ...place, ...seen, minutes: '2', celsius: '21', cups }, at);
  }
  await hand.write(
    'addStepPhoto',
    { position, caption: 'Firm peaks after three rounds', base64: drawPhoto() },
    at,
  );
  await hand.write('recordStep', { position, celsius: null, minutes: '6', remark: '' }, at);
}
