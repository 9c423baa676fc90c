import { labelWords, termWords } from '../../../words/index.ts';
import type { Editing } from '../../api/use-editing.ts';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { SheetDraft } from './sheet-draft.ts';

const { sheets: words, design } = labelWords;
const SHAPES = Object.entries(termWords.shape).map(([id, name]) => ({ id, name }));

type TextField = Exclude<keyof SheetDraft, 'isTakenOut' | 'shape' | 'name'>;
type Row = readonly [TextField, string, string?];

const PAGE: readonly Row[] = [
  ['pageWidthMm', words.pageWidth],
  ['pageHeightMm', words.pageHeight],
];
const LABEL: Readonly<Record<SheetDraft['shape'], readonly Row[]>> = {
  round: [['diameterMm', design.diameter]],
  rectangle: [
    ['widthMm', design.width],
    ['heightMm', design.height],
    ['cornerRadiusMm', design.corner],
  ],
};
const GRID: readonly Row[] = [
  ['leftMm', words.left],
  ['topMm', words.top],
  ['pitchAcrossMm', words.across, words.pitchHint],
  ['pitchDownMm', words.down, words.pitchHint],
];
const PRINTER: readonly Row[] = [
  ['across', words.offsetAcross, words.offsetHint],
  ['down', words.offsetDown, words.offsetHint],
];
const COUNTS: readonly Row[] = [
  ['columns', words.columns],
  ['rows', words.rows],
];

/** Each field with its label, for whoever compares two drafts. */
export const sheetFieldWords = [...PAGE, ...LABEL.round, ...LABEL.rectangle, ...COUNTS, ...GRID, ...PRINTER];

const BOXES: Readonly<Partial<Record<TextField, string>>> = {
  diameterMm: 'details.geometry.label',
  widthMm: 'details.geometry.label',
  heightMm: 'details.geometry.label',
  cornerRadiusMm: 'details.geometry.label',
  across: 'details.offsetMm',
  down: 'details.offsetMm',
};

interface Props {
  readonly editing: Pick<Editing<SheetDraft>, 'draft' | 'set'>;
}

/** What is measured on a sheet, once. */
export function SheetFields({ editing: { draft, set } }: Props) {
  const fieldsOf = (rows: readonly Row[], kind: 'decimal' | 'whole' = 'decimal') =>
    rows.map(([field, label, hint]) => (
      <Field
        key={field}
        label={label}
        where={`${BOXES[field] ?? 'details.geometry'}.${field}`}
        kind={kind}
        least={kind === 'whole' ? 1 : 0}
        unit={kind === 'decimal' ? 'mm' : undefined}
        value={draft[field]}
        onChange={set(field)}
        hint={hint}
      />
    ));
  return (
    <>
      <Field
        label={words.name}
        where="details.name"
        value={draft.name}
        onChange={set('name')}
        hint={words.nameHint}
      />
      <FieldGroup title={words.page}>
        <SideBySide>{fieldsOf(PAGE)}</SideBySide>
      </FieldGroup>
      <FieldGroup title={words.label}>
        <SideBySide>
          <Select
            label={design.shape}
            where="details.geometry.label.shape"
            value={draft.shape}
            onChange={(shape) => set('shape')(shape === 'round' ? shape : 'rectangle')}
            choices={SHAPES}
          />
          {fieldsOf(LABEL[draft.shape])}
        </SideBySide>
      </FieldGroup>
      <FieldGroup title={words.grid}>
        <SideBySide>
          {fieldsOf(COUNTS, 'whole')}
          {fieldsOf(GRID)}
        </SideBySide>
      </FieldGroup>
      <FieldGroup title={words.printer}>
        <SideBySide>{fieldsOf(PRINTER)}</SideBySide>
      </FieldGroup>
    </>
  );
}
