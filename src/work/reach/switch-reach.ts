import { done, problem, type Result, refused } from '../../core/problem.ts';
import { giveUp, orGiveUp } from '../../storage/index.ts';
import { record } from '../record.ts';
import type { RequestOf, UseCase } from '../use-case.ts';
import type { Network } from './network.ts';
import { viewReach } from './view-reach.ts';

/** The switch lies beside the file and not in it; the chain tells who turned it when. */
export const switchReach: UseCase<'switchReach'> = async (context, { body }) => {
  const { network } = context;
  if (!network) return refused(problem('network-not-here', 'network'));
  const wasOn = (await network.door.view()).isOn;
  return orUndo((opened) =>
    record(
      context,
      body.stamp,
      async (_tx, tell) => {
        await tell({
          kind: body.isOn ? 'network-opened' : 'network-closed',
          subjectKind: 'workshop',
          subjectId: 'network',
          payload: {},
        });
        await turn(network, body);
        if (body.isOn && !wasOn) opened(() => network.door.turnOff());
        return 'network';
      },
      async () => done(await viewReach(context)),
    ),
  );
};

type Undo = () => Promise<void>;

/** What was opened is shut again where the record of it could not be written: nobody comes in past the chain. */
async function orUndo<T>(work: (opened: (undo: Undo) => void) => Promise<Result<T>>): Promise<Result<T>> {
  let undo: Undo | undefined;
  let isWritten = false;
  try {
    const answer = await work((how) => {
      undo = how;
    });
    isWritten = answer.ok;
    return answer;
  } finally {
    if (!isWritten) await undo?.();
  }
}

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
  return orUndo((opened) =>
    record(
      context,
      stamp,
      async (_tx, tell) => {
        if (!(await door.view()).isOn) giveUp(problem('network-not-on', 'network'));
        await tell({ kind: 'pairing-opened', subjectKind: 'workshop', subjectId: 'network', payload: {} });
        opened(async () => {
          pairing.close();
          await door.closeHint();
        });
        pairing.open(stamp.by, context.machine.now());
        await door.openHint();
        return 'network';
      },
      async () => done(await viewReach(context)),
    ),
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
