import type { Problem } from '../../../core/problem.ts';
import { exact } from '../../../core/quantity/index.ts';
import { sayProblem, weighInWords as words } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import type { Scale } from '../workshop/workshop.ts';
import styles from './mishap.module.css';
import type { WeighIn } from './use-weigh-in.ts';

/** What a careful colleague would ask about a reading: answered in one tap, and the answer stays with the weighing. */
export function ReadingDialog({ weigh }: { readonly weigh: WeighIn }) {
  const { reading } = weigh;
  if (reading === null) return null;
  const { said, meant, kind, question } = reading;
  const shown = said.vessel?.grossGrams ?? said.net;
  const onScale = weigh.scales.find(({ id }) => id === said.scaleId) ?? weigh.scale;
  // What this scale can show neither way is not offered as right: it stood on another, or was misread.
  const isPossible = onScale === null || mayShow(onScale, shown);
  const others = isPossible ? [] : weigh.scales.filter((each) => mayShow(each, shown));
  return (
    <Dialog
      isBench
      title={words.readingTitle}
      isOpen
      onClose={weigh.forgetAsked}
      closeWord={words.readingAgain}
    >
      <p>{sayProblem(reading.question).says}</p>
      <div className={styles.choices}>
        {meant !== null && (
          <Button
            isAct
            isBench
            isWide
            onPress={() => {
              weigh.set('grams')(meant);
              void weigh.send({
                ...said,
                net: meant,
                vessel: null,
                isReadingSure: true,
                readingWas: { kind, wasGrams: said.net },
              });
            }}
          >
            {sayMeant(meant, question, kind)}
          </Button>
        )}
        {isPossible && (
          <Button isBench isWide onPress={() => void weigh.send({ ...said, isReadingSure: true })}>
            {words.readingRight(said.net)}
          </Button>
        )}
        {others.map((each) => (
          <Button
            key={each.id}
            isBench
            isWide
            onPress={() => {
              weigh.set('scaleId')(each.id);
              void weigh.send({ ...said, scaleId: each.id });
            }}
          >
            {words.readingOnOther(each.name)}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}

/** It holds that much, and its steps come to that figure. */
const mayShow = ({ capacityGrams, readabilityGrams }: Scale, grams: string): boolean =>
  exact(grams).lte(capacityGrams) && exact(grams).mod(readabilityGrams).isZero();

function sayMeant(meant: string, { found, parameters }: Problem, kind: string): string {
  if (kind === 'reading-other-unit')
    return words.readingUnit(meant, String(found ?? ''), String(parameters?.unit ?? ''));
  return kind === 'reading-ten-times' ? words.readingPoint(meant) : words.readingMeant(meant);
}
