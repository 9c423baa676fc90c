import { makingWords, termWords } from '../../../words/index.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { CheckBox } from '../../parts/check-box.tsx';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { marketsOf, type PlanWish, productsOf, wishFor } from './plan-wish.ts';

interface Props {
  readonly wish: PlanWish;
  readonly onChange: (wish: PlanWish) => void;
  readonly formulas: AnswerOf<'listFormulas'>;
  readonly products: AnswerOf<'listProducts'>;
}

const MARKETS = Object.entries(termWords.market).map(([id, name]) => ({ id, name }));
const PURPOSES = Object.entries(makingWords.purposes).map(([id, name]) => ({ id, name }));
const WAYS = [
  { id: 'tins', name: makingWords.byTins },
  { id: 'grams', name: makingWords.byGrams },
];

export function PlanForm({ wish, onChange, formulas, products }: Props) {
  const own = productsOf(products, wish.formulaId);
  const change = (part: Partial<PlanWish>) => onChange({ ...wish, ...part });
  return (
    <Form label={makingWords.planTitle} problems={[]} onSubmit={() => undefined}>
      <SideBySide>
        <Select
          label={makingWords.what}
          where="formula"
          value={wish.formulaId}
          onChange={(formulaId) => onChange(wishFor(formulaId, formulas, products))}
          choices={formulas.filter((formula) => formula.latest)}
        />
        {own.length > 0 && (
          <RadioChoice
            title={makingWords.how}
            choices={WAYS}
            value={wish.by}
            onChange={(by) => change({ by: by as PlanWish['by'] })}
          />
        )}
      </SideBySide>
      {wish.by === 'grams' ? (
        <SideBySide>
          <Field
            label={makingWords.grams}
            where="size.grams"
            kind="decimal"
            unit="g"
            value={wish.grams}
            onChange={(grams) => change({ grams })}
            isBench
          />
        </SideBySide>
      ) : (
        <TinFields wish={wish} change={change} own={own} />
      )}
      <SideBySide>
        <RadioChoice
          title={makingWords.purposeTitle}
          choices={PURPOSES}
          value={wish.purpose}
          onChange={(purpose) => change({ purpose: purpose as PlanWish['purpose'] })}
        />
        <CheckBoxes
          title={makingWords.markets}
          choices={MARKETS}
          chosen={marketsOf(wish, formulas, products)}
          onChange={(markets) => change({ markets })}
        />
      </SideBySide>
    </Form>
  );
}

interface TinProps {
  readonly wish: PlanWish;
  readonly change: (part: Partial<PlanWish>) => void;
  readonly own: AnswerOf<'listProducts'>;
}

const TinFields = ({ wish, change, own }: TinProps) => (
  <>
    <SideBySide>
      {own.map((product) => (
        <Field
          key={product.id}
          label={makingWords.tinsOf(product.details.name)}
          where={`units.${product.id}`}
          kind="whole"
          value={wish.units[product.id] ?? ''}
          onChange={(typed) => change({ units: { ...wish.units, [product.id]: typed } })}
          isBench
        />
      ))}
    </SideBySide>
    <CheckBox isChecked={wish.keepsSample} onChange={(keepsSample) => change({ keepsSample })}>
      {makingWords.keepSample}
    </CheckBox>
    <Field
      label={makingWords.lossPercent}
      where="size.lossPercent"
      kind="decimal"
      unit="%"
      value={wish.lossPercent}
      onChange={(lossPercent) => change({ lossPercent })}
      hint={makingWords.lossHint}
      isOptional
    />
    {wish.keepsSample ? (
      <SideBySide>
        <Field
          label={makingWords.retained}
          where="size.retained.grams"
          kind="decimal"
          unit="g"
          value={wish.sampleGrams}
          onChange={(sampleGrams) => change({ sampleGrams })}
        />
      </SideBySide>
    ) : (
      <Field
        label={makingWords.declineWhy}
        where="size.retained.reason"
        value={wish.declineWhy}
        onChange={(declineWhy) => change({ declineWhy })}
      />
    )}
  </>
);
