import { reachWords } from '../../../words/index.ts';
import { tell } from '../../api/notice.ts';
import { requestUrl } from '../../api/request-url.ts';
import type { AnswerOf } from '../../api/shapes.ts';
import { useRead } from '../../api/use-read.ts';
import { useWrite } from '../../api/use-write.ts';
import { Button } from '../../parts/button.tsx';
import { buttonClass } from '../../parts/button-look.ts';
import { Card } from '../../parts/card.tsx';
import { Disclosure } from '../../parts/disclosure.tsx';
import { FormActions } from '../../parts/form-actions.tsx';
import { Moment } from '../../parts/moment.tsx';
import { Problems } from '../../parts/problems.tsx';
import { State } from '../../parts/state.tsx';
import reach from '../../reach/reach.module.css';
import { DeviceList } from './device-list.tsx';
import { PairingPanel } from './pairing-panel.tsx';

/** Wi-Fi comes and goes without anybody's entry (common practice, no source). */
const LOOK_EVERY_MS = 20_000;

export type Network = NonNullable<AnswerOf<'getReach'>['network']>;

/** Whether tablets and phones reach the workshop, by which address, and which of them are let in. */
export function ReachCard() {
  const read = useRead('getReach', {}, { everyMs: LOOK_EVERY_MS });
  const turn = useWrite('switchReach');
  const open = useWrite('openPairing');
  const { network, devices } = read.data ?? { network: null, devices: [] };
  if (network === null) return null;
  const turnTo = async (isOn: boolean) => {
    const now = await turn.write({ body: { isOn } });
    if (!now) return;
    // Without an address nobody can come in yet: the card says why.
    if (!isOn) tell(reachWords.turnedOff);
    else if (now.network && now.network.ways.length > 0) tell(reachWords.turnedOn);
  };
  return (
    <Card title={reachWords.title} anchor="devices">
      {network.trouble !== null && (
        <p>
          <State kind="stop">{reachWords.trouble}</State> {network.trouble}
        </p>
      )}
      <Problems problems={turn.problems} />
      <Problems problems={open.problems} />
      {network.isOn ? <Open network={network} /> : <Shut />}
      {network.isOn && network.pairing && (
        <PairingPanel pairing={network.pairing} fingerprint={network.fingerprint} />
      )}
      <FormActions>
        {network.ways.length > 0 && network.pairing === null && (
          <Button isAct onPress={() => void open.write({ body: {} })} isBusy={open.isBusy}>
            {reachWords.pair}
          </Button>
        )}
        <Button isAct={!network.isOn} onPress={() => void turnTo(!network.isOn)} isBusy={turn.isBusy}>
          {network.isOn ? reachWords.turnOff : reachWords.turnOn}
        </Button>
      </FormActions>
      {(network.isOn || devices.length > 0) && <DeviceList devices={devices} />}
      {network.fingerprint !== null && <Certificate network={network} />}
    </Card>
  );
}

const Shut = () => (
  <div>
    <State kind="plain">{reachWords.off}</State>
    <p className="soft small">{reachWords.turnOnHint}</p>
  </div>
);

const Open = ({ network: { ways } }: { readonly network: Network }) => (
  <>
    {ways.length === 0 ? (
      <State kind="watch">{reachWords.noAddress}</State>
    ) : (
      <State kind="ready">{reachWords.on}</State>
    )}
    {ways.length > 0 && (
      <div>
        <p className="soft">{reachWords.ways}</p>
        <ul className={reach.ways}>
          {ways.map(({ url, kind }) => (
            <li key={url}>
              <code>{url}</code>{' '}
              <span className="soft small">{kind === 'name' ? reachWords.byName : reachWords.byNumber}</span>
            </li>
          ))}
        </ul>
      </div>
    )}
  </>
);

const Certificate = ({ network }: { readonly network: Network }) => (
  <Disclosure title={reachWords.more}>
    {() => (
      <>
        <p className="soft">{reachWords.fingerprintHint}</p>
        <p>{reachWords.fingerprint}</p>
        <p>
          <code className={reach.fingerprint}>{network.fingerprint}</code>
        </p>
        {network.authorityUntil !== null && (
          <p className="soft small">
            {reachWords.authorityUntil} <Moment at={network.authorityUntil} />
          </p>
        )}
        <div>
          <a className={buttonClass({})} href={requestUrl('getAuthority')} download="gramwright-workshop.crt">
            {reachWords.fetch}
          </a>
        </div>
      </>
    )}
  </Disclosure>
);
