import { describe, expect, it } from 'vitest';
import { buildDesign, buildWording } from '../../../test/workshop/build-design.ts';
import { sayDurability, sayDurabilityInUs, US_UNSUBSTANTIATED_WARNING } from '../../core/label/index.ts';
import { must } from '../../core/problem.ts';
import { composePieces } from './compose-pieces.ts';
import type { LabelDesign, LabelElementKey, LabelPiece, LabelWording } from './label-design.ts';

const compose = (design: Partial<LabelDesign> = {}, wording: Partial<LabelWording> = {}) =>
  must(composePieces(buildDesign(design), buildWording(wording)));
const saidOn = (pieces: readonly LabelPiece[], id: string): string[] =>
  pieces
    .filter((piece) => piece.id === id)
    .flatMap(({ texts }) => texts.map(({ element, heading, text }) => `${element}: ${heading} ${text}`));
function codesOf(design: Partial<LabelDesign>, wording: Partial<LabelWording> = {}): string[] {
  const composed = composePieces(buildDesign(design), buildWording(wording));
  return composed.ok ? [] : composed.problems.map(({ code, where }) => `${code} ${where}`);
}
const round = { shape: 'round', diameterMm: 66 } as const;
const small = { shape: 'rectangle', widthMm: 30, heightMm: 15 } as const;

