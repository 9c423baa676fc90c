import type { ReactNode } from 'react';
import { weighInWords as words } from '../../../words/index.ts';
import type { BenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Problems } from '../../parts/problems.tsx';
import { AllThereIs } from './all-there-is.tsx';
import type { Addition, Batch } from './batch.ts';
import { LotEmpty } from './lot-empty.tsx';
import styles from './mishap.module.css';
import { ResizeOffer } from './resize-offer.tsx';
import { SpillForm } from './spill-form.tsx';
import { SubstituteForm } from './substitute-form.tsx';
import type { WeighIn } from './use-weigh-in.ts';

export type MishapView = 'menu' | 'too-much' | 'lot-empty' | 'all-there-is' | 'spilt' | 'substitute';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly weigh: WeighIn;
  readonly view: MishapView;
  readonly onView: (view: MishapView | null) => void;
  readonly onDone: () => void;
  readonly resize: BenchWrite<'resizeBatch'>;
}

/** Where a weighing does not go as planned: the ordinary ways on, each with its record. */
export function MishapMenu({ batch, screen, weigh, view, onView, onDone, resize }: Props) {
  const close = (): void => {
    resize.forget();
    onView(null);
  };
  const { itemName } = screen;
  const last = screen.entries.at(-1);
  const title = {
    menu: words.menuTitle(itemName),
    'too-much': words.menuTitle(itemName),
    'lot-empty': words.lotEmptyTitle(itemName),
    'all-there-is': words.menuTitle(itemName),
    spilt: words.spiltTitle(itemName),
    substitute: words.substituteTitle(itemName),
  }[view];
  return (
    <Dialog isBench title={title} isOpen onClose={close} closeWord={words.keepOpen} isHeld={view === 'spilt'}>
      {view === 'menu' && <Choices weigh={weigh} screen={screen} onView={onView} />}
      {view === 'too-much' && <TooMuchIn batch={batch} screen={screen} resize={resize} onClose={close} />}
      {view === 'lot-empty' && (
        <LotEmpty batch={batch} screen={screen} weigh={weigh} said={weigh.saidNow()} onClose={close} />
      )}
      {view === 'all-there-is' && (
        <AllThereIs batch={batch} screen={screen} resize={resize} onClose={close} onDone={onDone} />
      )}
      {view === 'spilt' && (
        <SpillForm
          batch={batch}
          screen={screen}
          lotId={screen.done && last ? last.lotId : weigh.saidNow().lotId}
          grams={screen.done && last ? last.actualGrams : weigh.net}
          entryId={screen.done && last ? last.entryId : null}
          onClose={close}
        />
      )}
      {view === 'substitute' && (
        <SubstituteForm
          batch={batch}
          screen={screen}
          weigh={weigh}
          onClose={() => {
            close();
            onDone();
          }}
        />
      )}
    </Dialog>
  );
}

interface ChoicesProps {
  readonly weigh: WeighIn;
  readonly screen: Addition;
  readonly onView: (view: MishapView | null) => void;
}

function Choices({ weigh, screen, onView }: ChoicesProps) {
  const isTyped = weigh.verdict !== 'nothing';
  const isIn = screen.entries.length > 0;
  /** What is typed and off target is entered as on the big button: it is asked there what to do. */
  const enter = () => {
    onView(null);
    weigh.enter();
  };
  return (
    <div className={styles.choices}>
      {screen.done ? (
        <Choice word={words.tooMuch} soft={words.tooMuchSoft} onPress={() => onView('too-much')} />
      ) : (
        <>
          <Choice
            word={words.tooMuch}
            soft={isTyped ? words.tooMuchSoft : words.typeFirst}
            isDisabled={!isTyped}
            onPress={enter}
          />
          <Choice
            word={words.lotEmpty}
            soft={isTyped ? words.lotEmptySoft : words.typeFirst}
            isDisabled={!isTyped}
            onPress={() => onView('lot-empty')}
          />
          <Choice
            word={words.allThereIs}
            soft={isTyped || isIn ? words.allThereIsSoft : words.typeFirst}
            isDisabled={!isTyped && !isIn}
            onPress={isTyped ? enter : () => onView('all-there-is')}
          />
        </>
      )}
      <Choice word={words.spilt} soft={words.spiltSoft} onPress={() => onView('spilt')} />
      {!screen.done && (
        <Choice word={words.substitute} soft={words.substituteSoft} onPress={() => onView('substitute')} />
      )}
    </div>
  );
}

interface ChoiceProps {
  readonly word: string;
  readonly soft: ReactNode;
  readonly isDisabled?: boolean;
  readonly onPress: () => void;
}

const Choice = ({ word, soft, isDisabled = false, onPress }: ChoiceProps) => (
  <Button isBench isWide isDisabled={isDisabled} onPress={onPress}>
    <span>
      <strong>{word}</strong>
      <span className={styles.soft}>{soft}</span>
    </span>
  </Button>
);

/** It is in already: the batch is made as large as that. */
function TooMuchIn({
  batch,
  screen,
  resize,
  onClose,
}: {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly resize: BenchWrite<'resizeBatch'>;
  readonly onClose: () => void;
}) {
  return (
    <>
      {resize.problems.length > 0 && <p>{words.inNotResized}</p>}
      <Problems problems={resize.problems} />
      <ResizeOffer
        batchId={batch.id}
        position={screen.position}
        moreGrams="0"
        isBusy={resize.isBusy}
        onTake={({ upon }) =>
          void resize
            .write({ params: { id: batch.id }, body: { position: screen.position, upon } })
            .then((answer) => answer && onClose())
        }
      />
    </>
  );
}
