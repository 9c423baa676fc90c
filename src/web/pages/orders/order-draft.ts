import { done, type Problem, problem, type Result, refused } from '../../../core/problem.ts';
import { orderWords, partWords, sayDate } from '../../../words/index.ts';
import type { WriteOf } from '../../api/shapes.ts';
import type { Described } from '../../show/find-differences.ts';
import { readWhole } from '../../show/read-whole.ts';

export interface OrderLineDraft {
  /** Keeps a line's fields its own while lines come and go. */
  readonly key: string;
  readonly productId: string;
  readonly units: string;
}

export interface OrderDraft {
  readonly customerId: string | null;
  readonly placedOn: string;
  readonly wantedBy: string;
  readonly note: string;
  readonly lines: readonly OrderLineDraft[];
}

type OrderBody = Omit<WriteOf<'saveOrder'>['body'], 'id' | 'version'>;
type Line = OrderBody['lines'][number];

const isEmptyLine = ({ productId, units }: OrderLineDraft): boolean =>
  productId === '' && units.trim() === '';

function readLine(line: OrderLineDraft, index: number): Result<Line> {
  const units = readWhole(line.units, `lines[${index}].units`, 1);
  const missing = line.productId === '' ? [problem('choice-missing', `lines[${index}].productId`)] : [];
  if (units.ok && missing.length === 0) return done({ productId: line.productId, units: units.value });
  return refused(...missing, ...(units.ok ? [] : units.problems));
}

/** Lines that somebody began; one at least, so that the first empty one is said to be empty. */
function readLines(lines: readonly OrderLineDraft[]): Result<Line[]> {
  const begun = lines.filter((line) => !isEmptyLine(line));
  const read = (begun.length === 0 ? lines.slice(0, 1) : lines).flatMap((line, index) =>
    begun.length > 0 && isEmptyLine(line) ? [] : [readLine(line, index)],
  );
  const problems = read.flatMap((line): readonly Problem[] => (line.ok ? [] : line.problems));
  if (problems.length > 0) return refused(...problems);
  return done(read.flatMap((line) => (line.ok ? [line.value] : [])));
}

/** What was typed as the contract wants it, or everything that is missing at once. */
export function readOrderDraft(draft: OrderDraft): Result<OrderBody> {
  const lines = readLines(draft.lines);
  const dates = (['wantedBy', 'placedOn'] as const)
    .filter((field) => draft[field] === '')
    .map((field) => problem('date-missing', field));
  if (!lines.ok || dates.length > 0) return refused(...dates, ...(lines.ok ? [] : lines.problems));
  const { customerId, placedOn, wantedBy, note } = draft;
  return done({ customerId, placedOn, wantedBy, note, lines: lines.value });
}

/** The draft in words, to be held against what somebody else wrote. */
export const describeOrder =
  (nameOf: { readonly product: (id: string) => string; readonly customer: (id: string) => string }) =>
  (draft: OrderDraft): Described => [
    [
      orderWords.form.customer,
      draft.customerId === null ? partWords.nothing : nameOf.customer(draft.customerId),
    ],
    [orderWords.form.wantedBy, draft.wantedBy === '' ? '' : sayDate(draft.wantedBy)],
    [orderWords.form.placedOn, draft.placedOn === '' ? '' : sayDate(draft.placedOn)],
    [orderWords.form.note, draft.note],
    ...draft.lines.map(
      ({ productId, units }, index) =>
        [orderWords.form.product(index + 1), `${units} × ${nameOf.product(productId)}`] as const,
    ),
  ];