describe('composePieces', () => {
  it('puts the words of the law where its role has them', () => {
    const pieces = compose();
    expect(saidOn(pieces, 'lid')).toEqual([
      'brand:  Larkfold',
      'name:  Cedar and orange body butter',
      'function:  Rich moisturiser for dry skin',
      'content:  80\u00a0g',
    ]);
    expect(saidOn(pieces, 'base').map((said) => said.slice(0, 30))).toEqual([
      'ingredients: Ingredients: Buty',
      'precautions:  For external use',
      'durability:  Best used before ',
      'batch: Batch CO-0418',
      'responsible:  Larkfold Butters',
    ]);
  });

  it('leaves batch and date to a sticker, so that the rest can be printed before there is a batch', () => {
    const pieces = compose({
      pieces: [...buildDesign().pieces, { id: 'lot', role: 'sticker', surface: small }],
    });
    expect(saidOn(pieces, 'lot')).toEqual([
      'batch: Batch CO-0418',
      'durability:  Best used before the end of 05/2027',
    ]);
    expect(saidOn(pieces, 'base').filter((said) => /^(batch|durability)/.test(said))).toEqual([]);
  });

  it('prints the date for the United States as it is judged, so that no day is read as a month', () => {
    const wording = buildWording({
      durability: { date: '2028-03-05' },
      content: { grams: '80', figureHeightMm: 3 },
    });
    const pieces = compose({ market: 'US' }, wording);
    expect(saidOn(pieces, 'base')).toContain(`durability:  ${sayDurabilityInUs('2028-03-05')}`);
    expect(JSON.stringify(pieces)).not.toContain('05/03/2028');
    expect(saidOn(compose({}, wording), 'base')).toContain(`durability:  ${sayDurability('2028-03-05')}`);
  });

  it('says each sentence in every language, and words that two share once', () => {
    const pieces = compose(
      { languages: ['en', 'fr', 'de'] },
      {
        function: 'Body butter',
        precautions: { en: 'External use only.', fr: 'Usage externe.', de: 'Nur äußerlich.' },
        originCountry: 'GB',
      },
    );
    const base = saidOn(pieces, 'base');
    expect(base[0]).toMatch(/^ingredients: Ingredients \/ Ingrédients: /);
    expect(base).toContain('precautions: FR Usage externe.');
    expect(base).toContain('batch: Batch / Lot / Charge CO-0418');
    expect(base).toContain(
      'durability:  Best used before the end of / À utiliser de préférence avant fin / Mindestens haltbar bis 05/2027',
    );
    expect(base.find((said) => said.startsWith('origin'))).toBe(
      'origin:  Made in the United Kingdom\nPays d’origine\u00a0: Royaume-Uni\nUrsprungsland: Vereinigtes Königreich',
    );
  });

  it('puts the estimated sign beside the content only where it is wished for', () => {
    expect(
      saidOn(compose({}, { content: { grams: '80', figureHeightMm: 3, hasEMark: true } }), 'lid'),
    ).toContain('content:  80\u00a0g\u00a0℮');
    expect(saidOn(compose(), 'lid').join()).not.toContain('℮');
  });

  // Regulation (EC) No 1223/2009, Article 19(2): precautions and ingredients may move; symbol or short words refer to them.
  it('moves what the law lets move to a leaflet, and points to it from where it would have stood', () => {
    const leaflet = { surface: round, elements: ['ingredients', 'precautions'], pointer: 'symbol' } as const;
    const pieces = compose({ leaflet });
    expect(saidOn(pieces, 'leaflet').map((said) => said.split(':')[0])).toEqual([
      'name',
      'ingredients',
      'precautions',
    ]);
    expect(saidOn(pieces, 'base').join()).not.toContain('Butyrospermum');
    expect(pieces.map(({ id, hasHandInBook }) => [id, hasHandInBook ?? false])).toEqual([
      ['lid', false],
      ['base', true],
      ['leaflet', false],
    ]);
    const inWords = compose({ leaflet: { ...leaflet, pointer: 'words' } });
    expect(saidOn(inWords, 'base').at(-1)).toBe('pointer:  See enclosed leaflet.');
    expect(inWords.some(({ hasHandInBook }) => hasHandInBook)).toBe(false);
  });

  it('points to the leaflet from the back even where the pieces name their elements themselves', () => {
    const pieces = compose({
      pieces: [
        { id: 'lid', role: 'front', surface: round },
        { id: 'base', role: 'back', surface: round, elements: ['batch', 'durability', 'responsible'] },
      ],
      leaflet: { surface: round, elements: ['ingredients', 'precautions'], pointer: 'symbol' },
    });
    expect(pieces.find(({ id }) => id === 'base')?.hasHandInBook).toBe(true);
  });

  it('refuses to move anything else, and to move anything in the United States', () => {
    const leaflet = { surface: round, elements: ['batch' as 'ingredients'], pointer: 'words' } as const;
    expect(codesOf({ leaflet })).toContain('label-element-not-movable leaflet.elements');
    expect(codesOf({ market: 'US', leaflet: { ...leaflet, elements: ['ingredients'] } })).toEqual([
      'label-leaflet-not-in-market leaflet',
    ]);
  });

  it('writes the content of the United States in both units, with who made it', () => {
    const pieces = compose(
      { market: 'US' },
      {
        content: { grams: '35', figureHeightMm: 0 },
        responsible: 'Larkfold Butters, Hollinsby, VT 05000',
        responsibleAs: 'manufactured-for',
      },
    );
    expect(saidOn(pieces, 'lid').at(-1)?.replaceAll('\u00a0', ' ')).toBe('content:  Net Wt. 1.2 oz (35 g)');
    expect(saidOn(pieces, 'base').at(-1)).toBe(
      'responsible:  Manufactured for Larkfold Butters, Hollinsby, VT 05000',
    );
  });

  it('writes codes with the lot and the date of the wording', () => {
    const codeOn = (code: NonNullable<LabelDesign['pieces'][number]['code']>) =>
      compose({ pieces: [{ id: 'box', role: 'whole', surface: round, code }] })[0]?.code;
    expect(codeOn({ kind: 'digital-link', domain: 'larkfold.example', gtin: '9506000134352' })).toEqual({
      kind: 'qr',
      content: 'https://larkfold.example/01/09506000134352/10/CO-0418?17=270531',
    });
    expect(codeOn({ kind: 'in-house' })).toEqual({ kind: 'qr', content: 'CO-0418 2027-05-31' });
    expect(codeOn({ kind: 'ean-13', gtin: '614141000036' })).toEqual({
      kind: 'ean-13',
      content: '0614141000036',
    });
  });

  // 21 CFR 740.10, from memory.
  it('wants the warning of an untested product on the front of a label for the United States', () => {
    const warned = { precautions: `Keep dry. ${US_UNSUBSTANTIATED_WARNING}`, originCountry: 'GB' };
    const pieces = (front: readonly LabelElementKey[] | undefined): LabelDesign['pieces'] => [
      { id: 'lid', role: 'front', surface: round, ...(front && { elements: front }) },
      { id: 'base', role: 'back', surface: round },
    ];
    const says = (market: LabelDesign['market'], front?: readonly LabelElementKey[]) =>
      codesOf({ market, pieces: pieces(front) }, warned).filter((code) => code.startsWith('us-warning'));
    expect(says('US')).toEqual(['us-warning-not-in-front precautions']);
    expect(says('US', ['name', 'content', 'precautions'])).toEqual([]);
    expect(says('GB')).toEqual([]);
    expect(codesOf({ market: 'US', pieces: pieces(undefined) }, { precautions: 'Keep dry.' })).not.toContain(
      'us-warning-not-in-front precautions',
    );
  });

  it('names everything that is wrong at once', () => {
    expect(
      codesOf(
        { languages: ['en', 'it'], pieces: [{ id: 'lid', role: 'front', surface: round }] },
        { batch: ' ', precautions: '', openedMonths: 0, content: { grams: '0', figureHeightMm: 0 } },
      ),
    ).toEqual([
      'label-text-missing batch',
      'opened-months-wrong openedMonths',
      'label-language-missing function',
      'value-not-above content.grams',
      'figure-height-wrong content.figureHeightMm',
      'label-element-nowhere ingredients',
      'label-element-nowhere durability',
      'label-element-nowhere opened',
      'label-element-nowhere responsible',
    ]);
    expect(codesOf({ languages: [], pieces: [] })).toEqual(
      expect.arrayContaining(['label-without-pieces pieces', 'label-without-language languages']),
    );
    expect(codesOf({ pieces: [...buildDesign().pieces, ...buildDesign().pieces] })).toEqual([
      'label-piece-name-taken pieces',
      'label-piece-name-taken pieces',
    ]);
  });

  it('refuses a day that the calendar does not have, and wants one or the months after opening', () => {
    expect(codesOf({}, { durability: { date: '2027-02-30' } })).toEqual(['link-date-wrong durability.date']);
    const { durability: _, ...without } = buildWording();
    const composed = composePieces(buildDesign(), without);
    expect(composed).toMatchObject({ ok: false, problems: [{ code: 'label-durability-missing' }] });
    expect(composePieces(buildDesign(), { ...without, openedMonths: 12 }).ok).toBe(true);
  });

  it('refuses a code whose number is wrong, naming the piece', () => {
    const piece = {
      id: 'box',
      role: 'whole',
      surface: round,
      code: { kind: 'ean-13', gtin: '9506000134353' },
    } as const;
    expect(codesOf({ pieces: [piece] })).toEqual(['gtin-check-digit-wrong box.gtin']);
    expect(codesOf({ pieces: [{ ...piece, code: { kind: 'ean-13', gtin: '96385074' } }] })).toEqual([
      'gtin-wrong-length box.gtin',
    ]);
  });
});
