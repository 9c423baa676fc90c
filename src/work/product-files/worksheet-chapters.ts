import type { z } from 'zod';
import { type OpenedRevision, tellWater } from '../../check/index.ts';
import type { formulas, productFiles } from '../../contract/index.ts';
import { checkWords, formulaWords } from '../../words/index.ts';
import type { RevisionView } from '../formulas/index.ts';
import { saying } from '../saying.ts';
import { compositionChapter } from './composition-chapter.ts';
import { exposeSubstances, listSubstances } from './expose-substances.ts';
import { productExposureChapter, substanceExposureChapter } from './exposure-chapters.ts';
import { exposureUsesOf } from './exposure-uses.ts';
import { stepTable } from './method-chapter.ts';
import { type Chapter, chapter, entry, figure, tableOf, type Words, word } from './write-chapter.ts';

export type RevisionCheck = z.output<typeof formulas.revisionCheck>;

export interface WorksheetData {
  readonly opened: OpenedRevision;
  readonly revision: RevisionView;
  readonly bases: readonly RevisionView[];
  readonly check: RevisionCheck;
  readonly points: readonly productFiles.PointOfDeparture[];
  /** What each material does in it, as the files of its products say. */
  readonly functions: ReadonlyMap<string, string>;
}

/** What is prepared for the assessor of one formula: nothing in it is an assessment. */
export function worksheetChapters(data: WorksheetData): Chapter[] {
  const { opened, points } = data;
  const exposure = exposureUsesOf(opened.details);
  return [
    aboutChapter(data),
    asChapter(compositionChapter(opened, data.functions)),
    asChapter(productExposureChapter(exposure)),
    asChapter(substanceExposureChapter(opened, exposure, points)),
    waterChapter(opened),
    ...data.check.markets.map((market) => limitsChapter(market)),
    questionsChapter(data.check),
    rememberedChapter(data),
    chapter('method', 1, saying('sheet-method'), { tables: stepTable([...data.bases, data.revision]) }),
  ];
}

/** In the product file it is a part of the safety report; here it stands by itself. */
const asChapter = (part: Chapter): Chapter => ({ ...part, level: 1 });

function aboutChapter({ opened, revision, check }: WorksheetData): Chapter {
  const { details } = opened;
  return chapter('about', 1, saying('sheet-about'), {
    says: [check.sentence],
    entries: [
      entry(
        saying('pf-formula'),
        saying('pf-formula-revision', { formula: opened.formula.name, number: revision.number }),
      ),
      entry(formulaWords.standingTitle, formulaWords.standings[details.standing]),
      entry(formulaWords.use, formulaWords.uses[details.use]),
      entry(formulaWords.category, details.category),
      entry(formulaWords.productType, details.productType || saying('pf-missing')),
      entry(
        formulaWords.minAge,
        details.minAgeMonths === null ? saying('pf-adults') : String(details.minAgeMonths),
      ),
      ...(details.alsoUsedAs ?? []).map((use) =>
        entry(
          saying('sheet-also-used'),
          [formulaWords.uses[use.use], use.category, use.productType, use.bodyPart]
            .filter((text) => text !== '')
            .join(', '),
        ),
      ),
      ...(details.note === '' ? [] : [entry(formulaWords.note, details.note)]),
    ],
  });
}

/** Nobody says of a formula how its tin is used: what hangs on that stays open here. */
function waterChapter(opened: OpenedRevision): Chapter {
  const { says, cautions } = tellWater(opened);
  return chapter('low-water', 1, saying('sheet-water'), { says: [...says], cautions: [...cautions] });
}

function limitsChapter({ market, sentence, verdicts }: RevisionCheck['markets'][number]): Chapter {
  const rows = verdicts
    .filter(({ verdict }) => verdict !== 'no-rule')
    .map((row): Words[] => [
      row.name,
      row.mostPercent,
      row.limitPercent ?? '',
      [row.kind && checkWords.kinds[row.kind], row.entry, row.edition].filter(Boolean).join(', '),
      checkWords.verdicts[row.verdict],
      row.confidence === 'memory' ? saying('pf-from-memory') : '',
    ]);
  return chapter(`limits-${market}`, 1, saying('sheet-limits', { market }), {
    says: [sentence],
    tables: tableOf(
      saying('sheet-table-limits'),
      [
        word(saying('pf-col-substance')),
        figure(saying('pf-col-most')),
        figure(saying('sheet-col-limit')),
        word(saying('sheet-col-rule')),
        word(saying('pf-col-verdict')),
        word(saying('pf-col-known')),
      ],
      rows,
    ),
  });
}

function questionsChapter({ open }: RevisionCheck): Chapter {
  const rows = open.map((question): Words[] => [
    question.substance,
    question.why,
    question.decided === null
      ? saying('sheet-open')
      : checkWords.decided(question.decided.verdict, question.decided.by),
    question.decided?.reason ?? '',
  ]);
  return chapter('questions', 1, saying('sheet-questions'), {
    says: open.length === 0 ? [saying('sheet-no-questions')] : [],
    tables: tableOf(
      saying('sheet-table-questions'),
      [
        word(saying('pf-col-substance')),
        word(saying('sheet-col-why')),
        word(saying('sheet-col-decided')),
        word(saying('sheet-col-reason')),
      ],
      rows,
    ),
  });
}

/** Everything that nobody has seen printed, in one list: what the assessor replaces first. */
function rememberedChapter({ opened, check, points }: WorksheetData): Chapter {
  const exposure = exposureUsesOf(opened.details);
  const amounts = listSubstances(opened).filter(({ isRemembered }) => isRemembered);
  const rules = check.markets.flatMap(({ market, verdicts }) =>
    verdicts
      .filter(({ confidence, verdict }) => confidence === 'memory' && verdict !== 'no-rule')
      .map(({ name }) => `${name} (${checkWords.market[market]})`),
  );
  const withoutPoint =
    exposure.types.length === 0
      ? 0
      : exposeSubstances(opened, exposure, points).filter(({ point }) => !point).length;
  return chapter('remembered', 1, saying('sheet-remembered'), {
    says: [saying('sheet-remembered-says')],
    entries: [
      entry(
        saying('sheet-remembered-amounts'),
        amounts.length === 0 ? saying('pf-none') : amounts.map(({ name }) => name).join(', '),
      ),
      entry(
        saying('sheet-remembered-rules'),
        rules.length === 0 ? saying('pf-none') : [...new Set(rules)].join(', '),
      ),
      entry(saying('sheet-remembered-defaults'), saying('pf-margin-remembered')),
      entry(saying('sheet-without-point'), saying('sheet-without-point-n', { n: withoutPoint })),
    ],
  });
}
