import { useState } from 'react';
import { partWords, reachWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useEditing } from '../../api/use-editing.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { List } from '../../parts/list.tsx';
import { ListRow } from '../../parts/list-row.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Problems } from '../../parts/problems.tsx';

type Device = AnswerOf<'getReach'>['devices'][number];
interface Asked {
  readonly device: Device;
  readonly what: 'rename' | 'drop';
}

const { devices: words } = reachWords;

export function DeviceList({ devices }: { readonly devices: readonly Device[] }) {
  const [asked, setAsked] = useState<Asked | null>(null);
  const close = () => setAsked(null);
  return (
    <div>
      <h3>{words.title}</h3>
      <List rows={devices} keyOf={({ id }) => id} empty={words.none}>
        {(device) => (
          <>
            <ListRow>
              <span>{device.name}</span>
              <span className="soft small">
                {device.lastSeen === null ? (
                  words.never
                ) : (
                  <>
                    {words.seen} <Moment at={device.lastSeen} />
                  </>
                )}
              </span>
            </ListRow>
            <p className="soft small">
              {device.unlocked.length === 0
                ? words.nobody
                : words.unlocked(device.unlocked.map(({ name }) => name).join(', '))}
            </p>
            <FormActions>
              <Button
                isPlain
                onPress={() => setAsked({ device, what: 'rename' })}
                label={`${words.rename}: ${device.name}`}
              >
                {words.rename}
              </Button>
              <Button
                isPlain
                onPress={() => setAsked({ device, what: 'drop' })}
                label={`${words.drop}: ${device.name}`}
              >
                {words.drop}
              </Button>
            </FormActions>
          </>
        )}
      </List>
      {asked?.what === 'rename' && <RenameDevice device={asked.device} onClose={close} />}
      {asked?.what === 'drop' && <DropDevice device={asked.device} onClose={close} />}
    </div>
  );
}

interface AboutDevice {
  readonly device: Device;
  readonly onClose: () => void;
}

function RenameDevice({ device, onClose }: AboutDevice) {
  const editing = useEditing(device, ({ name }) => ({ name }));
  const rename = useWrite('renameDevice');
  const submit = async () => {
    const body = { version: editing.version, name: editing.draft.name };
    if (!(await rename.write({ params: { id: device.id }, body }))) return;
    tell(words.renamed);
    onClose();
  };
  return (
    <Dialog title={words.renameTitle} isOpen onClose={onClose} isHeld={editing.isChanged}>
      <Form label={words.renameTitle} problems={rename.problems} onSubmit={() => void submit()}>
        <Field
          label={words.name}
          where="name"
          value={editing.draft.name}
          onChange={editing.set('name')}
          isFirst
        />
        <Button type="submit" isAct isBusy={rename.isBusy}>
          {partWords.save}
        </Button>
      </Form>
    </Dialog>
  );
}

function DropDevice({ device, onClose }: AboutDevice) {
  const drop = useWrite('dropDevice');
  const act = async () => {
    if (!(await drop.write({ params: { id: device.id }, body: { version: device.version } }))) return;
    tell(words.dropped(device.name));
    onClose();
  };
  return (
    <Dialog title={words.dropTitle(device.name)} isOpen onClose={onClose}>
      <p>{words.dropSays}</p>
      <Problems problems={drop.problems} />
      <div>
        <Button isStop onPress={() => void act()} isBusy={drop.isBusy}>
          {words.dropIt}
        </Button>
      </div>
    </Dialog>
  );
}
