import { describe, expect, it } from 'vitest';
import { askBeforeClose, type Closing } from './ask-before-close.ts';

const closing: Closing = {
  ...{
    missingGrams: null,
    tins: 5,
    onHeldScale: [],
    putAside: 0,
    spoiltTins: 0,
    lostGrams: '4.5',
    others: [],
  },
};
const ask = (more: Partial<Closing>) => askBeforeClose({ ...closing, ...more }).map(({ code }) => code);

describe('what is asked before a run is closed', () => {
  it('is nothing where all is counted', () => {
    expect(ask({})).toEqual([]);
    expect(ask({ putAside: 2, spoiltTins: 2 })).toEqual([]);
    expect(ask({ putAside: 2, spoiltTins: 3 })).toEqual([]);
  });

  it('is a tin that was put aside and not counted, and a mean below the label', () => {
    expect(ask({ putAside: 2, spoiltTins: 1 })).toEqual(['tins-put-aside']);
    expect(ask({ onHeldScale: [2, 3], missingGrams: '1' })).toEqual([
      'tins-on-held-scale',
      'mean-below-label',
    ]);
    expect(ask({ missingGrams: '0.01' })).toEqual(['mean-below-label']);
  });

  it('is a bowl that another run is filled from, from one tin of that run on', () => {
    const others = [{ number: 'LB-0001-B', aimGrams: '35.2' }];
    expect(ask({ lostGrams: '35.19', others })).toEqual([]);
    expect(ask({ lostGrams: '35.2', others })).toEqual(['bowl-filled-elsewhere']);
    expect(ask({ lostGrams: '35.2', others: [] })).toEqual([]);
  });
});
