import { tellWater } from '../../check/index.ts';
import type { Market, productFiles } from '../../contract/index.ts';
import { checkWords, formulaWords, labelWords, printWords, say, sayGrams } from '../../words/index.ts';
import { kindOfFile } from '../attached-file.ts';
import { saying } from '../saying.ts';
import { compositionChapter } from './composition-chapter.ts';
import { batchTable, effectsChapter } from './effects-chapter.ts';
import { productExposureChapter, substanceExposureChapter } from './exposure-chapters.ts';
import { type ExposureUses, exposureUsesOf } from './exposure-uses.ts';
import { keptUntil, releasedBatches } from './file-batches.ts';
import { linesOf } from './file-labels.ts';
import { labelRule, ruleAsHeading } from './label-rule.ts';
import { certificatesTable } from './lots-used.ts';
import { methodChapter } from './method-chapter.ts';
import { partBChapters } from './part-b-chapters.ts';
import type { FileData } from './read-file-data.ts';
import { type Chapter, chapter, entry, tableOf, type Words, word } from './write-chapter.ts';

type Point = productFiles.PointOfDeparture;

/** The table's rows that a product's exposure is taken from: the first as chosen, else as its formula's uses say. */
export const exposureOf = ({ file, made }: FileData): ExposureUses =>
  exposureUsesOf(made?.opened.details, file.exposureType);

/** Every heading of Article 11 and of Annex I, in the law's order, filled from what the workshop knows. */
export function fileChapters(data: FileData, points: readonly Point[]): Chapter[] {
  return [
    descriptionChapter(data),
    chapter('safety-report', 1, ruleAsHeading('pif-2'), { says: [saying('pf-part-a-says')] }),
    ...partA(data, points).map((one, index) => numbered(one, index + 1)),
    ...partBChapters(data),
    methodOf(data),
    claimsChapter(data),
    typedChapter('animal-testing', 1, ruleAsHeading('pif-5'), data.file.animalTesting),
    notificationChapter(data),
    labelChapter(data),
    batchesChapter(data),
  ]
    .filter(({ key }) => !isForUsAlone(data) || key !== 'notification')
    .map((one) => withFiles(isForUsAlone(data) ? asKept(one) : one, data));
}

const wordsOf = (words: Words): string => (typeof words === 'string' ? words : say(words));

const isForUsAlone = ({ product: { markets } }: FileData): boolean =>
  markets.every((market) => market === 'US');

/**
 * The headings are those of a law that does not hold in the United States, where records have to support that the
 * product is safe and nothing says how they are laid out (21 USC 364d, as MoCRA added it): each says whose it is.
 */
const asKept = (one: Chapter): Chapter => ({
  ...one,
  source: saying('pf-not-us', { source: wordsOf(one.source ?? saying('pf-file-law')) }),
});

/** `Annex I, part A, 3`. */
const numbered = (one: Chapter, number: number): Chapter => ({
  ...one,
  source: saying('pf-annex', { part: 'A', number }),
});

function partA(data: FileData, points: readonly Point[]): Chapter[] {
  const { file, made } = data;
  const exposure = exposureOf(data);
  return [
    made
      ? compositionChapter(made.opened, new Map(file.functions.map((row) => [row.materialId, row.text])))
      : nothingMade('composition', labelRule('cpsr-a1').rule),
    physicalChapter(data),
    microbiologyChapter(data),
    impuritiesChapter(data),
    chapterOfUse(data),
    productExposureChapter(exposure),
    made
      ? substanceExposureChapter(made.opened, exposure, points)
      : nothingMade('substance-exposure', labelRule('cpsr-a7').rule),
    chapter('toxicology', 2, labelRule('cpsr-a8').rule, {
      state: 'assessor',
      says: [saying('pf-toxicology-says')],
    }),
    effectsChapter(data.complaints, data.sold),
    typedChapter('information', 2, labelRule('cpsr-a10').rule, file.otherInformation, true),
  ];
}

const nothingMade = (key: string, title: string): Chapter =>
  chapter(key, 2, title, { state: 'missing', says: [saying('pf-nothing-made')] });

/** What only a person can write. */
function typedChapter(
  key: string,
  level: Chapter['level'],
  title: string,
  text: string,
  isOptional = false,
): Chapter {
  if (text !== '') return chapter(key, level, title, { says: [text] });
  return isOptional
    ? chapter(key, level, title, { says: [saying('pf-nothing-further')] })
    : chapter(key, level, title, { state: 'missing', says: [saying('pf-not-written')] });
}

