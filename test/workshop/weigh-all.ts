import type { RunningServer } from './start-server.ts';

/** What the bench sends for each screen of a batch: every addition exactly at its target, every step ticked. */
export async function listBenchWrites(
  server: RunningServer,
  batchId: string,
): Promise<{ readonly name: 'recordAddition' | 'recordStep'; readonly body: object }[]> {
  const batch = await server.call('getBatch', { params: { id: batchId } });
  return batch.screens.map((screen) =>
    screen.kind === 'step'
      ? {
          name: 'recordStep',
          body: { position: screen.position, celsius: null, minutes: null, remark: '' },
        }
      : {
          name: 'recordAddition',
          body: {
            position: screen.position,
            lotId: screen.lotId,
            scaleId: screen.scaleId,
            actualGrams: screen.targetGrams,
          },
        },
  );
}

/** Weighs every addition exactly to target and ticks every step. */
export async function weighAll(server: RunningServer, batchId: string, stamp: () => object): Promise<void> {
  for (const { name, body } of await listBenchWrites(server, batchId)) {
    await server.call(name, { params: { id: batchId }, body: { stamp: stamp(), ...body } });
  }
}
