import { type Problem, problem } from '../../../core/problem.ts';
import { exact, readDecimal, toText } from '../../../core/quantity/index.ts';
import type { JudgeHere } from '../../api/use-bench-write.ts';
import type { Addition } from './batch.ts';
import { bandVerdict } from './weight-verdict.ts';

/**
 * What the workshop asks about a weighing, asked on the tablet while the workshop is away: what lies outside the band or
 * comes of another lot needs what was done differently, and why, before it is kept. Limits and reports it alone knows.
 */
export const judgeAdditionHere =
  (screen: Addition): JudgeHere<'recordAddition'> =>
  ({ body }) => {
    if (body.deviation) return [];
    const read = readDecimal(body.actualGrams, 'actualGrams');
    if (!read.ok) return read.problems;
    return [
      ...judgeSum(screen, toText(exact(screen.inGrams).plus(read.value)), body.isPart ?? false),
      ...judgeLot(screen, body.lotId),
    ];
  };

function judgeSum(screen: Addition, sum: string, isPart: boolean): readonly Problem[] {
  const verdict = bandVerdict(sum, screen);
  if (verdict === 'inside' || (isPart && verdict === 'low')) return [];
  const { itemName: item, lowGrams: low, highGrams: high, targetGrams: allowed } = screen;
  return [
    problem('weight-outside-band', 'actualGrams', { found: sum, allowed, parameters: { item, low, high } }),
  ];
}

const judgeLot = ({ itemName: item, lotId, lotNumber }: Addition, taken: string): readonly Problem[] =>
  taken === lotId ? [] : [problem('lot-not-planned', lotNumber ?? '', { parameters: { item } })];
