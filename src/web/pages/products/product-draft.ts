import { done, type Problem, problem, type Result, refused } from '../../../core/problem.ts';
import { readDecimal } from '../../../core/quantity/index.ts';
import { readWhole } from '../../show/read-whole.ts';
import { typedDecimal, typedDecimalOrNull } from '../../show/typed-decimal.ts';
import type { LabelFace, ProductDetails } from './product.ts';

export interface FaceDraft {
  readonly shape: LabelFace['shape'];
  readonly width: string;
  readonly height: string;
}

/** The details while somebody types: numbers are text, nothing chosen is ''. */
export interface ProductDraft
  extends Omit<
    ProductDetails,
    'lidId' | 'labelId' | 'aimGrams' | 'bestBeforeMonths' | 'openedMonths' | 'price' | 'faceMm' | 'backMm'
  > {
  readonly lidId: string;
  readonly labelId: string;
  readonly aimGrams: string;
  readonly bestBeforeMonths: string;
  readonly openedMonths: string;
  readonly price: string;
  readonly faceMm: FaceDraft;
  readonly backMm: FaceDraft;
}

/** A 60 ml tin is some 60 mm across, its label somewhat less (common practice, no source). */
const FACE: FaceDraft = { shape: 'round', width: '58', height: '58' };

/** Enough to look at again when somebody complains (common practice, no source). */
const SAMPLE_GRAMS = '10';

export const EMPTY_PRODUCT: ProductDraft = {
  name: '',
  formulaId: '',
  declaredGrams: '',
  tinId: '',
  lidId: '',
  labelId: '',
  aimGrams: '',
  fillBasis: 'minimum',
  bowlLossPercent: '3',
  headspacePercent: '0',
  retainedGrams: SAMPLE_GRAMS,
  markets: ['GB'],
  saleCountries: [],
  scentOnLabel: 'by-name',
  functionText: '',
  precautions: '',
  texts: {},
  gtin: '',
  // Nobody but the report or a test of how it keeps knows it.
  bestBeforeMonths: '',
  openedMonths: '',
  noOpenedPeriod: '',
  price: '',
  faceMm: FACE,
  backMm: FACE,
  isWithdrawn: false,
};

const draftOfFace = ({ shape, width, height }: LabelFace): FaceDraft => ({
  shape,
  width: String(width),
  height: String(height),
});

export const draftOfProduct = (details: ProductDetails): ProductDraft => ({
  ...details,
  lidId: details.lidId ?? '',
  labelId: details.labelId ?? '',
  aimGrams: details.aimGrams ?? '',
  bestBeforeMonths: String(details.bestBeforeMonths),
  openedMonths: details.openedMonths === null ? '' : String(details.openedMonths),
  price: details.price ?? '',
  faceMm: draftOfFace(details.faceMm),
  backMm: draftOfFace(details.backMm),
});

const idOrNull = (id: string): string | null => (id === '' ? null : id);

/** Millimetres of a drawing: a JavaScript number is exact enough to print with. */
function readMillimetres(typed: string, where: string): Result<number> {
  const read = readDecimal(typed, where);
  return read.ok ? done(read.value.toNumber()) : read;
}

function readFace(face: FaceDraft, where: string): Result<LabelFace> {
  const width = readMillimetres(face.width, `${where}.width`);
  const height = face.shape === 'round' ? width : readMillimetres(face.height, `${where}.height`);
  if (width.ok && height.ok) return done({ shape: face.shape, width: width.value, height: height.value });
  return refused(
    ...(width.ok ? [] : width.problems),
    ...(height.ok || height === width ? [] : height.problems),
  );
}

function findMissing(draft: ProductDraft): Problem[] {
  const needed = [
    [draft.name, 'text-missing', 'details.name'],
    [draft.formulaId, 'choice-missing', 'details.formulaId'],
    [draft.declaredGrams, 'number-missing', 'details.declaredGrams'],
    [draft.tinId, 'choice-missing', 'details.tinId'],
    [draft.markets.join(), 'choice-missing', 'details.markets'],
  ] as const;
  return needed.filter(([value]) => value.trim() === '').map(([, code, where]) => problem(code, where));
}

export function readProductDraft(draft: ProductDraft): Result<ProductDetails> {
  const bestBefore = readWhole(draft.bestBeforeMonths, 'details.bestBeforeMonths', 1);
  const opened: Result<number | null> =
    draft.openedMonths.trim() === '' ? done(null) : readWhole(draft.openedMonths, 'details.openedMonths', 1);
  const face = readFace(draft.faceMm, 'details.faceMm');
  const back = readFace(draft.backMm, 'details.backMm');
  const problems = [bestBefore, opened, face, back].flatMap((read) => (read.ok ? [] : read.problems));
  const missing = findMissing(draft);
  if (missing.length > 0 || !bestBefore.ok || !opened.ok || !face.ok || !back.ok) {
    return refused(...missing, ...problems);
  }
  return done({
    ...draft,
    declaredGrams: typedDecimal(draft.declaredGrams),
    lidId: idOrNull(draft.lidId),
    labelId: idOrNull(draft.labelId),
    aimGrams: typedDecimalOrNull(draft.aimGrams),
    bowlLossPercent: typedDecimal(draft.bowlLossPercent),
    headspacePercent: typedDecimal(draft.headspacePercent),
    retainedGrams: typedDecimal(draft.retainedGrams),
    bestBeforeMonths: bestBefore.value,
    openedMonths: opened.value,
    price: typedDecimalOrNull(draft.price),
    faceMm: face.value,
    backMm: back.value,
  });
}
