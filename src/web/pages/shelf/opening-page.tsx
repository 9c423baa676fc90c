import { useState } from 'react';
import { problem } from '../../../core/problem.ts';
import { shelfWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useDraft } from '../../api/use-draft.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { focusHeading } from '../../shell/focus-heading.ts';
import { Page } from '../../shell/page.tsx';
import { useOptionalParam } from '../../shell/use-optional-param.ts';
import { showAmount } from '../../show/show-amount.ts';
import { typedDecimalOrNull } from '../../show/typed-decimal.ts';
import { CountedSoFar } from './counted-so-far.tsx';
import { LotFactsFields } from './lot-facts-fields.tsx';
import { MaterialChoice, useChosenMaterial } from './material-choice.tsx';
import { textOrNull } from './receive-draft.ts';
import styles from './shelf.module.css';
import { ShelfNav } from './shelf-nav.tsx';
import { EMPTY_WEIGHING, readFound, weighedOf } from './weigh-draft.ts';
import { WeighFields } from './weigh-fields.tsx';

const { openingCount: words } = shelfWords;
const NO_FACTS = { supplierLot: '', bestBefore: '', paid: '', placeId: '' };

/** Tub after tub, as found: the form stays open for the next one. */
export function OpeningPage() {
  /** How many tubs were kept: each next one has a fresh list to choose from. */
  const [kept, setKept] = useState(0);
  const [materialId, setMaterialId] = useState(useOptionalParam('materialId'));
  const [weighing, setWeighing] = useState(EMPTY_WEIGHING);
  const { draft: facts, set, isChanged, beginAnew } = useDraft(NO_FACTS);
  const { materials, material, unit } = useChosenMaterial(materialId);
  const save = useWrite('countAtOpening');
  useUnsaved(isChanged || weighing !== EMPTY_WEIGHING, save);
  const found = readFound(weighing, unit);
  const submit = async () => {
    const weighed = weighedOf(weighing, unit);
    const missing = materialId === null ? [problem('choice-missing', 'materialId')] : [];
    if (!weighed.ok || !material) return save.refuse([...missing, ...(weighed.ok ? [] : weighed.problems)]);
    const saved = await save.write({
      body: {
        materialId: material.id,
        ...(facts.placeId === '' ? {} : { placeId: facts.placeId }),
        supplierLot: textOrNull(facts.supplierLot),
        bestBefore: textOrNull(facts.bestBefore),
        paid: typedDecimalOrNull(facts.paid),
        ...weighed.value,
      },
    });
    if (!saved || !found.ok) return;
    tell(words.saved(showAmount(found.value, unit), material.details.name));
    setWeighing(EMPTY_WEIGHING);
    beginAnew({ ...NO_FACTS, placeId: facts.placeId });
    setMaterialId(null);
    setKept(kept + 1);
    focusHeading();
  };
  const says = !material
    ? words.says
    : found.ok
      ? words.saysNet(showAmount(found.value, unit), material.details.name)
      : words.saysChosen(material.details.name);
  return (
    <Page title={words.title} above={words.title} says={says} soft={words.soft}>
      <ShelfNav />
      <Form label={words.form} problems={save.problems} onSubmit={() => void submit()}>
        <div className={styles.scale}>
          <div className={styles.section}>
            <MaterialChoice key={kept} value={materialId} onChange={setMaterialId} materials={materials} />
            <WeighFields unit={unit} draft={weighing} onChange={setWeighing} />
          </div>
          <div className={styles.section}>
            <LotFactsFields draft={facts} set={set} />
            <Button type="submit" isAct isBench isBusy={save.isBusy}>
              {words.save}
            </Button>
          </div>
        </div>
      </Form>
      <CountedSoFar />
    </Page>
  );
}
