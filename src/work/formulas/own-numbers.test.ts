import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMixture, buildReport, line } from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
beforeEach(async () => {
  bench = await openTestWorkshop();
});
afterEach(() => bench.close());

type Given = NonNullable<Parameters<typeof buildIngredient>[1]>;

/** Five in a hundred of the material, allowed by the report. */
async function answerFor(given: Given): Promise<string> {
  const fat = await buildIngredient(bench, { name: `Sunflower oil beside ${given.cas?.join() ?? ''}` });
  const asked = await buildIngredient(bench, { inciUs: '', ...given });
  const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '95'), line(asked, '5')], {});
  const ranges = [fat, asked].map((materialId) => ({ materialId, leastPercent: '0', mostPercent: '100' }));
  await buildReport(bench, { formulaIds: [formulaId], ranges });
  const query = { markets: 'GB' };
  return (await bench.get('checkRevision', { params: { id: revisionId }, query })).answer;
}

const listed = (name: string, cas: string, percent: string) => ({
  name,
  cas,
  leastPercent: percent,
  typicalPercent: percent,
  mostPercent: percent,
  source: 'Certificate',
  confidence: 'supplier' as const,
});

/** Methyl eugenol: Annex III of Regulation (EC) No 1223/2009, entry 102, 0.0002 % in what is left on the skin. */
const METHYL_EUGENOL = '93-15-2';

describe('a CAS number is looked up', () => {
  it('where the material carries it', async () => {
    expect(await answerFor({ name: 'ME-1', inciEu: '', cas: [METHYL_EUGENOL] })).toBe('no');
  });

  it('where its paper lists the material as what is in it, with the number or instead of it', async () => {
    for (const cas of [[METHYL_EUGENOL], []]) {
      const name = `ME-${cas.length}`;
      const constituents = [listed(name, METHYL_EUGENOL, '100')];
      expect(await answerFor({ name, inciEu: '', cas, constituents })).toBe('no');
    }
  });

  it('where a constituent has the number and nothing of it is said to be there', async () => {
    const constituents = [listed('Methyl eugenol', METHYL_EUGENOL, '0')];
    expect(await answerFor({ name: 'ME-1', inciEu: '', cas: [METHYL_EUGENOL], constituents })).toBe('no');
  });
});
