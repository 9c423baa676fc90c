import { useState } from 'react';
import { makingWords, sayGrams, weighInWords as words } from '../../../words/index.ts';
import { useBenchWrite } from '../../api/use-bench-write.ts';
import { Button } from '../../parts/button.tsx';
import type { Addition, Batch } from './batch.ts';
import styles from './bench.module.css';
import { EntriesSoFar } from './entries-so-far.tsx';
import { MishapMenu, type MishapView } from './mishap-menu.tsx';
import { SpiltSoFar } from './spilt-so-far.tsx';
import { StrikeAddition } from './strike-addition.tsx';
import { StruckEntries } from './struck-entries.tsx';
import { useWeighIn } from './use-weigh-in.ts';
import { WeighIn } from './weigh-in.tsx';
import { WeighWhere } from './weigh-where.tsx';

interface Props {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly doneWord: string;
  readonly onDone: () => void;
  readonly all: number;
}

/** One addition: weighed in, or what is in of it; and the ways on where it does not go as planned. */
export function AdditionScreen({ batch, screen, doneWord, onDone, all }: Props) {
  const weigh = useWeighIn(batch, screen, onDone);
  const resize = useBenchWrite('resizeBatch');
  const [view, setView] = useState<MishapView | null>(null);
  // While an entry is on its way it stands in the batch already; until it is answered the weighing stays in view.
  const [steady, setSteady] = useState(screen);
  if (!weigh.save.isBusy && steady !== screen) setSteady(screen);
  return (
    <>
      {steady.done ? (
        <DoneAddition batch={batch} screen={screen} all={all} onMishap={() => setView('menu')} />
      ) : (
        <WeighIn
          batch={batch}
          screen={steady}
          weigh={weigh}
          doneWord={doneWord}
          where={
            <WeighWhere
              batch={batch}
              screen={screen}
              all={all}
              scaleName={weigh.scale?.name ?? screen.scaleName}
              lotNumber={weigh.lotNumber}
            />
          }
          onMishap={setView}
          resize={resize}
        />
      )}
      {view && (
        <MishapMenu
          batch={batch}
          screen={screen}
          weigh={weigh}
          view={view}
          onView={setView}
          resize={resize}
          onDone={onDone}
        />
      )}
    </>
  );
}

interface DoneProps {
  readonly batch: Batch;
  readonly screen: Addition;
  readonly all: number;
  readonly onMishap: () => void;
}

function DoneAddition({ batch, screen, all, onMishap }: DoneProps) {
  const { done, entries } = screen;
  return (
    <div className={styles.screen}>
      <WeighWhere
        batch={batch}
        screen={screen}
        all={all}
        scaleName={entries.at(-1)?.scaleName ?? screen.scaleName}
        lotNumber={entries.at(-1)?.lotNumber || screen.lotNumber}
      />
      {done && <p>{makingWords.weighed(sayGrams(done.actualGrams), done.by)}</p>}
      {entries.length > 1 && <EntriesSoFar batch={batch} screen={screen} />}
      {done && entries.length <= 1 && <StrikeAddition batch={batch} entryId={done.entryId} />}
      <div>
        <Button isBench onPress={onMishap}>
          {words.menu}
        </Button>
      </div>
      <SpiltSoFar batch={batch} screen={screen.screen} />
      <StruckEntries batch={batch} screen={screen.screen} />
    </div>
  );
}
