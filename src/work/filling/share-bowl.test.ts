import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { must } from '../../core/problem.ts';
import { shareBowl } from './share-bowl.ts';

const bowl = {
  onHandUg: 200,
  filledUg: 150,
  retainedUg: 10,
  asideUg: 0,
  leftUg: 20,
  elsewhereUg: 0,
  slackUg: 5,
};

describe('where the bowl went', () => {
  it('calls lost what nothing accounts for', () => {
    expect(must(shareBowl(bowl))).toEqual({ lostUg: 20, foundUg: 0 });
  });

  it('leaves what stands in the tins of another run where it is', () => {
    expect(must(shareBowl({ ...bowl, elsewhereUg: 15 }))).toEqual({ lostUg: 5, foundUg: 0 });
  });

  it('counts in what lies above the ledger up to the errors of the weighings, and refuses a microgram more', () => {
    expect(must(shareBowl({ ...bowl, leftUg: 45 }))).toEqual({ lostUg: 0, foundUg: 5 });
    expect(shareBowl({ ...bowl, leftUg: 46 })).toMatchObject({
      ok: false,
      problems: [{ code: 'bowl-held-less' }],
    });
  });

  it('balances whatever was weighed', () => {
    const mass = fc.integer({ min: 0, max: 5_000_000_000 });
    const bowls = fc.record({
      onHandUg: mass,
      filledUg: mass,
      retainedUg: mass,
      asideUg: mass,
      leftUg: mass,
      elsewhereUg: mass,
      slackUg: mass,
    });
    fc.assert(
      fc.property(bowls, (shares) => {
        const accounted =
          shares.filledUg + shares.retainedUg + shares.asideUg + shares.leftUg + shares.elsewhereUg;
        const shared = shareBowl(shares);
        expect(shared.ok).toBe(accounted <= shares.onHandUg + shares.slackUg);
        if (!shared.ok) return;
        const { lostUg, foundUg } = shared.value;
        expect(shares.onHandUg + foundUg).toBe(accounted + lostUg);
        expect([lostUg, foundUg].sort((one, other) => one - other)[0]).toBe(0);
      }),
    );
  });
});
