import { useState } from 'react';
import { scaleWords } from '../../words/index.ts';
import { useStore } from '../api/use-store.ts';
import { Button } from '../parts/button.tsx';
import { Card } from '../parts/card.tsx';
import { Disclosure } from '../parts/disclosure.tsx';
import { State } from '../parts/state.tsx';
import { connectedScale, connectTrouble } from './connected-scale.ts';
import { connectHid, hidPort } from './hid-scale.ts';
import { readerSettings } from './reader-settings.ts';
import { ReaderSettingsForm } from './reader-settings-form.tsx';
import { connectSerial, serialPorts } from './serial-scale.ts';
import { ShownReading } from './shown-reading.tsx';

const { reader: words } = scaleWords;
type LetGo = () => Promise<void>;
/** Of the whole page: leaving it does not pull the cable. */
const holding: { letGo: LetGo | undefined } = { letGo: undefined };

/** Scales that tell their reading by themselves: extras for those who have them. */
export function ReaderCard() {
  const scale = useStore(connectedScale);
  const trouble = useStore(connectTrouble);
  const [isBusy, setBusy] = useState(false);
  const hid = hidPort();
  const serial = serialPorts();
  async function connect(ask: () => Promise<LetGo | undefined>) {
    setBusy(true);
    try {
      holding.letGo = await ask();
    } catch {
      // The person closed the browser's own question, or there was nothing to choose from.
      connectTrouble.write('refused');
    } finally {
      setBusy(false);
    }
  }
  const clock = () => Date.now();
  return (
    <Card title={words.title} anchor="reader">
      <p className="soft">{words.about}</p>
      {scale ? (
        <>
          <State kind="ready">{words.connected(scale.name)}</State>
          <ShownReading />
          <div>
            <Button onPress={() => void holding.letGo?.()}>{words.disconnect}</Button>
          </div>
        </>
      ) : (
        <>
          {!hid && !serial && <p>{words.cannot}</p>}
          {hid && (
            <div>
              <Button isBusy={isBusy} onPress={() => void connect(() => connectHid(hid, clock))}>
                {words.connectHid}
              </Button>
            </div>
          )}
          {serial && (
            <div>
              <Button
                isBusy={isBusy}
                onPress={() =>
                  void connect(() => connectSerial(serial, readerSettings.read(), words.serialName, clock))
                }
              >
                {words.connectSerial}
              </Button>
            </div>
          )}
        </>
      )}
      {trouble && <State kind="watch">{words.troubles[trouble]}</State>}
      <p className="soft small">{words.honest}</p>
      <Disclosure title={words.settings}>{() => <ReaderSettingsForm />}</Disclosure>
    </Card>
  );
}
