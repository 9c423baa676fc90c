import { sayDecimal, sayGrams, stepWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { NumberPad } from './number-pad.tsx';
import type { AirTin } from './read-air.ts';
import { readCup } from './remembered-cup.ts';
import styles from './step.module.css';
import type { WeighingDraft } from './step-weighing.ts';

interface Props {
  readonly draft: WeighingDraft;
  readonly set: (name: keyof WeighingDraft) => (value: string) => void;
  /** Takes over volume and tare of what is known. */
  readonly take: (known: { readonly cupMl: string; readonly tare: string; readonly tinOf: string }) => void;
  readonly tins: readonly AirTin[];
  readonly isBusy: boolean;
  /** What its problems are found at: `weighed`, or one of several cups. */
  readonly at: string;
}

const { cup: words } = stepWords;

/** A cup, full and levelled; what this tablet or the shelf knows of it is a tap away. */
export function CupPad({ draft, set, take, tins, isBusy, at }: Props) {
  const own = readCup();
  const known = tins.filter((tin) => tin.tareGrams !== null);
  const where = (field: string) => `${at}.${field}`;
  return (
    <div className={styles.pad}>
      {(own || known.length > 0) && (
        <div className={styles.loadsRow}>
          {own && (
            <Button isBench onPress={() => take({ ...own, tinOf: '' })}>
              {words.takeOwn(sayDecimal(own.cupMl), sayGrams(own.tare))}
            </Button>
          )}
          {known.map((tin) => (
            <Button
              key={tin.productId}
              isBench
              onPress={() => take({ cupMl: tin.brimMl, tare: tin.tareGrams ?? '', tinOf: tin.productName })}
            >
              {words.takeTin(tin.productName, sayDecimal(tin.brimMl))}
            </Button>
          ))}
        </div>
      )}
      <NumberPad
        fields={[
          { name: 'gross', label: words.gross, where: where('grossGrams'), unit: 'g' },
          { name: 'tare', label: words.tare, where: where('tareGrams'), unit: 'g' },
          { name: 'cupMl', label: words.holds, where: where('cupMl'), unit: 'ml' },
          {
            name: 'unwhipped',
            label: words.before,
            where: where('unwhippedGrams'),
            unit: 'g',
            hint: words.beforeHint,
          },
        ]}
        values={draft}
        set={set}
        isBusy={isBusy}
      />
    </div>
  );
}
