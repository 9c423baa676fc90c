import { useState } from 'react';
import { workshopWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { Moment } from '../../parts/moment.tsx';
import { State } from '../../parts/state.tsx';
import type { Workshop } from './workshop.ts';

const { backup: words } = workshopWords;

export function BackupCard({ workshop }: { readonly workshop: Workshop }) {
  const [folder, setFolder] = useState('');
  const backUp = useWrite('backUp');
  const act = async () => {
    const made = await backUp.write({ body: folder.trim() === '' ? {} : { folder: folder.trim() } });
    if (made) tell(words.made(made.file));
  };
  return (
    <Card title={words.title}>
      {workshop.lastBackup === null ? (
        <State kind="watch">{words.never}</State>
      ) : (
        <div>
          <State kind="ready">
            {words.last} <Moment at={workshop.lastBackup.at} />
          </State>
          <p className="soft small">
            {words.file} {workshop.lastBackup.file}
          </p>
        </div>
      )}
      <Form label={words.title} problems={backUp.problems} onSubmit={() => void act()}>
        <Field
          label={words.folder}
          where="folder"
          value={folder}
          onChange={setFolder}
          hint={words.folderHint}
          isOptional
        />
        <div>
          <Button type="submit" isAct isBusy={backUp.isBusy}>
            {words.now}
          </Button>
        </div>
      </Form>
    </Card>
  );
}
