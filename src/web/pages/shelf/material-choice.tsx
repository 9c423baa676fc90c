import { useState } from 'react';
import { shelfWords } from '../../../words/index.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { ComboBox } from '../../parts/combo-box.tsx';
import { State } from '../../parts/state.tsx';
import type { Material } from '../materials/material.ts';
import { NewMaterialDialog } from '../materials/new-material-dialog.tsx';

interface Props {
  readonly value: string | null;
  readonly onChange: (id: string | null) => void;
  /** undefined while they are being fetched. */
  readonly materials: readonly Material[] | undefined;
}

const { goods: words } = shelfWords;

/** What the goods are: from the list, or written down on the spot, so that nothing typed so far is lost. */
export function MaterialChoice({ value, onChange, materials }: Props) {
  const [isAdding, setAdding] = useState(false);
  if (!materials) return null;
  return (
    <>
      {materials.length === 0 ? (
        <State kind="watch">{words.noMaterial}</State>
      ) : (
        <ComboBox
          // A fresh list for each new material, so that the one just added stands chosen.
          key={materials.length}
          label={words.material}
          where="materialId"
          value={value}
          onChange={onChange}
          choices={materials.map(({ id, details }) => ({ id, name: details.name, about: details.supplier }))}
        />
      )}
      <div>
        <Button isPlain={materials.length > 0} isAct={materials.length === 0} onPress={() => setAdding(true)}>
          {materials.length === 0 ? words.firstMaterial : words.newMaterial}
        </Button>
      </div>
      {isAdding && <NewMaterialDialog onClose={() => setAdding(false)} onMade={onChange} />}
    </>
  );
}

/** The material that a goods form is about, and the unit it is counted in. */
export function useChosenMaterial(id: string | null) {
  const materials = useRead('listMaterials').data;
  const material = materials?.find((one) => one.id === id);
  return {
    materials,
    material,
    unit: material?.details.kind === 'packaging' ? ('pieces' as const) : ('g' as const),
  };
}
