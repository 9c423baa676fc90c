import type { Saying } from '../../contract/index.ts';
import { checkWords } from '../../words/index.ts';
import type { KnownReport } from '../formulas/report-view.ts';
import { saying } from '../saying.ts';
import { functionOf } from './composition-chapter.ts';
import { exposureOf } from './file-chapters.ts';
import type { FileData } from './read-file-data.ts';
import type { Gap } from './write-chapter.ts';

const gap = (chapter: string, says: Saying, to: string, hash: string | null = null): Gap => ({
  chapter,
  says,
  to,
  hash,
});

/** What is missing in the file, each with the place where it is mended; what stops a sale first. */
export function listGaps(data: FileData): Gap[] {
  return [
    ...checkGaps(data),
    ...reportGaps(data),
    ...complaintGaps(data),
    ...writtenGaps(data),
    ...materialGaps(data),
    ...notificationGaps(data),
    ...responsibleGaps(data),
    ...labelGaps(data),
  ];
}

function checkGaps({ made, product }: FileData): Gap[] {
  const to = `/formulas/${product.formulaId}`;
  if (made === null) return [gap('composition', saying('pf-gap-formula'), to)];
  return made.answer === 'yes'
    ? []
    : [gap('composition', saying('pf-gap-check', { answer: made.answer }), `${to}/check`)];
}

function reportGaps({ reports, product, today }: FileData): Gap[] {
  const covering = reports?.covering ?? [];
  const toEnter = `/reports?formula=${product.formulaId}`;
  if (reports?.ofOthers) {
    const { reference } = reports.ofOthers.details;
    return [gap('part-b', saying('pf-gap-report-others', { reference }), '/reports')];
  }
  if (reports === null || covering.length === 0) return [gap('part-b', saying('pf-gap-report'), toEnter)];
  const markets = reports.marketsMissing.join(', ');
  return [
    ...(markets === '' ? [] : [gap('part-b', saying('pf-gap-report-markets', { markets }), toEnter)]),
    ...covering.flatMap(({ report }) => gapsOfReport(report, today)),
  ];
}

function gapsOfReport({ details, row }: KnownReport, today: string): Gap[] {
  const facts = { reference: details.reference };
  return [
    ...(details.reviewBy < today
      ? [gap('part-b', saying('pf-gap-report-past', { ...facts, reviewBy: details.reviewBy }), '/reports')]
      : []),
    ...(row.file_name === null ? [gap('part-b', saying('pf-gap-report-file', facts), '/reports')] : []),
  ];
}

const complaintGaps = ({ complaints }: FileData): Gap[] =>
  complaints
    .filter((row) => row.effect === 'serious' && row.state === 'open')
    .map((row) =>
      gap('effects', saying('pf-gap-serious', { receivedOn: row.receivedOn }), `/complaints/${row.id}`),
    );

/** What only a person can write, by the part of the form where it is typed. */
function writtenGaps(data: FileData): Gap[] {
  const { file, id } = data;
  const isUnproved = file.claims.some(({ proof }) => proof === '');
  const asks: readonly (readonly [boolean, string, string, chapter?: string])[] = [
    [file.description === '', 'pf-gap-description', 'description'],
    [file.physical === '', 'pf-gap-physical', 'physical'],
    [file.stability === '', 'pf-gap-stability', 'physical'],
    [file.microbiology === '', 'pf-gap-microbiology', 'microbiology'],
    [file.waterInUse === '', 'pf-gap-water', 'microbiology'],
    [file.impurities === '', 'pf-gap-impurities', 'impurities'],
    [file.packaging === '', 'pf-gap-packaging', 'impurities'],
    [file.normalUse === '', 'pf-gap-use', 'use'],
    [exposureOf(data).types.length === 0, 'pf-gap-exposure', 'use', 'exposure'],
    [file.gmpStatement === '', 'pf-gap-gmp', 'method'],
    [file.claims.length === 0 && !file.hasNoClaims, 'pf-gap-claims', 'claims'],
    [isUnproved, 'pf-gap-proof', 'claims'],
    [file.animalTesting === '', 'pf-gap-animal', 'animal-testing'],
  ];
  return asks
    .filter(([isMissing]) => isMissing)
    .map(([, code, hash, chapter = hash]) => gap(chapter, saying(code), `/products/${id}/file/change`, hash));
}

function materialGaps({ made, file, id }: FileData): Gap[] {
  if (made === null) return [];
  const functions = new Map(file.functions.map((row) => [row.materialId, row.text]));
  const idle = [...made.opened.materials].filter(
    ([materialId, material]) => functionOf(materialId, material, functions) === '',
  );
  const names = idle.map(([, { name }]) => name).join(', ');
  return [
    ...(idle.length === 0
      ? []
      : [
          gap(
            'composition',
            saying('pf-gap-function', { n: idle.length, names }),
            `/products/${id}/file/change`,
            'composition',
          ),
        ]),
    ...[...made.opened.materials].flatMap(([materialId, material]) => {
      const to = `/materials/${materialId}`;
      const name = { material: material.name };
      return [
        ...(material.inciEu === '' ? [gap('composition', saying('pf-gap-inci', name), to)] : []),
        ...(material.cas.length === 0 ? [gap('composition', saying('pf-gap-cas', name), to)] : []),
        ...(material.supplier === '' ? [gap('composition', saying('pf-gap-supplier', name), to)] : []),
      ];
    }),
  ];
}

function notificationGaps({ product: { markets }, file: { notification }, id }: FileData): Gap[] {
  const to = `/products/${id}/file/change`;
  const isInEu = markets.some((market) => market === 'NI' || market === 'EU');
  return [
    ...(markets.includes('GB') && notification.gbReference === ''
      ? [gap('notification', saying('pf-gap-notify-gb'), to, 'notification')]
      : []),
    ...(isInEu && notification.euReference === ''
      ? [
          gap(
            'notification',
            saying('pf-gap-notify-eu', { isForNi: markets.includes('EU') ? 'no' : 'yes' }),
            to,
            'notification',
          ),
        ]
      : []),
  ];
}

function responsibleGaps({ product: { markets }, house }: FileData): Gap[] {
  const isInEu = markets.some((market) => market === 'NI' || market === 'EU');
  const lacks = (one: { name: string; address: string }) => one.name === '' || one.address === '';
  return [
    ...(markets.includes('GB') && lacks(house.responsibleGb)
      ? [gap('description', saying('pf-gap-responsible-gb'), '/workshop')]
      : []),
    ...(isInEu && lacks(house.responsibleEu)
      ? [gap('description', saying('pf-gap-responsible-eu'), '/workshop')]
      : []),
    ...(markets.includes('US') && lacks(house.responsibleUs)
      ? [gap('description', saying('pf-gap-responsible-us'), '/workshop')]
      : []),
  ];
}

/** The label desk says each of them, and where it is mended. */
const labelGaps = ({ labels, id }: FileData): Gap[] =>
  labels
    .filter(({ composed }) => composed.missing.length > 0)
    .map(({ market, composed: { missing } }) =>
      gap(
        'label',
        saying('pf-gap-label', { market: checkWords.market[market], n: missing.length }),
        `/labels/products/${id}`,
      ),
    );
