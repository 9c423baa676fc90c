import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMixture, buildReport, line } from '../../../test/workshop/build-formula.ts';
import { buildIngredient } from '../../../test/workshop/build-stock.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { say } from '../../words/index.ts';

let bench: TestWorkshop;
let fat: string;
beforeEach(async () => {
  bench = await openTestWorkshop();
  fat = await buildIngredient(bench, { name: 'Shea butter', inciEu: 'Butyrospermum Parkii Butter' });
});
afterEach(() => bench.close());

const buildColoured = async (more: object) => {
  const material = await buildIngredient(bench, { name: 'Pigment', ...more });
  const { formulaId, revisionId } = await buildMixture(bench, [line(fat, '95'), line(material, '5')]);
  const range = (materialId: string) => ({ materialId, leastPercent: '0', mostPercent: '100' });
  await buildReport(bench, { formulaIds: [formulaId], ranges: [range(fat), range(material)] });
  return revisionId;
};
const check = (id: string) => bench.get('checkRevision', { params: { id }, query: { markets: 'GB,NI' } });

// Regulation (EC) No 1223/2009, Article 14(1)(c): no colourants but those of Annex IV.
describe('a colour in a butter', () => {
  it('that no table lists is a question of both markets, until a named person answers it', async () => {
    const id = await buildColoured({ inciEu: 'CI 99999', role: 'colourant' });
    const { answer, open } = await check(id);
    expect(answer).toBe('decide');
    expect(open).toMatchObject([{ markets: ['GB', 'NI'], why: { code: 'unknown-positive-list' } }]);
    expect(open.map(({ why }) => say(why))[0]).toContain('none of these tables says that CI 99999 is');
    const [question] = open;
    const body = { key: question?.key ?? '', verdict: 'accepted' as const, reason: 'Looked up in the list.' };
    await bench.get('decideUnknown', { params: { id }, body });
    expect((await check(id)).answer).toBe('yes');
  });

  it('that is listed is asked for its conditions of use, known by its number without a role too', async () => {
    const { open } = await check(await buildColoured({ inciEu: 'CI 77491', role: null }));
    expect(open.map(({ why }) => say(why))).toEqual([
      expect.stringContaining('CI 77491 is listed as a colourant'),
    ]);
  });

  it('of no colour asks nothing', async () => {
    expect(await check(await buildColoured({ inciEu: 'Kaolin', role: null }))).toMatchObject({
      answer: 'yes',
      open: [],
    });
  });
});
