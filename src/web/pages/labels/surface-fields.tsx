import { labelWords } from '../../../words/index.ts';
import { Field } from '../../parts/field.tsx';
import { Select } from '../../parts/select.tsx';
import { SideBySide } from '../../parts/side-by-side.tsx';
import type { SurfaceDraft } from './design-draft.ts';

interface Props {
  readonly where: string;
  readonly value: SurfaceDraft;
  readonly onChange: (surface: SurfaceDraft) => void;
}

const { design: words } = labelWords;
const SHAPES = Object.entries(words.shapes).map(([id, name]) => ({ id, name }));
const MEASURES = {
  round: [['diameterMm', words.diameter]],
  rectangle: [
    ['widthMm', words.width],
    ['heightMm', words.height],
    ['cornerRadiusMm', words.corner],
  ],
  wrap: [
    ['circumferenceMm', words.circumference],
    ['heightMm', words.height],
    ['overlapMm', words.overlap],
  ],
} as const;

/** Shape and measures of what is stuck on, as a ruler says. */
export const SurfaceFields = ({ where, value, onChange }: Props) => (
  <SideBySide>
    <Select
      label={words.shape}
      where={`${where}.shape`}
      value={value.shape}
      onChange={(shape) => onChange({ ...value, shape: shape as SurfaceDraft['shape'] })}
      choices={SHAPES}
    />
    {MEASURES[value.shape].map(([field, label]) => (
      <Field
        key={field}
        label={label}
        where={`${where}.${field}`}
        kind="decimal"
        unit="mm"
        value={value[field]}
        onChange={(typed) => onChange({ ...value, [field]: typed })}
      />
    ))}
  </SideBySide>
);
