import { done, problem, refused } from '../../core/problem.ts';
import { giveUp, orGiveUp } from '../../storage/index.ts';
import type { AskedContext } from '../context.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import type { Network } from './network.ts';
import { viewReach } from './view-reach.ts';

const network = (context: AskedContext): Network => {
  const { network: held } = context;
  if (!held) throw new Error('asked for before');
  return held;
};

/** The switch lies beside the file and not in it; the chain tells who turned it when. */
export const switchReach: UseCase<'switchReach'> = async (context, { body }) => {
  if (!context.network) return refused(problem('network-not-here', 'network'));
  return record(
    context,
    body.stamp,
    async (_tx, tell) => {
      await tell({
        kind: body.isOn ? 'network-opened' : 'network-closed',
        subjectKind: 'workshop',
        subjectId: 'network',
        payload: {},
      });
      await turn(network(context), body);
      return 'network';
    },
    async () => done(await viewReach(context)),
  );
};

async function turn(
  { door, pairing }: Network,
  { isOn, port }: RequestOf<'switchReach'>['body'],
): Promise<void> {
  if (isOn) {
    orGiveUp(await door.turnOn(port));
    return;
  }
  pairing.close();
  await door.turnOff();
}

export const openPairing: UseCase<'openPairing'> = async (context, { body: { stamp } }) => {
  if (!context.network) return refused(problem('network-not-here', 'network'));
  const { door, pairing } = context.network;
  return record(
    context,
    stamp,
    async (_tx, tell) => {
      if (!(await door.view()).isOn) giveUp(problem('network-not-on', 'network'));
      await tell({ kind: 'pairing-opened', subjectKind: 'workshop', subjectId: 'network', payload: {} });
      pairing.open(stamp.by, context.machine.now());
      await door.openHint();
      return 'network';
    },
    async () => done(await viewReach(context)),
  );
};

export const closePairing: UseCase<'closePairing'> = async (context, { body: { stamp } }) => {
  if (!context.network) return refused(problem('network-not-here', 'network'));
  const { door, pairing } = context.network;
  return record(
    context,
    stamp,
    async (_tx, tell) => {
      await tell({ kind: 'pairing-closed', subjectKind: 'workshop', subjectId: 'network', payload: {} });
      pairing.close();
      await door.closeHint();
      return 'network';
    },
    async () => done(await viewReach(context)),
  );
};
