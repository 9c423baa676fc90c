import { tareWords, wayWords } from '../../../words/index.ts';
import { Field } from '../../parts/field.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import type { FillWay } from './run.ts';
import { TareTaker } from './tare-taker.tsx';

export interface WayDraft {
  readonly way: FillWay;
  readonly tare: string;
  readonly tares: readonly string[];
}

/** Asked about empty tins, and answered by going on all the same. */
export const TARE_QUESTIONS: readonly string[] = ['tare-odd', 'tare-unlike'];

interface Props {
  readonly draft: WayDraft;
  readonly onChange: (draft: WayDraft) => void;
  readonly knownTare: string | null;
  readonly tolerableErrorGrams: string | null;
}

const WAYS = Object.entries(wayWords.names).map(([id, name]) => ({ id, name }));

/** How tins are weighed; by the mean, ten empty tins first, or one weight that is known. */
export function WayFields({ draft, onChange, knownTare, tolerableErrorGrams }: Props) {
  return (
    <>
      <RadioChoice
        title={wayWords.title}
        choices={WAYS}
        value={draft.way}
        onChange={(way) => onChange({ ...draft, way: way as FillWay })}
        isBench
      />
      <p className="soft">{wayWords.hints[draft.way]}</p>
      {draft.way === 'mean' && (
        <>
          <TareTaker
            tares={draft.tares}
            onChange={(tares) => onChange({ ...draft, tares })}
            tolerableErrorGrams={tolerableErrorGrams}
          />
          {draft.tares.length < 2 && (
            <Field
              label={tareWords.orKnown}
              where="tareGrams"
              kind="decimal"
              unit="g"
              value={draft.tare}
              onChange={(tare) => onChange({ ...draft, tare })}
              hint={`${knownTare === null ? tareWords.notKnown : tareWords.known(knownTare)} ${tareWords.spreadUnknown}`}
              isOptional
              isBench
            />
          )}
        </>
      )}
    </>
  );
}
