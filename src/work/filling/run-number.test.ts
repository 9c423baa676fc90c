import { expect, it } from 'vitest';
import { runNumber } from './run-number.ts';

it('gives the first run the batch number itself and every later one a letter', () => {
  const numbers = [0, 1, 2, 25, 26, 27].map((before) => runNumber('CO-0031', before));
  expect(numbers).toEqual(['CO-0031', 'CO-0031B', 'CO-0031C', 'CO-0031Z', 'CO-0031AA', 'CO-0031AB']);
});

it('never gives two runs of a batch the same number', () => {
  const numbers = Array.from({ length: 1500 }, (_, before) => runNumber('CO-0031', before));
  expect(new Set(numbers).size).toBe(1500);
});
