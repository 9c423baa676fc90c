import { describe, expect, it } from 'vitest';
import { FIVE, openFillingBench } from '../../../test/workshop/filling-bench.ts';
import { say } from '../../words/index.ts';

const at = openFillingBench();

/** Of what was weighed into five tins; figures invented. */
async function runWith(...categories: readonly string[]) {
  const ifra = categories.map((category) => ({ category, edition: '51', mostPercent: '2.1' }));
  const details = {
    constituents: [{ name: 'Linalool', cas: '78-70-6', typicalPercent: '30' }],
    isComplete: true,
    ifra,
  };
  await at.bench.get('saveLotCertificate', {
    params: { id: at.shop.lots.scent },
    body: { reference: 'I-7', datedOn: '2026-11-03', details },
  });
  const run = await at.startRun((await at.makeBowl()).id);
  await at.fillAll(run.id, ...FIVE);
  return at.closeRun(run.id);
}

describe('a supplier statement at the release of a run', () => {
  it('for another category is told as not known, with lot, paper and both categories', async () => {
    const { checks } = await runWith('4', '9');
    const told = checks.find(({ check }) => check === 'ifra');
    expect(told).toMatchObject({ isPassed: true, isToSee: true });
    const words = told && say(told.detail);
    expect(words).toContain('Not known, and not taken as allowed');
    expect(words).toContain('statement I-7 is for category 4, 9, the product is of category 5A');
  });

  it('for the category of the product is not spoken of', async () => {
    expect((await runWith('4', '5A')).checks.map(({ check }) => check)).not.toContain('ifra');
  });

  it('is not asked for where the paper holds none', async () => {
    expect((await runWith()).checks.map(({ check }) => check)).not.toContain('ifra');
  });
});
