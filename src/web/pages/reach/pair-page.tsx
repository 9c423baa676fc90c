import { useQueryClient } from '@tanstack/react-query';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { reachGuide, reachWords } from '../../../words/index.ts';
import { guessDevice } from '../../api/device-name.ts';
import { tell } from '../../api/notice.ts';
import { useStore } from '../../api/use-store.ts';
import { useWrite } from '../../api/use-write.ts';
import { door } from '../../away/door.ts';
import { onTablet, replayOutbox } from '../../away/outbox.ts';
import { Button } from '../../parts/button.tsx';
import { Card } from '../../parts/card.tsx';
import { Field } from '../../parts/field.tsx';
import { Form } from '../../parts/form.tsx';
import { LinkButton } from '../../parts/link-button.tsx';
import { TrustGuide } from '../../reach/guide.tsx';
import { isOwnComputer, useDoor } from '../../reach/use-door.ts';
import { Page } from '../../shell/page.tsx';

const { page: words } = reachWords;

/** What stands behind the # when somebody held the camera at the code; it never went over the network. */
const codeInAddress = (): string => (/^#(\d{8})$/.exec(location.hash)?.[1] ?? '').replace(/^(\d{4})/, '$1 ');

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A device asks to be let in. */
export function PairPage() {
  const { device } = useDoor().data ?? {};
  if (isOwnComputer) return <Said says={words.own} soft={words.ownSays} />;
  return device ? <Said says={words.already(device.name)} soft={words.alreadySays} /> : <PairDevice />;
}

const Said = ({ says, soft }: { readonly says: string; readonly soft: string }) => (
  <Page title={words.title} says={says} soft={soft} actions={<LinkButton to="/">{words.home}</LinkButton>} />
);

function PairDevice() {
  const [code, setCode] = useState(codeInAddress);
  const [name, setName] = useState(() => capitalised(guessDevice(navigator)));
  const pair = useWrite('pairDevice');
  const queryClient = useQueryClient();
  const navigate = useNavigate();
  const waiting = useStore(onTablet).waiting.length;
  const submit = async () => {
    const paired = await pair.write({ body: { code, name } });
    if (!paired) return;
    door.write(null);
    tell(words.done(paired.name));
    await queryClient.invalidateQueries();
    void replayOutbox();
    if (location.pathname === '/pair') await navigate({ to: '/' });
  };
  return (
    <Page title={words.title} says={words.says} soft={words.lead} isNarrow>
      {waiting > 0 && <p>{words.waiting(waiting)}</p>}
      <Card title={words.title}>
        <Form label={words.title} problems={pair.problems} onSubmit={() => void submit()}>
          <Field
            label={words.code}
            where="code"
            kind="digits"
            value={code}
            onChange={setCode}
            isBench
            isFirst={code === ''}
          />
          <Field label={words.name} where="name" value={name} onChange={setName} hint={words.nameHint} />
          <Button type="submit" isAct isBench isBusy={pair.isBusy}>
            {words.go}
          </Button>
        </Form>
      </Card>
      <Card title={reachGuide.title}>
        <p>{words.warned}</p>
        <TrustGuide />
      </Card>
    </Page>
  );
}
