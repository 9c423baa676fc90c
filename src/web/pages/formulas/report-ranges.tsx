import { reportWords } from '../../../words/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import styles from './recipe.module.css';

type Ranges = BodyOf<'saveReport'>['details']['ranges'];

interface Props {
  readonly ranges: Ranges;
  readonly onChange: (ranges: Ranges) => void;
}

/** How much of each material the report allows in the finished product. */
export function ReportRanges({ ranges, onChange }: Props) {
  const materials = (useRead('listMaterials').data ?? []).filter(
    (material) => material.details.kind === 'ingredient',
  );
  const choices = materials.map((material) => ({ id: material.id, name: material.details.name }));
  const change = (index: number, part: Partial<Ranges[number]>) =>
    onChange(ranges.map((row, at) => (at === index ? { ...row, ...part } : row)));
  const unused = choices.find((choice) => ranges.every((row) => row.materialId !== choice.id));
  return (
    <FieldGroup title={reportWords.ranges}>
      {ranges.map((row, index) => {
        const where = (field: string) => `details.ranges[${index}].${field}`;
        return (
          <fieldset key={row.materialId} className={styles.range} aria-label={reportWords.rangeOf(index + 1)}>
            <Select
              label={reportWords.material}
              where={where('materialId')}
              value={row.materialId}
              onChange={(materialId) => change(index, { materialId })}
              choices={choices}
            />
            <Field
              label={reportWords.least}
              where={where('leastPercent')}
              kind="decimal"
              unit="%"
              value={row.leastPercent}
              onChange={(leastPercent) => change(index, { leastPercent })}
            />
            <Field
              label={reportWords.most}
              where={where('mostPercent')}
              kind="decimal"
              unit="%"
              value={row.mostPercent}
              onChange={(mostPercent) => change(index, { mostPercent })}
            />
            <Button
              label={reportWords.takeOut(index + 1)}
              onPress={() => onChange(ranges.filter((_, at) => at !== index))}
            >
              −
            </Button>
          </fieldset>
        );
      })}
      <div>
        <Button
          isDisabled={unused === undefined}
          onPress={() =>
            unused && onChange([...ranges, { materialId: unused.id, leastPercent: '0', mostPercent: '' }])
          }
        >
          {reportWords.addRange}
        </Button>
      </div>
    </FieldGroup>
  );
}
