import { useState } from 'react';
import { orderWords, sayInstant } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useTimeZone } from '../../api/use-time-zone.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { List } from '../../parts/list.tsx';
import { ListFoot } from '../../parts/list-foot.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Problems } from '../../parts/problems.tsx';
import type { Order } from './order.ts';

type Parcel = Order['parcels'][number];
const { one: words } = orderWords;

/** What went out, parcel by parcel; a number that comes later, or a parcel that did not go, is entered here. */
export const Parcels = ({ parcels }: { readonly parcels: readonly Parcel[] }) =>
  parcels.length === 0 ? null : (
    <Card title={words.parcels} isFlush>
      <List rows={parcels} keyOf={({ id }) => id} empty="">
        {(parcel) => <ParcelRow parcel={parcel} />}
      </List>
    </Card>
  );

function ParcelRow({ parcel }: { readonly parcel: Parcel }) {
  const [asked, setAsked] = useState<'tracking' | 'back' | null>(null);
  const timeZone = useTimeZone();
  const close = () => setAsked(null);
  const which = words.parcelOf(sayInstant(parcel.sentAt, timeZone), parcel.by);
  const tracking = parcel.tracking === '' ? words.noteTracking : words.changeTracking;
  return (
    <>
      <ListRow>
        <span>{which}</span>
        <span>
          {parcel.isTakenBack
            ? words.isTakenBack
            : parcel.lots.map(({ units, lotNumber }) => words.ofBatch(units, lotNumber)).join(', ')}
        </span>
      </ListRow>
      {!parcel.isTakenBack && (
        <>
          <p className="soft">
            {parcel.tracking === '' ? words.noTracking : `${words.tracking}: ${parcel.tracking}`}
          </p>
          <ListFoot>
            <Button onPress={() => setAsked('tracking')} label={`${tracking}: ${which}`}>
              {tracking}
            </Button>
            <Button onPress={() => setAsked('back')} label={`${words.takeBack}: ${which}`}>
              {words.takeBack}
            </Button>
          </ListFoot>
          <TrackingDialog key={asked} parcel={parcel} isOpen={asked === 'tracking'} onClose={close} />
          <TakeBackDialog parcel={parcel} isOpen={asked === 'back'} onClose={close} />
        </>
      )}
    </>
  );
}

interface DialogProps {
  readonly parcel: Parcel;
  readonly isOpen: boolean;
  readonly onClose: () => void;
}

function TrackingDialog({ parcel, isOpen, onClose }: DialogProps) {
  const [tracking, setTracking] = useState(parcel.tracking);
  const save = useWrite('saveTracking');
  const submit = async () => {
    if (!(await save.write({ params: { id: parcel.id }, body: { tracking } }))) return;
    tell(words.trackingKept);
    onClose();
  };
  return (
    <Dialog
      title={words.noteTracking}
      isOpen={isOpen}
      onClose={onClose}
      isHeld={tracking !== parcel.tracking}
    >
      <Form label={words.noteTracking} problems={save.problems} onSubmit={() => void submit()}>
        <Field label={words.tracking} where="tracking" value={tracking} onChange={setTracking} isFirst />
        <Button type="submit" isAct isBusy={save.isBusy}>
          {words.keepTracking}
        </Button>
      </Form>
    </Dialog>
  );
}

function TakeBackDialog({ parcel, isOpen, onClose }: DialogProps) {
  const back = useWrite('takeParcelBack');
  const submit = async () => {
    if (!(await back.write({ params: { id: parcel.id }, body: {} }))) return;
    tell(words.takenBack);
    onClose();
  };
  return (
    <Dialog title={words.takeBackTitle} isOpen={isOpen} onClose={onClose}>
      <p>{words.takeBackSays}</p>
      <Problems problems={back.problems} />
      <Button isAct isBusy={back.isBusy} onPress={() => void submit()}>
        {words.takeBackAct}
      </Button>
    </Dialog>
  );
}
