import { formulaWords } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import styles from './recipe.module.css';
import { type DraftStep, emptyStep, type RecipeDraft, type StepKind } from './recipe-draft.ts';

interface Props {
  readonly draft: RecipeDraft;
  readonly onChange: (steps: readonly DraftStep[]) => void;
}

const KINDS = Object.entries(formulaWords.stepKinds).map(([id, name]) => ({ id, name }));

/** What is done with the hands, in the order of making. */
export function RecipeSteps({ draft, onChange }: Props) {
  const { steps } = draft;
  const change = (key: string, part: Partial<DraftStep>) =>
    onChange(steps.map((step) => (step.key === key ? { ...step, ...part } : step)));
  return (
    <FieldGroup title={formulaWords.stepsTitle}>
      {steps.map((step, index) => {
        const where = (field: string) => `details.steps[${index}].${field}`;
        const set = (field: keyof DraftStep) => (value: string) => change(step.key, { [field]: value });
        return (
          <fieldset key={step.key} className={styles.step} aria-label={formulaWords.stepOf(index + 1)}>
            <Field
              label={formulaWords.stage}
              where={where('stage')}
              value={step.stage}
              onChange={set('stage')}
            />
            <Select
              label={formulaWords.stepKind}
              where={where('kind')}
              value={step.kind}
              onChange={(kind) => change(step.key, { kind: kind as StepKind })}
              choices={KINDS}
            />
            <div className={styles.wide}>
              <Field
                label={formulaWords.stepWhat}
                where={where('what')}
                value={step.what}
                onChange={set('what')}
              />
            </div>
            <Field
              label={formulaWords.from}
              where={where('leastCelsius')}
              kind="decimal"
              unit="°C"
              value={step.leastCelsius}
              onChange={set('leastCelsius')}
              isOptional
            />
            <Field
              label={formulaWords.to}
              where={where('mostCelsius')}
              kind="decimal"
              unit="°C"
              value={step.mostCelsius}
              onChange={set('mostCelsius')}
              isOptional
            />
            <Field
              label={formulaWords.minutes}
              where={where('minutes')}
              kind="decimal"
              unit="min"
              value={step.minutes}
              onChange={set('minutes')}
              isOptional
            />
            {step.kind === 'whip' && <WhipFields step={step} where={where} set={set} />}
            {step.kind === 'set' && <SetFields step={step} where={where} set={set} />}
            <div className={styles.wide}>
              <Field
                label={formulaWords.caution}
                where={where('caution')}
                value={step.caution}
                onChange={set('caution')}
                isOptional
              />
            </div>
            <Button
              label={formulaWords.takeOutStep(index + 1)}
              onPress={() => onChange(steps.filter((one) => one.key !== step.key))}
            >
              −
            </Button>
          </fieldset>
        );
      })}
      <div>
        <Button
          onPress={() =>
            onChange([...steps, emptyStep(steps.at(-1)?.stage ?? draft.lines.at(-1)?.stage ?? 'Melt')])
          }
        >
          {formulaWords.addStep}
        </Button>
      </div>
    </FieldGroup>
  );
}

interface KindProps {
  readonly step: DraftStep;
  readonly where: (field: string) => string;
  readonly set: (field: keyof DraftStep) => (value: string) => void;
}

/** Rounds, each looked at, and how much it is expected to grow. */
const WhipFields = ({ step, where, set }: KindProps) => (
  <>
    <Field
      label={formulaWords.roundMinutes}
      where={where('roundMinutes')}
      kind="decimal"
      unit="min"
      value={step.roundMinutes}
      onChange={set('roundMinutes')}
      hint={formulaWords.roundMinutesHint}
      isOptional
    />
    <Field
      label={formulaWords.rounds}
      where={where('rounds')}
      kind="whole"
      least={1}
      value={step.rounds}
      onChange={set('rounds')}
      isOptional
    />
    <Field
      label={formulaWords.growsPercent}
      where={where('growsPercent')}
      kind="decimal"
      unit="%"
      value={step.growsPercent}
      onChange={set('growsPercent')}
      hint={formulaWords.growsPercentHint}
      isOptional
    />
  </>
);

/** A range: nobody knows to the hour when fat is firm. */
const SetFields = ({ step, where, set }: KindProps) => (
  <>
    <Field
      label={formulaWords.leastHours}
      where={where('leastHours')}
      kind="decimal"
      unit="h"
      value={step.leastHours}
      onChange={set('leastHours')}
      isOptional
    />
    <Field
      label={formulaWords.mostHours}
      where={where('mostHours')}
      kind="decimal"
      unit="h"
      value={step.mostHours}
      onChange={set('mostHours')}
      isOptional
    />
  </>
);
