import { stepWords } from '../../../words/index.ts';
import { Card } from '../../parts/card.tsx';
import type { Batch, Step } from './batch.ts';
import styles from './step.module.css';
import { StepPhotos } from './step-photos.tsx';
import { WhipRounds } from './whip-rounds.tsx';

const isTold = (screen: Batch['screens'][number]): screen is Step =>
  screen.kind === 'step' && (screen.whipped.length > 0 || screen.photos.length > 0);

/** Rounds of whipping and photographs of a batch that is made; what is seen the day after is added here. */
export function StepRecords({ batch }: { readonly batch: Batch }) {
  const told = batch.screens.filter(isTold);
  if (told.length === 0) return null;
  return (
    <Card title={stepWords.recordTitle}>
      <div className={styles.air}>
        {told.map((screen) => (
          <section key={screen.screen} className={styles.air} aria-label={screen.what}>
            <h3>{screen.what}</h3>
            <WhipRounds batch={batch} screen={screen} />
            <StepPhotos batch={batch} screen={screen} />
          </section>
        ))}
      </div>
    </Card>
  );
}
