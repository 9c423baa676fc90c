import { expect, it } from 'vitest';
import { scalesToChoose } from './scales-to-choose.ts';

const check = {
  isDue: true,
  lastAt: null,
  isGood: null,
  weightGrams: '100',
  toleranceGrams: '0',
  limitGrams: '0.01',
  limitBy: 'readability',
  isWeightRough: false,
} as const;
const scale = (id: string, readabilityGrams: string, isHeld: boolean | null = null) => ({
  id,
  name: `${id} scale`,
  readabilityGrams,
  check: isHeld === null ? null : { ...check, isHeld },
});
const choices = (...scales: Parameters<typeof scalesToChoose>[0]) => scalesToChoose(scales);

it('offers the finest scale first, by mass and not by its digits', () => {
  const all = choices(scale('bench', '1'), scale('small', '0.01', false), scale('middle', '0.1'));
  expect(all.map(({ id }) => id)).toEqual(['small', 'middle', 'bench']);
  expect(all[0]?.name).toBe('small scale');
});

it('offers one that did not pass its check last, and says so', () => {
  const all = choices(scale('small', '0.01', true), scale('bench', '1'), scale('middle', '0.1', false));
  expect(all.map(({ id }) => id)).toEqual(['middle', 'bench', 'small']);
  expect(all.at(-1)?.name).toBe('small scale: did not pass its check');
});

it('offers nothing where there is none', () => {
  expect(choices()).toEqual([]);
});
