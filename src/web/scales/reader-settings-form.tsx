import { useState } from 'react';
import { sayGrams, scaleWords } from '../../words/index.ts';
import { tell } from '../api/notice.ts';
import { Button } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';
import { Form } from '../parts/form.tsx';
import { Select } from '../parts/select.tsx';
import { SideBySide } from '../parts/side-by-side.tsx';
import { State } from '../parts/state.tsx';
import { decodeLine } from './decode-line.ts';
import {
  keepSettings,
  PRESETS,
  patternOf,
  type ReaderSettings,
  readerSettings,
  readSettings,
} from './reader-settings.ts';

const { reader: words } = scaleWords;
type Draft = Readonly<Record<keyof ReaderSettings, string>>;

const draftOf = (settings: ReaderSettings): Draft => ({
  baudRate: String(settings.baudRate),
  dataBits: String(settings.dataBits),
  parity: settings.parity,
  stopBits: String(settings.stopBits),
  numberFrom: settings.numberFrom === null ? '' : String(settings.numberFrom),
  numberLength: settings.numberLength === null ? '' : String(settings.numberLength),
  unit: settings.unit,
  stableMark: settings.stableMark,
  movingMark: settings.movingMark,
  settlesBy: settings.settlesBy,
});

const whole = (text: string): number | null => (text.trim() === '' ? null : Number(text));

const readDraft = (draft: Draft): ReaderSettings | undefined =>
  readSettings({
    ...draft,
    baudRate: whole(draft.baudRate),
    dataBits: whole(draft.dataBits),
    stopBits: whole(draft.stopBits),
    numberFrom: whole(draft.numberFrom),
    numberLength: whole(draft.numberLength),
  });

const namesOf = (names: Readonly<Record<string, string>>, only?: readonly string[]) =>
  Object.entries(names)
    .filter(([id]) => only === undefined || only.includes(id))
    .map(([id, name]) => ({ id, name }));

const UNITS = namesOf(words.units, ['line', 'g', 'kg', 'mg', 'oz', 'lb', 'ozt', 'ct', 'grain', 'dwt']);
const BITS = { data: namesOf({ 7: '7', 8: '8' }), stop: namesOf({ 1: '1', 2: '2' }) };
const NONE = [] as const;

/** How a serial scale writes, from its booklet; a line may be tried before anything is plugged in. */
export function ReaderSettingsForm() {
  const [draft, setDraft] = useState(() => draftOf(readerSettings.read()));
  const [line, setLine] = useState('');
  const set = (name: keyof Draft) => (value: string) => setDraft({ ...draft, [name]: value });
  const settings = readDraft(draft);
  const save = () => {
    if (!settings) return;
    keepSettings(settings);
    tell(words.saved);
  };
  const begin = (preset: string) => {
    const chosen = Object.entries(PRESETS).find(([name]) => name === preset)?.[1];
    if (chosen) setDraft(draftOf(chosen));
  };
  return (
    <Form label={words.settings} problems={NONE} onSubmit={save}>
      <p className="soft">{words.settingsAbout}</p>
      <Select
        label={words.preset}
        where="preset"
        value=""
        onChange={begin}
        choices={namesOf(words.presets)}
        none=""
      />
      <SideBySide>
        <Field
          label={words.baudRate}
          where="baudRate"
          kind="whole"
          value={draft.baudRate}
          onChange={set('baudRate')}
        />
        <Select
          label={words.dataBits}
          where="dataBits"
          value={draft.dataBits}
          onChange={set('dataBits')}
          choices={BITS.data}
        />
      </SideBySide>
      <SideBySide>
        <Select
          label={words.parity}
          where="parity"
          value={draft.parity}
          onChange={set('parity')}
          choices={namesOf(words.parities)}
        />
        <Select
          label={words.stopBits}
          where="stopBits"
          value={draft.stopBits}
          onChange={set('stopBits')}
          choices={BITS.stop}
        />
      </SideBySide>
      <SideBySide>
        <Field
          label={words.numberFrom}
          where="numberFrom"
          kind="whole"
          value={draft.numberFrom}
          onChange={set('numberFrom')}
          hint={words.numberFromHint}
          isOptional
        />
        <Field
          label={words.numberLength}
          where="numberLength"
          kind="whole"
          value={draft.numberLength}
          onChange={set('numberLength')}
          isOptional
        />
      </SideBySide>
      <Select label={words.unit} where="unit" value={draft.unit} onChange={set('unit')} choices={UNITS} />
      <Select
        label={words.settlesBy}
        where="settlesBy"
        value={draft.settlesBy}
        onChange={set('settlesBy')}
        choices={namesOf(words.settles)}
      />
      <SideBySide>
        <Field
          label={words.stableMark}
          where="stableMark"
          value={draft.stableMark}
          onChange={set('stableMark')}
          isOptional
        />
        <Field
          label={words.movingMark}
          where="movingMark"
          value={draft.movingMark}
          onChange={set('movingMark')}
          isOptional
        />
      </SideBySide>
      {!settings && <State kind="stop">{words.badNumber}</State>}
      <Field
        label={words.tryLine}
        where="line"
        value={line}
        onChange={setLine}
        hint={words.tryLineHint}
        isOptional
      />
      {settings && line.trim() !== '' && <TriedLine line={line} settings={settings} />}
      <div>
        <Button type="submit" isDisabled={!settings}>
          {scaleWords.reader.save}
        </Button>
      </div>
    </Form>
  );
}

function TriedLine({ line, settings }: { readonly line: string; readonly settings: ReaderSettings }) {
  const { grams, isStable, trouble } = decodeLine(line, patternOf(settings));
  return (
    <p aria-live="polite">
      {trouble ? (
        <State kind="watch">{words.trouble[trouble]}</State>
      ) : (
        <State kind="ready">{words.readAs(sayGrams(grams ?? '0'), isStable)}</State>
      )}
    </p>
  );
}
