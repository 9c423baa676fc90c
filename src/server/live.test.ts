import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openTestWorkshop, type TestWorkshop } from '../../test/workshop/open-test-workshop.ts';
import { useCases } from '../work/index.ts';
import { createApp } from './create-app.ts';
import { type Live, makeLive } from './live.ts';

const HOST = '127.0.0.1:4716';
let bench: TestWorkshop;
let live: Live;
let app: ReturnType<typeof createApp>;

beforeEach(async () => {
  bench = await openTestWorkshop();
  live = makeLive(bench.context);
  const log = { warn: () => undefined, error: () => undefined };
  const more = { version: '9', webFolder: '/nowhere', port: () => 4716, log, live };
  app = createApp({ context: bench.context, useCases, ...more });
});
afterEach(async () => {
  live.close();
  await bench.close();
});

const follow = async (signal?: AbortSignal) => {
  const init = { headers: { host: HOST }, ...(signal && { signal }) };
  return app.request(`http://${HOST}/api/live`, init);
};

/** What a reader of the stream is told, event by event. */
function readerOf(response: Response) {
  const reader = response.body?.pipeThrough(new TextDecoderStream()).getReader();
  let text = '';
  return {
    /** Waits for the next event; undefined: the stream ended. */
    async next(): Promise<Record<string, unknown> | undefined> {
      for (;;) {
        const found = /data: (.*)\n\n/.exec(text);
        if (found) {
          text = text.slice(found.index + found[0].length);
          return JSON.parse(found[1] ?? '') as Record<string, unknown>;
        }
        const part = await reader?.read();
        if (!part || part.done) return undefined;
        text += part.value;
      }
    },
    cancel: () => reader?.cancel(),
  };
}

describe('the stream of what is written', () => {
  it('tells each write once it is on disk: what it was about, and whose it was', async () => {
    const response = await follow();
    expect(response.headers.get('content-type')).toMatch(/^text\/event-stream/);
    expect(response.headers.get('cache-control')).toBe('no-store');
    const told = readerOf(response);
    const stamp = bench.stamp();
    const saved = await bench.get('savePerson', { body: { stamp, name: 'Cy Reed' } });
    expect(await told.next()).toEqual({
      seq: expect.any(Number),
      kind: 'person-added',
      subjectKind: 'person',
      subjectId: saved.id,
      entryId: stamp.id,
      by: bench.people.first,
      device: 'test bench',
    });
  });

  it('tells every open page, and only once of an entry that was sent twice', async () => {
    const [one, other] = [readerOf(await follow()), readerOf(await follow())];
    const first = { stamp: bench.stamp(), name: 'Cy Reed' };
    await bench.get('savePerson', { body: first });
    await bench.get('savePerson', { body: first });
    const second = { stamp: bench.stamp(), name: 'Di Moor' };
    await bench.get('savePerson', { body: second });
    for (const told of [one, other]) {
      expect((await told.next())?.entryId).toBe(first.stamp.id);
      expect((await told.next())?.entryId).toBe(second.stamp.id);
    }
  });

  it('tells nothing of what was refused', async () => {
    const told = readerOf(await follow());
    const refused = await bench.ask('savePerson', {
      body: { stamp: bench.stamp({ by: 'nobody' }), name: 'X' },
    });
    expect(refused.ok).toBe(false);
    await bench.get('savePerson', { body: { name: 'Cy Reed' } });
    expect((await told.next())?.kind).toBe('person-added');
  });

  it('ends with the server, and takes no more then', async () => {
    const told = readerOf(await follow());
    live.close();
    expect(await told.next()).toBeUndefined();
    expect((await follow()).status).toBe(503);
  });

  it('refuses the forty-first page, and takes another once one has gone', async () => {
    const open = await Promise.all(Array.from({ length: 40 }, () => follow()));
    const refused = await follow();
    expect(refused.status).toBe(503);
    expect(await refused.json()).toMatchObject({ problems: [{ code: 'too-many-streams', allowed: 40 }] });
    await open[0]?.body?.cancel();
    await expect.poll(async () => (await follow()).status).toBe(200);
  });
});
