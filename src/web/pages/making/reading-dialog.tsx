import { sayProblem, weighInWords as words } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import styles from './mishap.module.css';
import type { WeighIn } from './use-weigh-in.ts';

/** What a careful colleague would ask about a reading: answered in one tap, and the answer stays with the weighing. */
export function ReadingDialog({ weigh }: { readonly weigh: WeighIn }) {
  const { reading } = weigh;
  if (reading === null) return null;
  const { said, meant, kind } = reading;
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
            {words.readingMeant(meant)}
          </Button>
        )}
        <Button isBench isWide onPress={() => void weigh.send({ ...said, isReadingSure: true })}>
          {words.readingRight(said.net)}
        </Button>
      </div>
    </Dialog>
  );
}
