import type { workshop } from '../../../contract/index.ts';
import { firstStepWords as words } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { State } from '../../parts/state.tsx';
import styles from './first-steps.module.css';

/** Where each step is taken. */
const PAGES: Readonly<Record<workshop.FirstStep, { readonly to: string; readonly hash?: string }>> = {
  people: { to: '/workshop', hash: 'people' },
  place: { to: '/workshop', hash: 'places' },
  scale: { to: '/workshop', hash: 'scales' },
  address: { to: '/workshop', hash: 'details' },
  material: { to: '/materials/new' },
  count: { to: '/shelf/opening' },
  formula: { to: '/formulas/new' },
  report: { to: '/reports' },
  product: { to: '/products/new' },
  order: { to: '/orders/new' },
};

/** The whole way to the first batch, with what is done; gone once everything is. */
export function FirstSteps() {
  const steps = useRead('getFirstSteps').data ?? [];
  const next = steps.find(({ isDone }) => !isDone)?.step;
  if (next === undefined) return null;
  const done = steps.filter(({ isDone }) => isDone).length;
  return (
    <Card title={words.title} aside={words.count(done, steps.length)} isFlush>
      <List rows={steps} keyOf={({ step }) => step} empty="">
        {({ step, isDone }) => (
          <div className={styles.step}>
            <div className={styles.words}>
              <span className={styles.name}>
                <strong>{words.step[step].name}</strong>
                <State kind={isDone ? 'ready' : step === next ? 'going' : 'plain'}>
                  {isDone ? words.done : step === next ? words.next : words.toDo}
                </State>
              </span>
              {!isDone && <span className="soft">{words.step[step].why}</span>}
            </div>
            {!isDone && (
              <LinkButton {...PAGES[step]} isAct={step === next}>
                {words.step[step].act}
              </LinkButton>
            )}
          </div>
        )}
      </List>
    </Card>
  );
}
