import { useSearch } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { shelfWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useRead } from '../../api/use-read.ts';
import { useUnsaved } from '../../api/use-unsaved.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Form } from '../../parts/form.tsx';
import { Loaded } from '../../parts/loaded.tsx';
import { RadioChoice } from '../../parts/radio-choice.tsx';
import { Select } from '../../parts/select.tsx';
import { Page } from '../../shell/page.tsx';
import { useGoTo } from '../../shell/use-go-to.ts';
import { useParam } from '../../shell/use-param.ts';
import { showAmount } from '../../show/show-amount.ts';
import { GAIN, GainQuestion } from './gain-question.tsx';
import styles from './shelf.module.css';
import type { LotDetail } from './shelf-item.ts';
import { EMPTY_WEIGHING, readFound, weighedOf } from './weigh-draft.ts';
import { WeighFields } from './weigh-fields.tsx';
import { WeighSays } from './weigh-says.tsx';

const { count: words } = shelfWords;
const REASONS = Object.values(words.reasons).map((name) => ({ id: name, name }));

export function WeighPage() {
  const id = useParam('id');
  return (
    <Loaded key={id} read={useRead('getLot', { params: { id } })} title={words.title}>
      {(detail) => <Weigh detail={detail} />}
    </Loaded>
  );
}

function Weigh({ detail: { lot, places } }: { readonly detail: LotDetail }) {
  const [draft, setDraft] = useState(EMPTY_WEIGHING);
  const [reason, setReason] = useState<string>(words.reasons.regular);
  const [placeId, setPlaceId] = useState(places[0]?.placeId ?? '');
  const count = useWrite('countLot');
  // What is asked stands in its question: another list would judge the form anew at each key.
  const wrong = useMemo(() => count.problems.filter(({ code }) => code !== GAIN), [count.problems]);
  const goTo = useGoTo();
  const { back } = useSearch({ from: '/shelf/lots/$id/weigh' });
  const letGo = useUnsaved(draft !== EMPTY_WEIGHING, count);
  const onTheBooks = places.find((place) => place.placeId === placeId)?.onHand ?? lot.onHand;
  const submit = async (isGainSure = false) => {
    const weighed = weighedOf(draft, lot.unit);
    if (!weighed.ok) return count.refuse(weighed.problems);
    const where = placeId === '' ? {} : { placeId };
    const kept = await count.write({
      params: { id: lot.id },
      body: { ...weighed.value, ...where, reason, isGainSure },
    });
    if (!kept) return;
    letGo();
    tell(words.saved(showAmount(kept.onHand, lot.unit)));
    goTo(back ?? `/shelf/lots/${lot.id}`);
  };
  return (
    <Page
      title={words.title}
      above={words.lotTitle(lot.itemName, lot.number)}
      says={<WeighSays found={readFound(draft, lot.unit)} lot={lot} onTheBooks={onTheBooks} />}
      soft={words.working}
    >
      <Form label={words.form} problems={wrong} onSubmit={() => void submit()}>
        <div className={styles.scale}>
          <div className={styles.section}>
            <WeighFields unit={lot.unit} draft={draft} onChange={setDraft} />
          </div>
          <div className={styles.section}>
            {places.length > 1 && (
              <Select
                label={words.place}
                where="placeId"
                value={placeId}
                onChange={setPlaceId}
                choices={places.map((place) => ({ id: place.placeId, name: place.name }))}
                isBench
              />
            )}
            <RadioChoice title={words.reason} choices={REASONS} value={reason} onChange={setReason} isBench />
            <Button type="submit" isAct isBench isBusy={count.isBusy}>
              {words.save}
            </Button>
          </div>
        </div>
      </Form>
      <GainQuestion problems={count.problems} onSure={() => void submit(true)} onClose={count.forget} />
    </Page>
  );
}
