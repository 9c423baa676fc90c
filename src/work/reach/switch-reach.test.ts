import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openTestWorkshop, type TestWorkshop } from '../../../test/workshop/open-test-workshop.ts';
import { done } from '../../core/problem.ts';
import type { NetworkState } from './network.ts';
import { PairingDesk } from './pairing-desk.ts';

let bench: TestWorkshop;
let isOn: boolean;
let isHintOpen: boolean;
/** What happens in the middle of a write, after it was opened and before it is on record. */
let meanwhile: () => void;
let pairing: PairingDesk;

beforeEach(async () => {
  bench = await openTestWorkshop();
  [isOn, isHintOpen, meanwhile] = [false, false, () => undefined];
  pairing = new PairingDesk(() => '12345678');
  const nothing = { trouble: null, port: null, ways: [], authority: null, fingerprint: null };
  const view = async (): Promise<NetworkState> => ({ isOn, ...nothing, authorityUntil: null, hint: null });
  const door = {
    view,
    async turnOn() {
      isOn = true;
      meanwhile();
      return done(null);
    },
    async turnOff() {
      isOn = false;
    },
    async openHint() {
      isHintOpen = true;
      meanwhile();
    },
    async closeHint() {
      isHintOpen = false;
    },
    hangUp: () => undefined,
  };
  Object.assign(bench.context, { network: { door, pairing } });
});
afterEach(() => bench.close());

/** The file takes nothing more: the entry of what was opened cannot be kept. */
const tearFile = () => bench.context.storage.handle.pragma('query_only = ON');
const mendFile = () => bench.context.storage.handle.pragma('query_only = OFF');

describe('what is opened to the network', () => {
  it('is open once that is on record', async () => {
    await bench.get('switchReach', { body: { isOn: true } });
    await bench.get('openPairing', { body: {} });
    expect([isOn, isHintOpen, pairing.current(bench.now())?.code]).toEqual([true, true, '12345678']);
  });

  it('is shut again where its entry cannot be kept', async () => {
    meanwhile = tearFile;
    await bench.ask('switchReach', { body: { isOn: true } }).catch(() => undefined);
    expect(isOn).toBe(false);
    mendFile();
    meanwhile = () => undefined;
    await bench.get('switchReach', { body: { isOn: true } });
    meanwhile = tearFile;
    await bench.ask('openPairing', { body: {} }).catch(() => undefined);
    expect([isOn, isHintOpen, pairing.current(bench.now())]).toEqual([true, false, null]);
    mendFile();
  });
});
