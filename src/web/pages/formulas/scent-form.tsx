import type { Problem } from '../../../core/problem.ts';
import { sayProblem, scentWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Card } from '../../parts/card.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { State } from '../../parts/state.tsx';
import styles from './check.module.css';
import type { Formula } from './formula.ts';
import type { OilDraft, ScentDraft } from './scent-draft.ts';

interface Props {
  readonly lines: NonNullable<Formula['latest']>['lines'];
  readonly draft: ScentDraft;
  /** What keeps it from being worked out. */
  readonly problems: readonly Problem[];
  readonly onChange: (draft: ScentDraft) => void;
}

const WAYS = [
  { id: 'fixed', name: scentWords.fixed },
  { id: 'free', name: scentWords.free },
];

/** Which lines are scent, in which proportions or ranges, and on what it is weighed. */
export function ScentForm({ lines, draft, problems, onChange }: Props) {
  const { data: workshop } = useRead('getWorkshop');
  const wrongAt = (where: string) => problems.find((problem) => problem.where === where);
  const change = (part: Partial<ScentDraft>) => onChange({ ...draft, ...part });
  const rows = draft.oils.map((oil, place) => ({
    oil,
    place,
    key: `${place} ${lines[place]?.itemId}`,
    name: lines[place]?.itemName ?? '',
  }));
  const changeOil = (place: number, part: Partial<OilDraft>) =>
    change({ oils: draft.oils.map((oil, index) => (index === place ? { ...oil, ...part } : oil)) });
  return (
    <Card title={scentWords.which}>
      <RadioChoice
        title={scentWords.how}
        choices={WAYS}
        value={draft.isFree ? 'free' : 'fixed'}
        onChange={(id) => change({ isFree: id === 'free' })}
      />
      {draft.isFree && <p className="soft small">{scentWords.rangeHint}</p>}
      <div className={styles.tried}>
        {rows.map(({ key, name, oil, place }) => (
          <OilFields
            key={key}
            name={name}
            place={place}
            oil={oil}
            isFree={draft.isFree}
            wrongAt={wrongAt}
            onChange={(part) => changeOil(place, part)}
          />
        ))}
      </div>
      {problems
        .filter(({ where }) => !isOfField(where))
        .map((found) => (
          <p key={found.code} role="status">
            <State kind="watch">
              {sayProblem(found).says} {sayProblem(found).mend}
            </State>
          </p>
        ))}
      <Field
        label={scentWords.ownMaximum}
        where="mostPercent"
        wrong={wrongAt('mostPercent')}
        kind="decimal"
        unit="%"
        value={draft.mostPercent}
        onChange={(mostPercent) => change({ mostPercent })}
        isOptional
      />
      <SideBySide>
        <Field
          label={scentWords.batch}
          where="batchGrams"
          wrong={wrongAt('batchGrams')}
          kind="decimal"
          unit="g"
          value={draft.batchGrams}
          onChange={(batchGrams) => change({ batchGrams })}
          isOptional
        />
        <Select
          label={scentWords.scale}
          where="scaleId"
          value={draft.scaleId}
          onChange={(scaleId) => change({ scaleId })}
          choices={workshop?.scales ?? []}
          none={scentWords.noScale}
        />
      </SideBySide>
      <p className="soft small">{scentWords.batchHint}</p>
    </Card>
  );
}

/** What is wrong with a figure stands at its field; what is wrong with several together, below them. */
const isOfField = (where: string): boolean => /^oils\[|^(mostPercent|batchGrams)$/.test(where);

interface OilProps {
  readonly name: string;
  readonly place: number;
  readonly oil: OilDraft;
  readonly isFree: boolean;
  readonly wrongAt: (where: string) => Problem | undefined;
  readonly onChange: (part: Partial<OilDraft>) => void;
}

const OilFields = ({ name, place, oil, isFree, wrongAt, onChange }: OilProps) => (
  <div>
    <CheckBox isChecked={oil.isScent} onChange={(isScent) => onChange({ isScent })}>
      {scentWords.isScent(name)}
    </CheckBox>
    {oil.isScent && !isFree && (
      <Field
        label={scentWords.part(name)}
        where={`oils[${place}].part`}
        wrong={wrongAt(`oils[${place}].part`)}
        kind="decimal"
        value={oil.part}
        onChange={(part) => onChange({ part })}
      />
    )}
    {oil.isScent && isFree && (
      <SideBySide>
        <Field
          label={scentWords.leastOf(name)}
          where={`oils[${place}].least`}
          wrong={wrongAt(`oils[${place}].least`)}
          kind="decimal"
          unit="%"
          value={oil.least}
          onChange={(least) => onChange({ least })}
          isOptional
        />
        <Field
          label={scentWords.mostOf(name)}
          where={`oils[${place}].most`}
          wrong={wrongAt(`oils[${place}].most`)}
          kind="decimal"
          unit="%"
          value={oil.most}
          onChange={(most) => onChange({ most })}
          isOptional
        />
      </SideBySide>
    )}
  </div>
);
