import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { z } from 'zod';
import { buildMixture, buildReport, line } from '../../../test/workshop/build-formula.ts';
import type { MakingBench } from '../../../test/workshop/build-making.ts';
import {
  acceptUnknowns,
  buildMakingBench,
  inGrams,
  makeFirmBase,
} from '../../../test/workshop/build-making.ts';
import { buildIngredient, buildLot } from '../../../test/workshop/build-stock.ts';
import { codesOf } from '../../../test/workshop/codes-of.ts';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import type { certificates } from '../../contract/index.ts';
import { must } from '../../core/problem.ts';
import { runCheck } from '../formulas/index.ts';
import { readWeighedLookup } from '../making/weighed-lookup.ts';

type Input = z.input<typeof certificates.certificateInput>;

/** Invented, as are all figures here. */
const paper = (more: Partial<Input> = {}): Input => ({
  constituents: [{ name: 'Linalool', cas: '78-70-6', typicalPercent: '28.5' }],
  isComplete: true,
  ...more,
});

let bench: TestWorkshop;
let shop: MakingBench;
beforeEach(async () => {
  bench = await openTestWorkshop();
  shop = await buildMakingBench(bench);
});
afterEach(() => bench.close());

const enter = (lotId: string, details: Input = paper(), more: object = {}) =>
  bench.ask('saveLotCertificate', {
    params: { id: lotId },
    body: { reference: 'L24-0311', datedOn: '2026-11-03', details, ...more },
  });
const listOf = (lotId: string) => bench.get('listLotCertificates', { params: { id: lotId } });
const PDF = { name: 'L24-0311.pdf', base64: Buffer.from('%PDF-1.7 invented').toString('base64') };

