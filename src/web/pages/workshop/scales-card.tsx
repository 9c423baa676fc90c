import { useState } from 'react';
import { partWords, sayGrams, scaleWords, workshopWords } from '../../../words/index.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ShowWorking } from '../../parts/show-working.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import { sayRepeats } from '../scales/say-repeats.ts';
import { ScaleState } from '../scales/scale-state.tsx';
import { ScaleDialog } from './scale-dialog.tsx';
import styles from './workshop.module.css';
import type { Scale } from './workshop.ts';

const { scales: words } = workshopWords;

const scaleInWords = ({ capacityGrams, readabilityGrams, accuracyClass }: Scale): string =>
  [
    words.about(sayGrams(capacityGrams), sayGrams(readabilityGrams)),
    ...(accuracyClass === null ? [] : [words.verified(accuracyClass)]),
  ].join(', ');

/** One in a hundred: what the bench asks of a scent (common practice, no source). */
const TOLERANCE = 0.01;

const weighingOf = ({ readabilityGrams, repeatability }: Scale) => ({
  readabilityGrams: Number(readabilityGrams),
  ...(repeatability && { repeatabilityGrams: Number(repeatability.grams) }),
  relativeTolerance: TOLERANCE,
});

export function ScalesCard({ scales }: { readonly scales: readonly Scale[] }) {
  const [asked, setAsked] = useState<string | null>(null);
  const zone = useTimeZone();
  return (
    <Card title={words.title} anchor="scales" isFlush>
      <List rows={scales} keyOf={({ id }) => id} empty={words.none}>
        {(scale) => (
          <>
            <ListFoot>
              <span>
                <strong>{scale.name}</strong>
                <br />
                <span className="soft">{scaleInWords(scale)}</span>
                <br />
                <ScaleState scale={scale} />
                <br />
                <span className="soft small">{sayRepeats(scale, zone)}</span>
                <br />
                <TextLink to={`/scales/${scale.id}`}>{scaleWords.see}</TextLink>
              </span>
              <Button isPlain onPress={() => setAsked(scale.id)} label={`${partWords.change}: ${scale.name}`}>
                {partWords.change}
              </Button>
            </ListFoot>
            <ShowWorking title={words.smallest} calculation="smallest-weight" input={weighingOf(scale)} />
          </>
        )}
      </List>
      <div className={styles.last}>
        <Button onPress={() => setAsked('')}>{words.add}</Button>
      </div>
      {asked !== null && (
        <ScaleDialog scale={scales.find(({ id }) => id === asked)} onClose={() => setAsked(null)} />
      )}
    </Card>
  );
}
