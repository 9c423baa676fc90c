import { askAboutTares, findTareSpread } from '../../../core/filling/index.ts';
import { toText } from '../../../core/quantity/index.ts';
import { aimWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { readWhole } from '../../show/read-whole.ts';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import { AimAdvice } from './aim-advice.tsx';
import type { WayDraft } from './way-fields.tsx';

interface Props {
  readonly batchId: string;
  readonly productId: string;
  readonly scaleId: string;
  readonly wanted: string;
  readonly way: WayDraft;
  readonly aim: string;
  readonly onChange: (aim: string) => void;
}

/** What to aim at, told before the first tin; whoever knows better sets something else. */
export function StartAim({ batchId, productId, scaleId, wanted, way, aim, onChange }: Props) {
  const count = readWhole(wanted, 'wanted', 1);
  // Of empty tins that are asked about no aim is worked out: a slip would make nonsense of it.
  const isAsked = way.way === 'mean' && askAboutTares(way.tares) !== null;
  const found = way.way === 'mean' && way.tares.length > 1 && !isAsked ? findTareSpread(way.tares) : null;
  const spread = found?.ok ? found.value : null;
  const tare = spread ? toText(spread.meanGrams.toDecimalPlaces(6)) : typedDecimalOrNull(way.tare);
  const read = useRead(
    'adviseAim',
    {
      params: { id: batchId },
      query: {
        productId,
        scaleId,
        wanted: count.ok ? String(count.value) : '1',
        tareGrams: way.way === 'net' ? '0' : (tare ?? ''),
        allowanceGrams: spread ? toText(spread.allowanceGrams) : '',
        tareSpreadGrams: spread ? toText(spread.standardDeviationGrams.toDecimalPlaces(6)) : '',
      },
    },
    { isWanted: scaleId !== '' && !isAsked, keepsLast: true },
  );
  if (!read.data || isAsked) return null;
  const taken = read.data.productAimGrams ?? read.data.aimGrams;
  return (
    <Card title={aimWords.title}>
      <AimAdvice advice={read.data} wanted={count.ok ? count.value : 1} />
      <Field
        label={aimWords.field}
        where="aimGrams"
        kind="decimal"
        unit="g"
        value={aim}
        onChange={onChange}
        hint={aimWords.fieldHint(taken)}
        isOptional
        isBench
      />
    </Card>
  );
}
