import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildMakingBench, type MakingBench } from '../../../test/workshop/build-making.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';

let bench: TestWorkshop;
let shop: MakingBench;
beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench, { isDecided: false });
});
afterEach(() => bench.close());

const lettersOf = () => bench.get('listFormulaLetters', { params: { id: shop.mixtureRevision } });

describe('a letter to a supplier', () => {
  it('asks for the papers that would answer what is open, material by material, in plain words', async () => {
    const [letter, ...others] = await lettersOf();
    expect(others).toEqual([]);
    expect(letter).toMatchObject({ supplier: 'Test Supplies', materials: ['Lavender oil'] });
    // Linalool-rich oils have a limit of the peroxide value (IFRA Standard on linalool, as remembered).
    expect(letter?.text).toContain('- the peroxide value of the lot in mmol of peroxide in a litre');
    expect(letter?.text).toContain('IFRA certificate of conformity for category 5A');
    expect(letter?.text).not.toContain('statement of origin');
    expect(letter?.text).toMatch(/^We make skin care by hand and use your Lavender oil\./);
  });

  it('asks nothing that is decided or known', async () => {
    const { open } = await bench.get('checkRevision', { params: { id: shop.mixtureRevision } });
    for (const { key } of open) {
      const body = { key, verdict: 'accepted' as const, reason: 'As the assessor reads it.' };
      await bench.get('decideUnknown', { params: { id: shop.mixtureRevision }, body });
    }
    expect(await lettersOf()).toEqual([]);
  });

  it('is of one material where it is asked from there, by every formula that it goes into', async () => {
    const [letter] = await bench.get('listMaterialLetters', { params: { id: shop.materials.scent } });
    expect(letter?.materials).toEqual(['Lavender oil']);
    expect(await bench.get('listMaterialLetters', { params: { id: shop.materials.shea } })).toEqual([]);
  });

  it('is a PDF to print, and none is made where nothing is asked', async () => {
    const ask = (supplier: string) =>
      bench.ask('getFormulaLetterPdf', { params: { id: shop.mixtureRevision }, query: { supplier } });
    const paper = await ask('Test Supplies');
    if (!paper.ok) throw new Error(codesOf(paper).join());
    expect(Buffer.from(paper.value.bytes).subarray(0, 5).toString()).toBe('%PDF-');
    expect(codesOf(await ask('Somebody else'))).toEqual(['no-letter-to-supplier']);
  });
});
