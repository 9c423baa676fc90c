import { roomWords, sayDecimal } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { Skeleton } from '../../parts/skeleton.tsx';
import { State } from '../../parts/state.tsx';
import { RoomBounds } from './room-bounds.tsx';
import styles from './room-to-move.module.css';
import { closestFirst, type Room, type RoomLine, spanOfRoom } from './span-of-room.ts';
import type { WantedDraft } from './use-check-facts.ts';
import { useRoom } from './use-room.ts';

interface Props {
  readonly revision: { readonly id: string; readonly formulaId: string };
  /** As asked on the page; '': where it is sold. */
  readonly markets: string;
  /** The amounts that are being tried; null: those that are written. */
  readonly draft: WantedDraft;
  /** Puts so many grams of a line to the trial. */
  readonly onTry: (line: number, grams: string) => void;
}

/** How far each line may go up and down before the label, the report or a limit stops it. */
export function RoomToMove({ revision, markets, draft, onTry }: Props) {
  const { room, problems, isBehind } = useRoom(revision, markets, draft);
  return (
    <Card title={roomWords.title} anchor="room">
      {problems.length > 0 ? (
        <Problems problems={problems} />
      ) : room && !isBehind ? (
        <>
          <p className="soft small">{draft ? roomWords.ofTried : roomWords.says}</p>
          <RoomOf room={room} onTry={onTry} />
        </>
      ) : (
        <>
          <p className="soft small" role="status">
            {roomWords.working}
          </p>
          <Skeleton />
        </>
      )}
    </Card>
  );
}

/** As many as are taken in at a glance. */
const SHOWN = 3;

interface RoomProps {
  readonly room: Room;
  readonly onTry: Props['onTry'];
}

function RoomOf({ room, onTry }: RoomProps) {
  const placed = new Map(room.lines.map((line, place) => [line, place]));
  const lines = closestFirst(room.lines);
  const rowOf = (line: RoomLine) => {
    const place = placed.get(line) ?? 0;
    return <Line key={place} line={line} onTry={(grams) => onTry(place, grams)} />;
  };
  const others = lines.slice(SHOWN);
  return (
    <>
      {room.broken.map((each) => (
        <State key={JSON.stringify(each)} kind="stop">
          <Sentence saying={each} />
        </State>
      ))}
      <ul className={styles.lines}>{lines.slice(0, SHOWN).map(rowOf)}</ul>
      {others.length > 0 && (
        <Disclosure title={roomWords.others(others.length)}>
          {() => <ul className={styles.lines}>{others.map(rowOf)}</ul>}
        </Disclosure>
      )}
      <Disclosure title={roomWords.bounds}>{() => <RoomBounds lines={room.lines} />}</Disclosure>
      <p className="soft small">{roomWords.unknown}</p>
    </>
  );
}

interface LineProps {
  readonly line: RoomLine;
  readonly onTry: (grams: string) => void;
}

function Line({ line, onTry }: LineProps) {
  const span = spanOfRoom(line);
  const low = sayDecimal(span.lowest?.shownPercent ?? span.low);
  const high = sayDecimal(span.highest?.shownPercent ?? span.high);
  const ends = [span.lowest, span.highest].filter((bound) => bound !== undefined);
  return (
    <li className={styles.line}>
      {line.says.map((each) => (
        <p key={each.code}>
          <Sentence saying={each} />
        </p>
      ))}
      <div className={styles.span}>
        <span className="small">
          {low} % {span.lowestKind && roomWords.ends[span.lowestKind]}
        </span>
        <div
          className={styles.track}
          role="img"
          aria-label={roomWords.picture(line.name, low, line.percent, high)}
        >
          <i style={{ left: `${span.level * 100}%` }} />
        </div>
        <span className="small">
          {high} % {span.highestKind && roomWords.ends[span.highestKind]}
        </span>
      </div>
      <FormActions>
        {ends.map((bound) => {
          const percent = sayDecimal(bound.shownPercent);
          return (
            <Button
              key={bound.says.code}
              onPress={() => onTry(bound.grams)}
              label={roomWords.tryLabel(line.name, percent)}
            >
              {roomWords.tryIt(percent)}
            </Button>
          );
        })}
      </FormActions>
    </li>
  );
}