describe('the certificate of a lot', () => {
  it('replaces what is remembered of its material, and says so with its day', async () => {
    expect(codesOf(await enter(shop.lots.scent))).toEqual([]);
    const { sentence, certificates: told } = await listOf(shop.lots.scent);
    expect(sentence).toMatchObject({
      code: 'lot-certificate-complete',
      parameters: { reference: 'L24-0311', datedOn: '2026-11-03', material: 'Lavender oil' },
    });
    expect(told[0]?.details.constituents).toEqual([
      { name: 'Linalool', cas: '78-70-6', leastPercent: '28.5', typicalPercent: '28.5', mostPercent: '28.5' },
    ]);
  });

  it('is never written over: a correction counts instead of it, and it stays readable', async () => {
    await enter(shop.lots.scent, paper(), { file: PDF });
    const [first] = (await listOf(shop.lots.scent)).certificates;
    const corrected = () =>
      enter(shop.lots.scent, paper({ remark: 'Mistyped before.', insteadOf: first?.id ?? '' }), {
        reference: 'L24-0311 corrected',
        keepsFile: true,
      });
    expect(codesOf(await corrected())).toEqual([]);
    const { sentence, certificates: told } = await listOf(shop.lots.scent);
    expect(told.map(({ reference, isReplaced }) => [reference, isReplaced])).toEqual([
      ['L24-0311 corrected', false],
      ['L24-0311', true],
    ]);
    expect(told.map(({ file }) => file?.name)).toEqual([PDF.name, PDF.name]);
    expect(sentence.parameters.reference).toBe('L24-0311 corrected');
    expect(codesOf(await corrected())).toEqual(['certificate-replaced-already']);
  });

  it('takes no other paper’s figures away: what counts is told with the paper that it stands on', async () => {
    const said: [string, Input][] = [
      ['GC-1', paper({ isComplete: false, peroxide: { mmolPerLitre: '4', measuredOn: '2026-11-01' } })],
      [
        'IFRA-2',
        {
          constituents: [],
          isComplete: false,
          ifra: [{ category: '5A', edition: '51', mostPercent: '2.1' }],
        },
      ],
      [
        'PV-3',
        { constituents: [], isComplete: false, peroxide: { mmolPerLitre: '9', measuredOn: '2026-11-20' } },
      ],
    ];
    for (const [reference, details] of said)
      expect(codesOf(await enter(shop.lots.scent, details, { reference }))).toEqual([]);
    const { counts, sentence } = await listOf(shop.lots.scent);
    expect(counts).toMatchObject({
      constituents: [{ name: 'Linalool', mostPercent: '28.5', paper: 'GC-1' }],
      isComplete: false,
      peroxide: { mmolPerLitre: '9', paper: 'PV-3' },
      ifra: [{ category: '5A', mostPercent: '2.1', paper: 'IFRA-2' }],
    });
    expect(sentence).toMatchObject({
      code: 'lot-certificate-partial',
      parameters: { reference: 'GC-1, IFRA-2, PV-3' },
    });
  });

  it('is corrected only with the lot that it is of', async () => {
    await enter(shop.lots.scent);
    const [first] = (await listOf(shop.lots.scent)).certificates;
    expect(codesOf(await enter(shop.lots.oil, paper({ insteadOf: first?.id ?? '' })))).toEqual([
      'thing-not-found',
    ]);
  });

  it('says where the formula holds more than its IFRA statement allows, and where just as much', async () => {
    const ifra = (mostPercent: string) => [{ category: '5A', edition: '51', mostPercent }];
    const meansOf = async (mostPercent: string) => {
      await enter(shop.lots.scent, paper({ ifra: ifra(mostPercent) }));
      return (await listOf(shop.lots.scent)).means.map(({ code, parameters }) => [code, parameters.percent]);
    };
    expect(await meansOf('0.9999')).toEqual([['ifra-statement-exceeded', '1']]);
    expect(await meansOf('1')).toEqual([['ifra-statement-counts', '1']]);
  });

  it('gives its paper back byte by byte', async () => {
    await enter(shop.lots.scent, paper(), { file: PDF });
    const [first] = (await listOf(shop.lots.scent)).certificates;
    const file = await bench.get('getLotCertificateFile', { params: { id: first?.id ?? '' } });
    expect(Buffer.from(file.bytes).toString('base64')).toBe(PDF.base64);
  });

  it('says of a lot without one with which figures it counts', async () => {
    expect(await listOf(shop.lots.oil)).toMatchObject({
      sentence: { code: 'lot-without-certificate' },
      certificates: [],
    });
  });

  it('says which category its IFRA statement is for and which is needed, where they differ', async () => {
    const ifra = (category: string) => [{ category, edition: '51', mostPercent: '2.1' }];
    await enter(shop.lots.scent, paper({ ifra: ifra('4') }));
    expect((await listOf(shop.lots.scent)).means).toMatchObject([
      { code: 'ifra-statement-of-other', parameters: { category: '5A', isFor: '4' } },
    ]);
    await enter(shop.lots.scent, paper({ ifra: [...ifra('4'), ...ifra('5A')] }));
    expect((await listOf(shop.lots.scent)).means).toMatchObject([{ code: 'ifra-statement-counts' }]);
  });

  it.each([
    [
      'ranges that cross',
      { constituents: [{ name: 'Linalool', leastPercent: '40', mostPercent: '30' }] },
      'constituent-range-crossed',
    ],
    [
      'leasts above the whole',
      {
        constituents: [
          { name: 'Linalool', typicalPercent: '60' },
          { name: 'Limonene', typicalPercent: '40.001' },
        ],
      },
      'constituents-above-whole',
    ],
    [
      'a CAS number whose check digit is wrong',
      { constituents: [{ name: 'Linalool', cas: '78-70-5', typicalPercent: '30' }] },
      'cas-number-check-digit',
    ],
    [
      'what is no CAS number',
      { constituents: [{ name: 'Linalool', cas: '7870-6', typicalPercent: '30' }] },
      'cas-number-shape',
    ],
    [
      'a constituent without a most',
      { constituents: [{ name: 'Linalool', leastPercent: '30' }] },
      'constituent-without-most',
    ],
    [
      'a constituent twice',
      {
        constituents: [
          { name: 'Linalool', typicalPercent: '3' },
          { name: 'linalool', typicalPercent: '4' },
        ],
      },
      'constituent-twice',
    ],
    ['a peroxide value below nought', { peroxide: { mmolPerLitre: '-1' } }, 'peroxide-negative'],
    [
      'a measurement still to come',
      { peroxide: { mmolPerLitre: '1', measuredOn: '2027-11-27' } },
      'certificate-day-ahead',
    ],
    ['a paper that says nothing', { constituents: [], isComplete: false }, 'certificate-says-nothing'],
    [
      'an edition that is no number',
      { ifra: [{ category: '5A', edition: 'fifty', mostPercent: '2' }] },
      'ifra-edition-number',
    ],
    [
      'a category twice',
      {
        ifra: [
          { category: '5A', edition: '51', mostPercent: '2' },
          { category: '5A', edition: '51', mostPercent: '1' },
        ],
      },
      'ifra-category-twice',
    ],
  ] as const)('refuses %s', async (_, more, code) => {
    expect(codesOf(await enter(shop.lots.scent, paper(more as Partial<Input>)))).toEqual([code]);
  });

  it('takes leasts that add up to the whole, to the last digit', async () => {
    const constituents = [
      { name: 'Linalool', typicalPercent: '60' },
      { name: 'Limonene', typicalPercent: '40' },
    ];
    expect(codesOf(await enter(shop.lots.scent, paper({ constituents })))).toEqual([]);
  });

  it('is of ingredients only', async () => {
    expect(codesOf(await enter(shop.lots.tin))).toEqual(['certificate-of-ingredients']);
    expect(codesOf(await enter('nothing-here'))).toEqual(['thing-not-found']);
  });
});

