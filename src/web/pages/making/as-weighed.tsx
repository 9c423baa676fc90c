import { makingWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { State } from '../../parts/state.tsx';
import { TextLink } from '../../parts/text-link.tsx';
import type { Addition, Batch } from './batch.ts';
import styles from './bench.module.css';
import { bandVerdict } from './weight-verdict.ts';

interface Props {
  readonly batch: Batch;
  /** At the bench: leads to the weighing that may be struck. */
  readonly onShow?: (screen: number) => void;
}

/**
 * What limits, report or label no longer allow of the batch as it was weighed in: shown until it is resolved. In a trial,
 * which is never sold, nothing has to be: one line says it, and the rest is folded.
 */
export function AsWeighed({ batch, onShow }: Props) {
  if (!batch.asWeighed) return null;
  if (batch.purpose === 'trial')
    return (
      <Disclosure title={makingWords.overHeld.trial}>
        {() => <Told batch={batch} {...(onShow && { onShow })} />}
      </Disclosure>
    );
  return (
    <div className={styles.wrong}>
      <State kind="stop">{makingWords.overHeld[batch.purpose]}</State>
      <Told batch={batch} {...(onShow && { onShow })} />
    </div>
  );
}

const Told = ({ batch, onShow }: Props) => (
  <>
    <p>
      {batch.asWeighed && <Sentence saying={batch.asWeighed} />}{' '}
      {batch.state === 'making' ? makingWords.overMend : batch.purpose === 'sale' && makingWords.overMade}
    </p>
    {batch.state === 'making' && onShow && (
      <FormActions>
        {listOff(batch).map((screen) => (
          <Button key={screen.screen} isBench onPress={() => onShow(batch.screens.indexOf(screen))}>
            {makingWords.backToStrike(screen.itemName)}
          </Button>
        ))}
      </FormActions>
    )}
    {batch.state === 'made' && batch.purpose === 'sale' && (
      <p>
        <TextLink to={`/formulas/${batch.formulaId}/worksheet`}>{makingWords.worksheet}</TextLink>
      </p>
    )}
  </>
);

/** What lies outside its band; where everything lies inside, whatever was weighed in may be it. */
function listOff({ screens }: Batch): readonly Addition[] {
  const done = screens
    .filter((screen) => screen.kind === 'addition')
    .filter((screen) => screen.done !== null);
  const off = done.filter((screen) => bandVerdict(screen.done?.actualGrams ?? '', screen) !== 'inside');
  return off.length > 0 ? off : done;
}
