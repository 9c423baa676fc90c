import type { z } from 'zod';
import type { reach } from '../../contract/index.ts';
import { done } from '../../core/problem.ts';
import { listDevices, listPeople, listUnlocked } from '../../storage/index.ts';
import { sayProblem } from '../../words/index.ts';
import type { Context } from '../context.ts';
import type { UseCase } from '../use-case.ts';
import { drawCode } from './draw-code.ts';
import type { Network, NetworkState, WayIn } from './network.ts';

type ReachView = z.output<typeof reach.reach>;
type NetworkView = NonNullable<ReachView['network']>;

export const getReach: UseCase<'getReach'> = async (context) => done(await viewReach(context));

export async function viewReach(context: Context): Promise<ReachView> {
  const { network, machine } = context;
  return {
    network: network ? await viewNetwork(network, machine.now()) : null,
    devices: await viewDevices(context),
  };
}

async function viewDevices({ storage: { db } }: Context): Promise<ReachView['devices']> {
  const unlocked = await listUnlocked(db);
  const names = new Map((await listPeople(db)).map(({ id, name }) => [id, name]));
  return (await listDevices(db)).map((row) => ({
    id: row.id,
    name: row.name,
    pairedAt: row.paired_at,
    lastSeen: row.last_seen,
    unlocked: unlocked
      .filter(({ device_id }) => device_id === row.id)
      .map(({ person_id: id }) => ({ id, name: names.get(id) ?? '' })),
    version: row.version,
  }));
}

async function viewNetwork({ door, pairing }: Network, now: string): Promise<NetworkView> {
  const state = await door.view();
  const open = state.isOn ? pairing.current(now) : null;
  return {
    isOn: state.isOn,
    trouble: state.trouble === null ? null : sayProblem(state.trouble).says,
    port: state.port,
    ways: await withCodes(state, ({ url }) => url),
    fingerprint: state.fingerprint,
    authorityUntil: state.authorityUntil,
    pairing: open && {
      code: open.code,
      until: open.until,
      triesLeft: open.triesLeft,
      ways: await withCodes(state, ({ url }) => pairingUrl(url, open.code)),
      hint: state.hint,
    },
  };
}

/** The code stands behind the #: no request carries it, and no log keeps it. */
export const pairingUrl = (url: string, code: string): string => `${url}/pair#${code}`;

const withCodes = ({ ways }: NetworkState, contentOf: (way: WayIn) => string) =>
  Promise.all(ways.map(async (way) => ({ ...way, code: await drawCode(contentOf(way)) })));
