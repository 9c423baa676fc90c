import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildExample } from '../../../example/index.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { checkDraft, readFacts } from '../../check/index.ts';
import { must } from '../../core/problem.ts';
import { exact, toText } from '../../core/quantity/index.ts';

const MARKETS = ['GB', 'NI', 'EU'] as const;
let bench: TestWorkshop;
beforeAll(async () => {
  bench = await openTestWorkshop({ isEmpty: true, buildExample });
  await bench.get('beginWorkshop', { body: { with: 'example' } });
}, 60_000);
afterAll(() => bench.close());

const written = async () => (await bench.get('listFormulas')).flatMap((one) => one.latest ?? []);
const factsOf = async (formulaId: string) =>
  readFacts(await bench.get('getCheckFacts', { params: { id: formulaId } }));

describe('the check of what is being typed', () => {
  it('is word for word that of the server, for every formula of the example', async () => {
    const revisions = await written();
    expect(revisions.length).toBeGreaterThan(3);
    for (const { id, formulaId, details } of revisions) {
      const server = await bench.get('checkRevision', {
        params: { id },
        query: { markets: MARKETS.join(',') },
      });
      // Only what lies on the shelf is no part of a draft.
      expect(must(checkDraft(await factsOf(formulaId), details, MARKETS))).toEqual({
        ...server,
        shelf: [],
      });
    }
  });

  it('of the example never says “not in it” of what a name on the label tells of', async () => {
    const materials = (await bench.get('listMaterials')).filter(
      ({ details }) => details.kind === 'ingredient',
    );
    expect(materials.length).toBeGreaterThan(8);
    for (const { id, details } of await written()) {
      const { origins } = await bench.get('checkRevision', { params: { id }, query: {} });
      expect([details.lines.length, origins.filter(({ byName }) => byName.length > 0)]).toEqual([
        details.lines.length,
        [],
      ]);
    }
    const sunflower = materials.find(({ details }) => details.inciEu.startsWith('Helianthus'));
    expect(sunflower?.details.origins).toEqual(['daisy-family']);
  });

  it('answers to other amounts at once: ten times the oil is over what the report allows', async () => {
    const lavender = (await written()).find((one) => one.details.lines.length === 2);
    if (!lavender) throw new Error('the example has a base with one oil');
    const { details, formulaId } = lavender;
    const more = details.lines.map((line) =>
      line.itemKind === 'formula' ? line : { ...line, grams: toText(exact(line.grams).times(10)) },
    );
    const facts = await factsOf(formulaId);
    const now = must(checkDraft(facts, details, ['GB']));
    const then = must(checkDraft(facts, { ...details, lines: more }, ['GB']));
    expect(now.reasons.map((reason) => reason.code)).not.toContain('sale-report-over');
    expect(then.reasons.map((reason) => reason.code)).toContain('sale-report-over');
    expect(then.answer).toBe('no');
  });

  it('says of a line without grams and of a base that contains itself what is wrong, as the server does', async () => {
    const [base] = (await bench.get('listFormulas')).filter((one) => one.kind === 'base');
    const details = base?.latest?.details;
    if (!base || !details) throw new Error('the example has a base');
    const facts = await factsOf(base.id);
    const [first] = details.lines;
    if (!first) throw new Error('the base has lines');
    const within = [{ ...first, itemKind: 'formula' as const, itemId: base.id }];
    expect(checkDraft(facts, { ...details, lines: within }, ['GB'])).toMatchObject({
      ok: false,
      problems: [{ code: 'formula-contains-itself' }],
    });
    expect(checkDraft(facts, { ...details, lines: [] }, ['GB']).ok).toBe(false);
  });

  it('is refused of a formula that is not there', async () => {
    expect(await bench.ask('getCheckFacts', { params: { id: 'nobody' } })).toMatchObject({
      problems: [{ code: 'thing-not-found' }],
    });
  });
});
