import type { z } from 'zod';
import type { formulas, Market } from '../contract/index.ts';
import { digestOf } from '../core/digest/index.ts';
import type { Checked, SignedDecision } from './checked.ts';
import { listUnknowns, type MarketUnknown } from './list-unknowns.ts';
import { sayWhatIsOpen } from './say-what-is-open.ts';
import { questionKey } from './unknown-key.ts';

export type OpenQuestion = z.output<typeof formulas.openQuestion>;

type Decision = NonNullable<OpenQuestion['decided']>;

interface Gathered {
  readonly unknowns: MarketUnknown[];
  readonly decision: SignedDecision | undefined;
  readonly lapsed: SignedDecision | undefined;
}

/** What no source tells, each once however many markets ask it; decided or not. */
export const listQuestions = (checked: Checked): OpenQuestion[] =>
  listQuestionsOf(checked, listUnknowns(checked));

export const listQuestionsOf = (checked: Checked, unknowns: readonly MarketUnknown[]): OpenQuestion[] =>
  [...gather(checked, unknowns).values()].map((gathered) => viewQuestion(gathered, checked));

function gather(checked: Checked, unknowns: readonly MarketUnknown[]): Map<string, Gathered> {
  const questions = new Map<string, Gathered>();
  const seen = new Map<string, number>();
  for (const unknown of unknowns) {
    // The same signature twice in one market is two rules about one substance, and two questions.
    const within = `${unknown.market} ${unknown.signature}`;
    const nth = seen.get(within) ?? 0;
    seen.set(within, nth + 1);
    const decision = checked.decisions.get(unknown.key);
    const lapsed = checked.lapsed.get(unknown.key);
    const key = `${unknown.signature}#${nth}#${(decision ?? lapsed)?.entry_id ?? ''}`;
    const known = questions.get(key);
    if (known) known.unknowns.push(unknown);
    else questions.set(key, { unknowns: [unknown], decision, lapsed });
  }
  return questions;
}

function viewQuestion({ unknowns, decision, lapsed }: Gathered, checked: Checked): OpenQuestion {
  const [first] = unknowns;
  if (!first) throw new Error('a question is about something');
  return {
    key: questionKey(unknowns.map((unknown) => unknown.key)),
    substance: first.substance,
    what: sayWhatIsOpen(first.why),
    markets: unknowns.map((unknown): Market => unknown.market),
    why: first.why,
    upon: digestOf(unknowns.map((unknown) => unknown.digest)),
    decided: decision ? viewDecision(decision) : null,
    lapsed: lapsed ? viewDecision(lapsed) : null,
    earlier: listEarlier(unknowns, checked, decision ?? lapsed),
  };
}

/** What was decided before, once however many markets it was for. */
function listEarlier(
  unknowns: readonly MarketUnknown[],
  { everDecided }: Checked,
  latest: SignedDecision | undefined,
): OpenQuestion['earlier'] {
  const ever = unknowns.flatMap(({ key }) => everDecided.get(key) ?? []);
  const byEntry = new Map(ever.map((decision) => [decision.entry_id, decision]));
  return [...byEntry.values()].filter(({ entry_id }) => entry_id !== latest?.entry_id).map(viewDecision);
}

const viewDecision = (decision: SignedDecision): Decision => ({
  entryId: decision.entry_id,
  verdict: decision.verdict as Decision['verdict'],
  by: decision.person_name,
  reason: decision.reason,
  at: decision.happened_at,
});
