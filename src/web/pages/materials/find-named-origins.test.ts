import { describe, expect, it } from 'vitest';
import { findNamedOrigins } from './find-named-origins.ts';

const sunflower = { inciEu: 'Helianthus Annuus Seed Oil', inciUs: '', botanical: 'Helianthus annuus' };

describe('an origin that the name tells of', () => {
  it('is asked after where it is not ticked, and no more where it is', () => {
    expect(findNamedOrigins({ ...sunflower, origins: [] })).toEqual([
      { flag: 'daisy-family', inName: 'Helianthus Annuus Seed Oil' },
    ]);
    expect(findNamedOrigins({ ...sunflower, origins: ['daisy-family'] })).toEqual([]);
  });

  it('is not asked after while nobody has said anything: that is open as a whole', () => {
    expect(findNamedOrigins({ ...sunflower, origins: null })).toEqual([]);
  });
});
