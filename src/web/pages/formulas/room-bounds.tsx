import { roomWords, sayDecimal } from '../../../words/index.ts';
import { Sentence } from '../../parts/sentence.tsx';
import type { RoomBound, RoomLine } from './span-of-room.ts';

const KINDS = ['label', 'report', 'limit'] as const;

/** Every line by what bounds it: label, report, limits, each with what breaks. */
export const RoomBounds = ({ lines }: { readonly lines: readonly RoomLine[] }) => (
  <dl>
    {lines.map((line) => (
      <LineBounds key={JSON.stringify(line)} line={line} />
    ))}
  </dl>
);

const LineBounds = ({ line }: { readonly line: RoomLine }) => (
  <>
    <dt>
      <strong>{line.name}</strong> {line.percent} %
    </dt>
    {KINDS.map((kind) => (
      <dd key={kind} className="small">
        {roomWords.kinds[kind]}: {sayRange(line.down[kind], line.up[kind])}
        {[line.down[kind], line.up[kind]].map(
          (bound) =>
            bound && (
              <p key={bound.says.code} className="soft">
                <Sentence saying={bound.says} />
              </p>
            ),
        )}
      </dd>
    ))}
  </>
);

function sayRange(down: RoomBound | null, up: RoomBound | null): string {
  // What is cut to the inside may be itself, even where the bound may not.
  const isAt = ({ isIncluded, percent, shownPercent }: RoomBound) => isIncluded || percent !== shownPercent;
  const parts = [
    down && (isAt(down) ? roomWords.from : roomWords.above)(sayDecimal(down.shownPercent)),
    up && (isAt(up) ? roomWords.upTo : roomWords.below)(sayDecimal(up.shownPercent)),
  ].filter((part) => part !== null);
  return parts.length === 0 ? roomWords.free : parts.join(' ');
}
