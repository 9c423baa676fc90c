import { exact, readDecimal, roundPercent, sumOf, toText } from '../../../core/quantity/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { Formula } from './formula.ts';

type Details = BodyOf<'saveRevision'>['details'];
export type StepKind = Details['steps'][number]['kind'];

export interface DraftLine {
  readonly key: string;
  readonly stage: string;
  /** `material:ID` or `formula:ID`; '' where nothing is chosen. */
  readonly item: string;
  readonly grams: string;
}
export interface DraftStep {
  readonly key: string;
  readonly stage: string;
  readonly kind: StepKind;
  readonly what: string;
  readonly leastCelsius: string;
  readonly mostCelsius: string;
  readonly minutes: string;
  readonly caution: string;
  readonly roundMinutes: string;
  readonly rounds: string;
  readonly growsPercent: string;
  readonly leastHours: string;
  readonly mostHours: string;
}
export interface RecipeDraft {
  readonly lines: readonly DraftLine[];
  readonly steps: readonly DraftStep[];
  readonly use: Details['use'];
  readonly category: string;
  readonly bodyPart: string;
  readonly productType: string;
  readonly alsoUsedAs: NonNullable<Details['alsoUsedAs']>;
  readonly minAgeMonths: string;
  readonly standing: Details['standing'];
  readonly settingLeast: string;
  readonly settingMost: string;
  readonly keepMonths: string;
  readonly note: string;
}

let made = 0;
/** Rows are told apart by a number of their own, whatever is typed into them. */
const newKey = (): string => {
  made += 1;
  return String(made);
};

export const emptyLine = (stage: string): DraftLine => ({ key: newKey(), stage, item: '', grams: '' });
export const emptyStep = (stage: string): DraftStep => ({
  key: newKey(),
  stage,
  kind: 'mix',
  what: '',
  leastCelsius: '',
  mostCelsius: '',
  minutes: '',
  caution: '',
  roundMinutes: '',
  rounds: '',
  growsPercent: '',
  leastHours: '',
  mostHours: '',
});

/** Takes a material into the first line that has none chosen, else into a line of its own. */
export function withMaterial(lines: readonly DraftLine[], id: string): DraftLine[] {
  const item = `material:${id}`;
  const free = lines.find((line) => line.item === '');
  return free
    ? lines.map((line) => (line === free ? { ...line, item } : line))
    : [...lines, { ...emptyLine(lines.at(-1)?.stage ?? 'Melt'), item }];
}

/** Lines as they are written, each a row of its own. */
export const linesFrom = (lines: readonly Details['lines'][number][]): DraftLine[] =>
  lines.map(({ stage, itemKind, itemId, grams }) => ({
    key: newKey(),
    stage,
    item: `${itemKind}:${itemId}`,
    grams,
  }));

/** The form's first state: the latest revision, or one empty line. */
export function draftOf(formula: Formula): RecipeDraft {
  const details = formula.latest?.details;
  return {
    lines: details ? linesFrom(details.lines) : [emptyLine('Melt')],
    steps:
      details?.steps.map((step) => ({
        ...step,
        key: newKey(),
        leastCelsius: step.leastCelsius ?? '',
        mostCelsius: step.mostCelsius ?? '',
        minutes: step.minutes ?? '',
        roundMinutes: step.roundMinutes ?? '',
        rounds: step.rounds?.toString() ?? '',
        growsPercent: step.growsPercent ?? '',
        leastHours: step.leastHours ?? '',
        mostHours: step.mostHours ?? '',
      })) ?? [],
    use: details?.use ?? 'leave-on',
    category: details?.category ?? '5A',
    bodyPart: details?.bodyPart ?? 'body',
    productType: details?.productType ?? 'body-lotion',
    alsoUsedAs: details?.alsoUsedAs ?? [],
    minAgeMonths: details?.minAgeMonths?.toString() ?? '',
    standing: details?.standing ?? 'trial',
    settingLeast: details?.settingHours?.least.toString() ?? '',
    settingMost: details?.settingHours?.most.toString() ?? '',
    keepMonths: details?.keepMonths?.toString() ?? '',
    note: details?.note ?? '',
  };
}

const wholeOrNull = (typed: string): number | null => (typed.trim() === '' ? null : Number(typed));

/** What the contract asks for. What cannot be read goes on as typed, and the workshop says what is wrong with it. */
export function detailsOf(draft: RecipeDraft): Details {
  const least = wholeOrNull(draft.settingLeast);
  const most = wholeOrNull(draft.settingMost);
  return {
    use: draft.use,
    category: draft.category,
    bodyPart: draft.bodyPart,
    productType: draft.productType,
    alsoUsedAs: draft.alsoUsedAs,
    minAgeMonths: wholeOrNull(draft.minAgeMonths),
    standing: draft.standing,
    settingHours:
      least === null && most === null ? null : { least: least ?? most ?? 0, most: most ?? least ?? 0 },
    keepMonths: wholeOrNull(draft.keepMonths),
    note: draft.note,
    lines: draft.lines.map((line) => {
      const [itemKind, itemId] = line.item.split(':');
      return {
        stage: line.stage,
        itemKind: itemKind === 'formula' ? 'formula' : 'material',
        itemId: itemId ?? '',
        grams: typedDecimal(line.grams),
      };
    }),
    steps: draft.steps.map(({ key: _key, ...step }) => ({
      ...step,
      leastCelsius: typedDecimalOrNull(step.leastCelsius),
      mostCelsius: typedDecimalOrNull(step.mostCelsius),
      minutes: typedDecimalOrNull(step.minutes),
      ...onlyOf('whip', step.kind, {
        roundMinutes: typedDecimalOrNull(step.roundMinutes),
        rounds: wholeOrNull(step.rounds),
        growsPercent: typedDecimalOrNull(step.growsPercent),
      }),
      ...onlyOf('set', step.kind, {
        leastHours: typedDecimalOrNull(step.leastHours),
        mostHours: typedDecimalOrNull(step.mostHours),
      }),
    })),
  };
}

/** Of another kind of step nothing is kept, even where it was typed before the kind was changed. */
const onlyOf = <Fields extends Readonly<Record<string, string | number | null>>>(
  wanted: StepKind,
  kind: StepKind,
  fields: Fields,
): { [Key in keyof Fields]: Fields[Key] | null } =>
  kind === wanted
    ? fields
    : (Object.fromEntries(Object.keys(fields).map((key) => [key, null])) as {
        [Key in keyof Fields]: null;
      });

type WithGrams = Pick<DraftLine, 'grams'>;

const gramsOf = (line: WithGrams) => {
  const read = readDecimal(line.grams, 'grams');
  return read.ok && read.value.gt(0) ? read.value : exact(0);
};

export const totalGrams = (draft: RecipeDraft): string => toText(sumOf(draft.lines.map(gramsOf)));

/** As typed so far, for the eye; the kept percents are worked out at the workshop from the same grams. */
export function percentOf(line: WithGrams, draft: { readonly lines: readonly WithGrams[] }): string {
  const total = sumOf(draft.lines.map(gramsOf));
  return total.isZero() ? '' : toText(roundPercent(gramsOf(line).times(100).div(total)));
}