function descriptionChapter({ file, product, house, made }: FileData): Chapter {
  return chapter('description', 1, ruleAsHeading('pif-1'), {
    source: saying('pf-article', { paragraph: '11(2)(a)' }),
    state: file.description === '' ? 'missing' : 'there',
    says: file.description === '' ? [saying('pf-not-written')] : [file.description],
    entries: [
      entry(saying('pf-name'), product.name),
      entry(saying('pf-function'), product.functionText || saying('pf-missing')),
      entry(
        saying('pf-formula'),
        made
          ? saying('pf-formula-revision', { formula: made.opened.formula.name, number: made.revision.number })
          : saying('pf-missing'),
      ),
      entry(saying('pf-content'), sayGrams(product.declaredGrams)),
      entry(saying('pf-sold-in'), product.markets.map((market) => marketName(market)).join(', ')),
      ...responsibleOf(product.markets, house),
    ],
  });
}

const marketName = (market: Market): string => checkWords.market[market];

function responsibleOf(markets: readonly Market[], house: FileData['house']) {
  const asks: readonly (readonly [boolean, string, { name: string; address: string }])[] = [
    [markets.includes('GB'), 'pf-responsible-gb', house.responsibleGb],
    [markets.some((one) => one === 'NI' || one === 'EU'), 'pf-responsible-eu', house.responsibleEu],
    [markets.includes('US'), 'pf-responsible-us', house.responsibleUs],
  ];
  return asks
    .filter(([isAsked]) => isAsked)
    .map(([, code, { name, address }]) =>
      entry(saying(code), name === '' ? saying('pf-missing') : `${name}, ${address}`),
    );
}

function physicalChapter({ file, product }: FileData): Chapter {
  const isThere = file.physical !== '' && file.stability !== '';
  return chapter('physical', 2, labelRule('cpsr-a2').rule, {
    state: isThere ? 'there' : 'missing',
    entries: [
      entry(saying('pf-physical'), file.physical || saying('pf-not-written')),
      entry(saying('pf-stability'), file.stability || saying('pf-not-written')),
      entry(
        saying('pf-keeps'),
        saying('pf-keeps-months', {
          months: product.bestBeforeMonths,
          hasOpened: product.openedMonths === null ? 'no' : 'yes',
          opened: product.openedMonths ?? 0,
        }),
      ),
    ],
  });
}

function microbiologyChapter({ file, made }: FileData): Chapter {
  const water = made && tellWater(made.opened, file.waterInUse);
  const isWritten = file.microbiology !== '';
  return chapter('microbiology', 2, labelRule('cpsr-a3').rule, {
    state: isWritten ? 'there' : 'missing',
    says: [isWritten ? file.microbiology : saying('pf-not-written'), ...(water ? water.says : [])],
    cautions: water ? [...water.cautions] : [],
  });
}

function impuritiesChapter({ file, packaging, lotsUsed }: FileData): Chapter {
  const rows = packaging.map((one): Words[] => [
    one.name,
    one.supplier === '' ? saying('pf-missing') : one.supplier,
  ]);
  return chapter('impurities', 2, labelRule('cpsr-a4').rule, {
    state: file.impurities === '' || file.packaging === '' ? 'missing' : 'there',
    entries: [
      entry(saying('pf-impurities'), file.impurities || saying('pf-not-written')),
      entry(saying('pf-packaging'), file.packaging || saying('pf-not-written')),
    ],
    tables: [
      ...tableOf(
        saying('pf-table-packaging'),
        [word(saying('pf-col-packaging')), word(saying('pf-col-supplier'))],
        rows,
      ),
      ...certificatesTable(lotsUsed),
    ],
  });
}

function chapterOfUse({ file, product, made }: FileData): Chapter {
  const details = made?.opened.details;
  return chapter('use', 2, labelRule('cpsr-a5').rule, {
    state: file.normalUse === '' ? 'missing' : 'there',
    says: [file.normalUse === '' ? saying('pf-not-written') : file.normalUse],
    entries: [
      ...(details
        ? [
            entry(formulaWords.use, formulaWords.uses[details.use]),
            entry(formulaWords.category, details.category),
            ...(details.bodyPart === '' ? [] : [entry(formulaWords.bodyPart, details.bodyPart)]),
            entry(
              formulaWords.minAge,
              details.minAgeMonths === null ? saying('pf-adults') : String(details.minAgeMonths),
            ),
          ]
        : []),
      entry(saying('pf-precautions'), product.precautions || saying('pf-missing')),
    ],
  });
}

