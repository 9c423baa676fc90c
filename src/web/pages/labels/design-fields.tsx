import { labelWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Button } from '../../parts/button.tsx';
import { CheckBox } from '../../parts/check-box.tsx';
import { CheckBoxes } from '../../parts/check-boxes.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { Sentence } from '../../parts/sentence.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { type DesignDraft, newPiece } from './design-draft.ts';
import type { LabelDesign, LabelSheet } from './label.ts';
import { PieceFields } from './piece-fields.tsx';
import { SurfaceFields } from './surface-fields.tsx';

interface Props {
  readonly productId: string;
  readonly editing: Pick<Editing<DesignDraft>, 'draft' | 'set'>;
  readonly sheets: readonly LabelSheet[];
  readonly eMark: LabelDesign['eMark'];
}

const { design: words } = labelWords;
const choicesOf = (named: Readonly<Record<string, string>>) =>
  Object.entries(named).map(([id, name]) => ({ id, name }));
const LANGUAGES = choicesOf(words.languageNames);
const MOVES = choicesOf(words.movesChoices);
const POINTERS = choicesOf(words.pointers);
const SIGNS = choicesOf(words.durabilitySigns);
/** More than any tin has room for (as the contract has it). */
const MOST_PIECES = 6;

export function DesignFields({ productId, editing: { draft, set }, sheets, eMark }: Props) {
  const { pieces } = draft;
  const taken = pieces.map(({ id }) => id);
  return (
    <>
      <CheckBoxes
        title={words.languages}
        choices={LANGUAGES}
        chosen={draft.languages}
        onChange={(chosen) => {
          // In the order in which they were ticked, which is the order on the label; one stays.
          if (chosen.length > 0) set('languages')(chosen as DesignDraft['languages']);
        }}
      />
      {pieces.map((piece, index) => (
        <PieceFields
          key={piece.id}
          productId={productId}
          piece={piece}
          index={index}
          sheets={sheets}
          onChange={(next) => set('pieces')(pieces.map((one) => (one.id === piece.id ? next : one)))}
          onRemove={
            pieces.length > 1 ? () => set('pieces')(pieces.filter((one) => one.id !== piece.id)) : undefined
          }
        />
      ))}
      {pieces.length < MOST_PIECES && (
        <div>
          <Button
            onPress={() =>
              set('pieces')([...pieces, newPiece(taken.includes('sticker') ? 'whole' : 'sticker', taken)])
            }
          >
            {words.add}
          </Button>
        </div>
      )}
      <FieldGroup title={words.leaflet}>
        <RadioChoice
          title={words.moves}
          choices={MOVES}
          value={draft.moves}
          onChange={(moves) => set('moves')(moves as DesignDraft['moves'])}
        />
        {draft.moves !== 'none' && (
          <>
            <RadioChoice
              title={words.pointer}
              choices={POINTERS}
              value={draft.pointer}
              onChange={(pointer) => set('pointer')(pointer as DesignDraft['pointer'])}
            />
            <SurfaceFields
              where="details.leaflet.surface"
              value={draft.leafletSurface}
              onChange={set('leafletSurface')}
            />
          </>
        )}
      </FieldGroup>
      <FieldGroup title={words.more}>
        <SideBySide>
          <Select
            label={words.durabilitySign}
            where="details.durabilitySign"
            value={draft.durabilitySign}
            onChange={(sign) => set('durabilitySign')(sign as DesignDraft['durabilitySign'])}
            choices={SIGNS}
          />
          <Field
            label={words.spare}
            where="details.spare"
            kind="whole"
            value={draft.spare}
            onChange={set('spare')}
            hint={words.spareHint}
          />
        </SideBySide>
        {(eMark.isChoice || draft.hasEMark) && (
          <CheckBox isChecked={draft.hasEMark} onChange={set('hasEMark')}>
            {words.eMark}
          </CheckBox>
        )}
        <p className="soft">
          {!eMark.isChoice && `${words.noEMark} `}
          <Sentence saying={eMark.says} />
        </p>
      </FieldGroup>
    </>
  );
}
