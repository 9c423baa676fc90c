import { useState } from 'react';
import { workshopWords } from '../../../words/index.ts';
import { deviceName } from '../../api/device-name.ts';
import { tell } from '../../api/notice.ts';
import { useRead } from '../../api/use-read.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';

const { machine: words } = workshopWords;
const NONE = [] as const;

export function MachineCard() {
  const [name, setName] = useState(deviceName.read());
  const health = useRead('getHealth').data;
  const save = () => {
    deviceName.write(name);
    tell(words.saved);
  };
  return (
    <Card title={words.title}>
      <p className="soft">{words.about}</p>
      <Form label={words.title} problems={NONE} onSubmit={save}>
        <Field label={words.name} where="device" value={name} onChange={setName} />
        <div>
          <Button type="submit">{words.save}</Button>
        </div>
      </Form>
      {health && <p className="soft small">{words.version(health.version, health.schema)}</p>}
    </Card>
  );
}