const methodOf = (data: FileData): Chapter =>
  methodChapter(data.made ? [...data.made.bases, data.made.revision] : [], data.file, {
    source: saying('pf-article', { paragraph: '11(2)(c)' }),
    state: data.file.gmpStatement === '' ? 'missing' : 'there',
    cautions: data.file.gmpStatement === '' ? [saying('pf-gmp-missing')] : [],
  });

function claimsChapter({ file, files }: FileData): Chapter {
  const { claims, hasNoClaims } = file;
  const nameOf = (id: string | null) => files.find((one) => one.id === id)?.name ?? '';
  const rows = claims.map((row): Words[] => [
    row.claim,
    row.proof === '' ? saying('pf-missing') : row.proof,
    nameOf(row.attachmentId),
  ]);
  const isThere = hasNoClaims || (claims.length > 0 && claims.every(({ proof }) => proof !== ''));
  const says = hasNoClaims && claims.length === 0 ? [saying('pf-no-claims')] : [];
  return chapter('claims', 1, ruleAsHeading('pif-4'), {
    source: saying('pf-article', { paragraph: '11(2)(d)' }),
    state: isThere ? 'there' : 'missing',
    says: isThere || claims.length > 0 ? says : [saying('pf-not-written')],
    tables: tableOf(
      saying('pf-table-claims'),
      [word(saying('pf-col-claim')), word(saying('pf-col-proof')), word(saying('pf-col-file'))],
      rows,
    ),
  });
}

function notificationChapter({ file: { notification }, product: { markets } }: FileData): Chapter {
  const asks = [
    {
      isAsked: markets.includes('GB'),
      rule: labelRule('notification-gb').rule,
      number: notification.gbReference,
    },
    {
      isAsked: markets.some((one) => one === 'NI' || one === 'EU'),
      rule: labelRule('notification-eu').rule,
      number: notification.euReference,
    },
  ].filter(({ isAsked }) => isAsked);
  return chapter('notification', 1, saying('pf-notification'), {
    state: asks.every(({ number }) => number !== '') ? 'there' : 'missing',
    entries: asks.map(({ rule, number }) => entry(rule, number || saying('pf-no-number'))),
  });
}

/** The words of each label as it is designed; what is drawn is named. */
function labelChapter({ labels }: FileData): Chapter {
  return chapter('label', 1, saying('pf-label'), {
    source: saying('pf-article', { paragraph: '19' }),
    state:
      labels.length > 0 && labels.every(({ composed }) => composed.missing.length === 0)
        ? 'there'
        : 'missing',
    says: [labels.length === 0 ? saying('pf-nothing-made') : printWords.written.label.examples],
    cautions: labels.flatMap(({ composed }) => composed.missing),
    entries: labels.flatMap(({ market, composed }) =>
      composed.pieces.map(({ piece }) =>
        entry(`${marketName(market)}: ${labelWords.roles[piece.role]}`, linesOf(piece).join('\n')),
      ),
    ),
  });
}

function batchesChapter(data: FileData): Chapter {
  const kept = keptUntil(data);
  const batches = releasedBatches(data);
  return chapter('batches', 1, saying('pf-batches'), {
    source: saying('pf-article', { paragraph: '11(1)' }),
    says: [
      ...(batches.length === 0 ? [saying('pf-no-batches')] : []),
      kept
        ? saying('pf-kept-until', { until: kept.until, from: kept.from, by: kept.by })
        : saying('pf-kept-unknown'),
    ],
    tables: batchTable(batches),
  });
}

const ATTACHABLE: ReadonlySet<string> = new Set([
  'description',
  'composition',
  'physical',
  'microbiology',
  'impurities',
  'use',
  'toxicology',
  'effects',
  'information',
  'part-b',
  'method',
  'claims',
  'animal-testing',
  'notification',
] satisfies productFiles.FileHeading[]);

const withFiles = (one: Chapter, { files }: FileData): Chapter => ({
  ...one,
  mayAttach: ATTACHABLE.has(one.key),
  files: files
    .filter(({ heading }) => heading === one.key)
    .map(({ id, name, size, sha256, head }) => ({
      id,
      name,
      kind: kindOfFile(head) ?? 'pdf',
      bytes: size,
      sha256,
    })),
});
