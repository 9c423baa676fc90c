import { SMALLEST_X_HEIGHT_MM } from '../../../print/layout/index.ts';
import { labelWords, sayNumber } from '../../../words/index.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import { ArtworkField } from './artwork-field.tsx';
import type { PieceDraft } from './design-draft.ts';
import { ElementFields } from './element-fields.tsx';
import styles from './label.module.css';
import type { LabelSheet } from './label.ts';
import { SurfaceFields } from './surface-fields.tsx';

interface Props {
  readonly productId: string;
  readonly piece: PieceDraft;
  readonly index: number;
  readonly sheets: readonly LabelSheet[];
  readonly onChange: (piece: PieceDraft) => void;
  readonly onRemove?: (() => void) | undefined;
}

const { design: words } = labelWords;
const ROLES = Object.entries(labelWords.rolesSaid).map(([id, name]) => ({ id, name }));
const CODES = Object.entries(words.codes).map(([id, name]) => ({ id, name }));

/** One label of a product: what it carries, where it is stuck, on what it is printed. */
export function PieceFields({ productId, piece, index, sheets, onChange, onRemove }: Props) {
  const where = `details.pieces[${index}]`;
  const name = `${labelWords.roles[piece.role]} (${piece.id})`;
  return (
    <div className={styles.fields}>
      <FieldGroup title={labelWords.roles[piece.role]}>
        <Select
          label={words.role}
          where={`${where}.role`}
          value={piece.role}
          onChange={(role) => onChange({ ...piece, role: role as PieceDraft['role'] })}
          choices={ROLES}
        />
        <SurfaceFields
          where={`${where}.surface`}
          value={piece.surface}
          onChange={(surface) => onChange({ ...piece, surface })}
        />
        <SideBySide>
          <Select
            label={words.code}
            where={`${where}.code`}
            value={piece.code}
            onChange={(code) => onChange({ ...piece, code: code as PieceDraft['code'] })}
            choices={CODES}
          />
          <Select
            label={words.printedOn}
            where={`${where}.sheetId`}
            value={piece.sheetId}
            onChange={(sheetId) => onChange({ ...piece, sheetId })}
            choices={sheets
              .filter(({ id, details }) => !details.isTakenOut || id === piece.sheetId)
              .map(({ id, details }) => ({ id, name: details.name }))}
            none={labelWords.plainPaper}
          />
        </SideBySide>
        <ElementFields piece={piece} onChange={(elements) => onChange({ ...piece, elements })} />
        <SideBySide>
          <Field
            label={words.leastLetters}
            where={`${where}.letters.leastMm`}
            kind="decimal"
            unit="mm"
            value={piece.leastMm}
            onChange={(leastMm) => onChange({ ...piece, leastMm })}
            hint={words.leastLettersHint(sayNumber(SMALLEST_X_HEIGHT_MM))}
            isOptional
          />
          <Field
            label={words.mostLetters}
            where={`${where}.letters.mostMm`}
            kind="decimal"
            unit="mm"
            value={piece.mostMm}
            onChange={(mostMm) => onChange({ ...piece, mostMm })}
            hint={words.mostLettersHint}
            isOptional
          />
        </SideBySide>
        <ArtworkField
          productId={productId}
          name={name}
          where={`${where}.artwork`}
          value={piece.artwork}
          onChange={(artwork) => onChange({ ...piece, artwork })}
        />
        {onRemove && (
          <div>
            <Button onPress={onRemove} label={`${words.remove}: ${name}`}>
              {words.remove}
            </Button>
          </div>
        )}
      </FieldGroup>
    </div>
  );
}
