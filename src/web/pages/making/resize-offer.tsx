import { weighInWords as words } from '../../../words/index.ts';
import { problemsOf } from '../../api/problems-of.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { isSilent } from '../../away/outbox.ts';
import { Button } from '../../parts/button.tsx';
import { Problems } from '../../parts/problems.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import styles from './mishap.module.css';

type Offer = AnswerOf<'offerResize'>;

interface Props {
  readonly batchId: string;
  readonly position: number;
  /** What is about to be entered, besides what is in. */
  readonly moreGrams: string;
  readonly isBusy: boolean;
  readonly onTake: (offer: Offer) => void;
}

/** What each line becomes where the percentages are to hold, whether that is there, and the one tap. */
export function ResizeOffer({ batchId, position, moreGrams, isBusy, onTake }: Props) {
  const request = { params: { id: batchId }, body: { position, moreGrams } };
  const read = useRead('offerResize', request, { isWanted: !isSilent() });
  if (isSilent()) return <p className="soft">{words.offerAway}</p>;
  if (read.error) return <Problems problems={problemsOf(read.error)} />;
  if (!read.data) return <p className="soft">{words.offerWait}</p>;
  const offer = read.data;
  const { direction, isGrams, wasGrams } = offer;
  return (
    <>
      <h3>{words.offerTitle(direction, wasGrams, isGrams)}</h3>
      <ul className={styles.lines}>
        {offer.lines.map((line) => (
          <li key={line.position}>
            <strong>{line.itemName}</strong> <LineThen line={line} />
          </li>
        ))}
        {offer.tins
          .filter((tin) => tin.is !== tin.was)
          .map((tin) => (
            <li key={tin.productId}>{words.tins(tin.productName, tin.was, tin.is)}</li>
          ))}
        {offer.room.map(({ isThere, says }) => (
          <li key={JSON.stringify(says)}>
            <State kind={isThere ? 'ready' : 'stop'}>
              <Sentence saying={says} />
            </State>
          </li>
        ))}
      </ul>
      {offer.isPossible ? (
        <>
          <p className="soft">{words.offerSays}</p>
          <Button isAct isBench isWide isBusy={isBusy} onPress={() => onTake(offer)}>
            {words.offerTap(direction, isGrams)}
          </Button>
        </>
      ) : (
        <div>
          <p>
            <strong>{words.offerNot(direction)}</strong>
          </p>
          <ul>
            {offer.hindrances.map((each) => (
              <li key={JSON.stringify(each)}>
                <Sentence saying={each} />
              </li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

const LineThen = ({ line }: { readonly line: Offer['lines'][number] }) => (
  <>
    {sayLine(line)}
    {line.laterDone !== null && <span className="soft"> {words.through(line.laterDone)}</span>}
    {line.warning && (
      <span className="soft">
        {' '}
        <Sentence saying={line.warning} />
      </span>
    )}
  </>
);

function sayLine({ state, leftGrams, wasGrams, inGrams, isGrams }: Offer['lines'][number]): string {
  if (state === 'open') return words.open(leftGrams, wasGrams);
  if (state === 'more') return words.more(leftGrams, inGrams);
  return state === 'over' ? words.over(inGrams, isGrams) : words.enough(inGrams);
}
