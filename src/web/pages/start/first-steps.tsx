import type { workshop } from '../../../contract/index.ts';
import { firstStepWords as words } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { List } from '../../parts/list.tsx';
import { State } from '../../parts/state.tsx';
import styles from './first-steps.module.css';

/** Where each step is taken. */
const PAGES: Readonly<Record<workshop.FirstStep, string>> = {
  people: '/workshop',
  place: '/workshop',
  scale: '/workshop',
  address: '/workshop',
  material: '/materials/new',
  count: '/shelf/opening',
  formula: '/formulas/new',
  report: '/reports',
  product: '/products/new',
  order: '/orders/new',
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
              <LinkButton to={PAGES[step]} isAct={step === next}>
                {words.step[step].act}
              </LinkButton>
            )}
          </div>
        )}
      </List>
    </Card>
  );
}
