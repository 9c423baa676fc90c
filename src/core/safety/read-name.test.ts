import { describe, expect, it } from 'vitest';
import { normaliseName, readNameHints } from './read-name.ts';

describe('reading names', () => {
  it('treats case, spaces and blanks round a slash alike', () => {
    expect(normaliseName('  Lavandula   OIL / Extract ')).toBe('lavandula oil/extract');
  });

  it('writes out Greek letters', () => {
    expect(normaliseName('α-Pinene')).toBe('alpha-pinene');
  });

  it('reads a plant part and a process from the name', () => {
    expect(readNameHints('rosa canina seed oil')).toEqual({ plantPart: 'seed' });
    expect(readNameHints('lime oil, distilled')).toEqual({ process: 'distilled' });
    expect(readNameHints('bergamot oil fcf')).toEqual({ process: 'furocoumarin-free' });
  });

  it('counts bud as flower, kernel as seed, stem as wood', () => {
    expect(readNameHints('eugenia caryophyllus bud oil').plantPart).toBe('flower');
    expect(readNameHints('myristica fragrans kernel oil').plantPart).toBe('seed');
    expect(readNameHints('eugenia caryophyllus stem oil').plantPart).toBe('wood');
  });

  it('reads nothing where a name says several parts', () => {
    expect(readNameHints('lavandula intermedia flower/leaf/stem oil')).toEqual({});
  });
});