describe('what is judged of a batch with certificates', () => {
  const linaloolOf = async (batchId: string) => {
    const lookup = await readWeighedLookup(bench.context.storage.db, batchId);
    const checked = must(await runCheck(bench.context, shop.mixtureRevision, ['GB'], { weighed: lookup }));
    const row = checked.opened.contributions.find(({ name }) => name === 'Linalool');
    return [row?.leastPercent, row?.typicalPercent, row?.mostPercent].map((each) =>
      each?.toExact().toString(),
    );
  };

  it('is each lot by its own figures, weighted by its mass, behind bases too', async () => {
    await makeFirmBase(bench, shop, '1000');
    await enter(
      shop.lots.scent,
      paper({ constituents: [{ name: 'Linalool', cas: '78-70-6', typicalPercent: '28.5' }] }),
    );
    const { id } = await bench.get('startBatch', { body: { wish: inGrams(shop.mixtureRevision, '500') } });
    // 5 g of 500 g at 28.5 %.
    expect(await linaloolOf(id)).toEqual(['0.285', '0.285', '0.285']);
  });

  it('takes two lots of one oil, one with a certificate and one by the remembered range', async () => {
    await makeFirmBase(bench, shop, '1000');
    await bench.get('moveLot', {
      params: { id: shop.lots.scent },
      body: { kind: 'binned', quantity: '48', reason: 'Left for the test' },
    });
    const other = await buildLot(bench, shop.materials.scent, { quantity: '50', bestBefore: '2028-06-30' });
    await enter(other, paper({ constituents: [{ name: 'Linalool', cas: '78-70-6', typicalPercent: '10' }] }));
    const { id } = await bench.get('startBatch', { body: { wish: inGrams(shop.mixtureRevision, '500') } });
    // 2 g at 20 / 30 / 40 % and 3 g at 10 %: 0.7, 0.9 and 1.1 g of 500 g.
    expect(await linaloolOf(id)).toEqual(['0.14', '0.18', '0.22']);
  });

  it('may start where the lot is within a limit that the remembered range may break', async () => {
    // Methyl eugenol: 0.0002 % of a leave-on product (Regulation (EC) No 1223/2009, Annex III, entry 102).
    const scent = await buildIngredient(bench, {
      name: 'Tarragon oil',
      inciEu: 'Artemisia Dracunculus Oil',
      constituents: [
        {
          name: 'Methyl Eugenol',
          cas: '93-15-2',
          leastPercent: '0.001',
          typicalPercent: '0.01',
          mostPercent: '0.05',
          source: 'invented for the test',
          confidence: 'memory',
        },
      ],
    });
    const lot = await buildLot(bench, scent, { quantity: '50' });
    const { formulaId, revisionId } = await buildMixture(bench, [
      line(shop.materials.oil, '990'),
      line(scent, '10'),
    ]);
    await buildReport(bench, {
      reference: 'R-2',
      formulaIds: [formulaId],
      ranges: [
        { materialId: shop.materials.oil, leastPercent: '90', mostPercent: '100' },
        { materialId: scent, leastPercent: '0', mostPercent: '2' },
      ],
    });
    await acceptUnknowns(bench, revisionId);
    const plan = () => bench.get('planBatch', { body: inGrams(revisionId, '200') });
    const codesNow = async () => [...new Set((await plan()).hindrances.map(({ code }) => code))];
    expect(await codesNow()).toEqual(['sale-over']);
    const measured = (typicalPercent: string) =>
      paper({ constituents: [{ name: 'Methyl Eugenol', cas: '93-15-2', typicalPercent }] });
    await enter(lot, measured('0.02'));
    expect(await codesNow()).toEqual([]);
    await enter(lot, measured('0.0200001'));
    expect(await codesNow()).toEqual(['sale-over']);
    await enter(lot, measured('0.01'));
    const check = await bench.get('checkRevision', {
      params: { id: revisionId },
      query: { markets: 'GB,NI' },
    });
    // The formula's own answer stays on what is remembered of the material.
    expect(check).toMatchObject({
      answer: 'no',
      shelf: [{ answer: 'yes', says: { code: 'shelf-yes', parameters: { n: 1 } } }],
    });
    // Half of the remembered figure is over in both; in Great Britain the rule is remembered, too.
    expect(check.memory.hangs).toMatchObject([
      { substance: 'Methyl Eugenol', ask: { code: 'ask-composition' }, markets: ['GB'] },
    ]);
  });

  it('answers a limit of the peroxide value lot by lot, and holds back a lot that is not below it', async () => {
    // Below 10 mmol/l: Regulation (EC) No 1223/2009, Annex III, oils of Pinus.
    const pine = await buildIngredient(bench, {
      name: 'Pine oil',
      inciEu: 'Pinus Sylvestris Leaf Oil',
      botanical: 'Pinus sylvestris',
      plantPart: 'leaf',
      process: 'distilled',
    });
    const lot = await buildLot(bench, pine, { quantity: '50' });
    const { formulaId, revisionId } = await buildMixture(bench, [
      line(shop.materials.oil, '995'),
      line(pine, '5'),
    ]);
    await buildReport(bench, {
      reference: 'R-3',
      formulaIds: [formulaId],
      ranges: [
        { materialId: shop.materials.oil, leastPercent: '90', mostPercent: '100' },
        { materialId: pine, leastPercent: '0', mostPercent: '2' },
      ],
    });
    const hindered = async () => {
      const { hindrances } = await bench.get('planBatch', { body: inGrams(revisionId, '200') });
      return hindrances.map(({ code, parameters }) => [code, parameters.value ?? '']);
    };
    expect((await hindered()).map(([code]) => code)).toContain('sale-unknown');
    const measured = (mmolPerLitre: string) =>
      paper({ constituents: [], peroxide: { mmolPerLitre, measuredOn: '2026-10-20' } });
    await enter(lot, measured('9.99'));
    expect(await hindered()).toEqual([]);
    await enter(lot, measured('10.0'));
    // One entry of Annex III for each name that the oil goes by.
    expect(new Set((await hindered()).map(String))).toEqual(new Set(['sale-peroxide-over,10']));
    const started = await bench.ask('startBatch', { body: { wish: inGrams(revisionId, '200') } });
    expect(new Set(codesOf(started))).toEqual(new Set(['batch-hindered']));
  });

  it('stops a weighing of a lot that turned out over since the batch was begun', async () => {
    await makeFirmBase(bench, shop, '1000');
    await enter(shop.lots.scent, paper({ peroxide: { mmolPerLitre: '4' } }));
    const { id, screens } = await bench.get('startBatch', {
      body: { wish: inGrams(shop.mixtureRevision, '500') },
    });
    await enter(shop.lots.scent, paper({ peroxide: { mmolPerLitre: '20' } }));
    const scent = screens.find((one) => one.kind === 'addition' && one.itemId === shop.materials.scent);
    if (scent?.kind !== 'addition') throw new Error('the scent is weighed in');
    const weighed = await bench.ask('recordAddition', {
      params: { id },
      body: {
        position: scent.position,
        lotId: scent.lotId ?? '',
        scaleId: scent.scaleId,
        actualGrams: scent.targetGrams,
      },
    });
    // Linalool-rich oils: below 20 mmol/l (IFRA Standard on linalool, as remembered).
    expect(codesOf(weighed)).toEqual(['lot-peroxide-over']);
  });
});
