import { shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { ComboBox } from '../../parts/combo-box.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import type { Material } from '../materials/material.ts';

interface Props {
  readonly value: string | null;
  readonly onChange: (id: string | null) => void;
  readonly materials: readonly Material[];
}

export const MaterialChoice = ({ value, onChange, materials }: Props) => (
  <>
    <ComboBox
      label={shelfWords.goods.material}
      where="materialId"
      value={value}
      onChange={onChange}
      choices={materials.map(({ id, details }) => ({ id, name: details.name, about: details.supplier }))}
    />
    <div>
      <LinkButton to="/materials/new" isPlain>
        {shelfWords.goods.newMaterial}
      </LinkButton>
    </div>
  </>
);

/** The material that a goods form is about, and the unit it is counted in. */
export function useChosenMaterial(id: string | null) {
  const materials = useRead('listMaterials').data ?? [];
  const material = materials.find((one) => one.id === id);
  return {
    materials,
    material,
    unit: material?.details.kind === 'packaging' ? ('pieces' as const) : ('g' as const),
  };
}
