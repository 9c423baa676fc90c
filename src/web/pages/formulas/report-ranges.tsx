import { exact, toText } from '../../../core/quantity/index.ts';
import { reportWords } from '../../../words/index.ts';
import type { BodyOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Field } from '../../parts/field.tsx';
import { FieldGroup } from '../../parts/field-group.tsx';
import { Select } from '../../parts/select.tsx';
import type { Covered } from './list-covered.ts';
import styles from './recipe.module.css';

type Ranges = BodyOf<'saveReport'>['details']['ranges'];

/** For reading beside the field: a thousandth of a percent. */
const brief = (percent: string): string => toText(exact(percent).toDecimalPlaces(3));

interface Props {
  readonly ranges: Ranges;
  readonly onChange: (ranges: Ranges) => void;
  readonly covered: readonly Covered[];
}

/** How much of each material the report allows in the finished product. */
export function ReportRanges({ ranges, onChange, covered }: Props) {
  const materials = (useRead('listMaterials').data ?? []).filter(
    (material) => material.details.kind === 'ingredient',
  );
  const choices = materials.map((material) => ({ id: material.id, name: material.details.name }));
  const change = (index: number, part: Partial<Ranges[number]>) =>
    onChange(ranges.map((row, at) => (at === index ? { ...row, ...part } : row)));
  const hasOpen = ranges.some((row) => row.materialId === '');
  const sayToday = (materialId: string): string | undefined => {
    const today = covered.find((each) => each.materialId === materialId);
    if (today) return reportWords.today(brief(today.leastPercent), brief(today.mostPercent));
    return materialId === '' || covered.length === 0 ? undefined : reportWords.notInIt;
  };
  return (
    <FieldGroup title={reportWords.ranges}>
      {ranges.map((row, index) => {
        const where = (field: string) => `details.ranges[${index}].${field}`;
        return (
          <fieldset
            key={row.materialId}
            className={styles.range}
            aria-label={
              choices.find(({ id }) => id === row.materialId)?.name ?? reportWords.rangeOf(index + 1)
            }
          >
            <Select
              label={reportWords.material}
              where={where('materialId')}
              value={row.materialId}
              onChange={(materialId) => change(index, { materialId })}
              choices={choices}
              hint={sayToday(row.materialId)}
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
          isDisabled={hasOpen}
          onPress={() => onChange([...ranges, { materialId: '', leastPercent: '', mostPercent: '' }])}
        >
          {reportWords.addRange}
        </Button>
      </div>
    </FieldGroup>
  );
}
