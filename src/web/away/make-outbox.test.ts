import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type Problem, problem } from '../../core/problem.ts';
import { ApiProblem } from '../api/api-problem.ts';
import type { KeptEntry } from './kept-entry.ts';
import { type HeldEntry, makeOutbox, type OutboxParts } from './make-outbox.ts';
import { type OutboxStore, openOutboxStore } from './outbox-store.ts';
import { makeRunAlone } from './run-alone.ts';

afterEach(() => vi.restoreAllMocks());

let databases = 0;
const freshStore = (): Promise<OutboxStore> => {
  databases += 1;
  return openOutboxStore(`outbox ${databases}`);
};

const entry = (id: string, by = 'ada') => ({
  id,
  route: 'recordStep' as const,
  params: { id: 'batch-1' },
  body: { position: 0, stamp: { id, at: '2026-11-26T10:03:00.000Z', by, device: 'tablet' } },
  at: '2026-11-26T10:03:00.000Z',
});

const silence = () => new ApiProblem([problem('workshop-not-reached', '/')], false);
const refusal = (code: string) => new ApiProblem([problem(code, 'position')], true);

interface Bench {
  /** What the workshop says of an entry from now on: nothing is silence, a code is a refusal. */
  readonly say: (answer: (id: string) => 'yes' | 'silence' | (string & {})) => void;
  readonly sent: string[];
  readonly claims: [string, readonly Problem[]][];
}

function benchWith(store: OutboxStore, more: Partial<OutboxParts> = {}) {
  let answer: (id: string) => string = () => 'yes';
  const say: Bench['say'] = (next) => {
    answer = next;
  };
  const bench: Bench = { say, sent: [], claims: [] };
  const outbox = makeOutbox({
    store: async () => store,
    async send({ id }: KeptEntry) {
      const said = answer(id);
      if (said === 'silence') throw silence();
      bench.sent.push(id);
      if (said !== 'yes') throw refusal(said);
    },
    claim: async ({ id }, problems) => bench.claims.push([id, problems]),
    alone: makeRunAlone(undefined),
    tab: 'this tab',
    now: () => 1_000,
    // Nobody runs out of patience, but where a test says so.
    wait: () => new Promise(() => undefined),
    patienceMs: 4_000,
    onHeld: () => undefined,
    onChange: () => undefined,
    ...more,
  });
  return { ...bench, outbox };
}

const ids = async (store: OutboxStore) => (await store.list()).map(({ id }) => id);

describe('the outbox', () => {
  it('has the entry on this tablet’s disk before it is sent, and takes it out once it is answered', async () => {
    const store = await freshStore();
    const { outbox } = benchWith(store, {
      async send({ id }) {
        expect(await ids(store)).toEqual([id]);
      },
    });
    expect(await outbox.enter(entry('a'))).toEqual({ how: 'answered' });
    expect(await ids(store)).toEqual([]);
  });

  it('asks the browser for a commit that is on disk, for each change', async () => {
    const store = await freshStore();
    const asked = vi.spyOn(IDBDatabase.prototype, 'transaction');
    const { outbox, say } = benchWith(store);
    say(() => 'silence');
    await outbox.enter(entry('a'));
    say(() => 'yes');
    await outbox.replay();
    const writes = asked.mock.calls.filter(([, mode]) => mode === 'readwrite');
    expect(writes.length).toBeGreaterThanOrEqual(3);
    expect(writes.map(([, , options]) => options?.durability)).toEqual(writes.map(() => 'strict'));
  });

  it('keeps what nobody answered, and the screen goes on', async () => {
    const store = await freshStore();
    const { outbox, say, claims } = benchWith(store);
    say(() => 'silence');
    expect(await outbox.enter(entry('a'))).toEqual({ how: 'kept' });
    expect(await store.list()).toMatchObject([{ ...entry('a'), state: 'waiting' }]);
    expect(claims).toEqual([]);
  });

  it('sends in the order of entering, with the stamps that were made then', async () => {
    const store = await freshStore();
    const { outbox, say, sent } = benchWith(store);
    say(() => 'silence');
    for (const id of ['c', 'a', 'b']) await outbox.enter(entry(id));
    say(() => 'yes');
    expect(await outbox.enter(entry('d'))).toEqual({ how: 'answered' });
    expect(sent).toEqual(['c', 'a', 'b', 'd']);
  });

  it('stops at the first that nobody answers: what was entered later never goes before it', async () => {
    const store = await freshStore();
    const { outbox, say, sent } = benchWith(store);
    say(() => 'silence');
    for (const id of ['a', 'b', 'c']) await outbox.enter(entry(id));
    say((id) => (id === 'b' ? 'silence' : 'yes'));
    expect(await outbox.replay()).toBe('silent');
    expect(sent).toEqual(['a']);
    expect(await ids(store)).toEqual(['b', 'c']);
  });

  it('is there again in a tab that was closed and opened', async () => {
    databases += 1;
    const name = `outbox ${databases}`;
    const before = benchWith(await openOutboxStore(name));
    before.say(() => 'silence');
    await before.outbox.enter(entry('a'));
    const after = benchWith(await openOutboxStore(name));
    expect(await after.outbox.replay()).toBe('empty');
    expect(after.sent).toEqual(['a']);
  });

  it('tells whoever stands before the screen why it was refused, and keeps no claim of it', async () => {
    const store = await freshStore();
    const { outbox, say, claims } = benchWith(store);
    say(() => 'step-done-already');
    expect(await outbox.enter(entry('a'))).toMatchObject({
      how: 'refused',
      problems: [{ code: 'step-done-already' }],
    });
    expect([await ids(store), claims]).toEqual([[], []]);
  });

  it('puts on the record what is refused when it comes late, and goes on with the next', async () => {
    const store = await freshStore();
    const { outbox, say, claims, sent } = benchWith(store);
    say(() => 'silence');
    for (const id of ['a', 'b']) await outbox.enter(entry(id));
    say((id) => (id === 'a' ? 'step-done-already' : 'yes'));
    expect(await outbox.replay()).toBe('empty');
    expect(claims).toEqual([['a', [problem('step-done-already', 'position')]]]);
    expect(sent).toEqual(['a', 'b']);
  });

  it('keeps the entry where its claim cannot be put on the record either', async () => {
    const store = await freshStore();
    const { outbox, say } = benchWith(store, { claim: () => Promise.reject(silence()) });
    say(() => 'silence');
    await outbox.enter(entry('a'));
    say(() => 'disk-full');
    expect(await outbox.replay()).toBe('silent');
    expect(await ids(store)).toEqual(['a']);
  });

  it('takes out what the workshop has as a question already, though nobody told the tablet so', async () => {
    const store = await freshStore();
    const { outbox, say, claims } = benchWith(store);
    say(() => 'silence');
    await outbox.enter(entry('a'));
    say(() => 'kept-as-question');
    expect(await outbox.replay()).toBe('empty');
    expect([await ids(store), claims]).toEqual([[], []]);
  });

  it('goes past what the workshop will not even have as a question, says so, and keeps it', async () => {
    const store = await freshStore();
    const held: (readonly HeldEntry[])[] = [];
    const { outbox, say, sent } = benchWith(store, {
      claim: () => Promise.reject(refusal('person-unknown')),
      onHeld: (now) => held.push(now),
    });
    say(() => 'silence');
    await outbox.enter(entry('a', 'gone'));
    await outbox.enter(entry('b'));
    say((id) => (id === 'a' ? 'person-unknown' : 'yes'));
    expect(await outbox.replay()).toBe('held');
    expect(held.at(-1)).toMatchObject([{ entry: { id: 'a' }, problems: [{ code: 'person-unknown' }] }]);
    expect([sent, await ids(store)]).toEqual([['a', 'b'], ['a']]);
  });

  it.each(['our-mistake', 'disk-full', 'disk-trouble', 'file-not-writable'])(
    'keeps what met %s at the workshop, whether somebody waits for it or not, and says so',
    async (code) => {
      const store = await freshStore();
      const told: (readonly HeldEntry[])[] = [];
      let isBroken = true;
      const bench = benchWith(store, {
        onHeld: (held) => told.push(held),
        async send() {
          if (isBroken) throw new ApiProblem([problem(code, '/')], true, true);
        },
      });
      expect(await bench.outbox.enter(entry('a'))).toEqual({ how: 'kept' });
      expect(await bench.outbox.replay()).toBe('held');
      expect(told.at(-1)?.map(({ problems }) => problems[0]?.code)).toEqual([code]);
      expect([await ids(store), bench.claims]).toEqual([['a'], []]);
      isBroken = false;
      expect(await bench.outbox.replay()).toBe('empty');
    },
  );

  it('goes past what waits for a PIN, but keeps the order of that person’s own entries', async () => {
    const store = await freshStore();
    const { outbox, say, sent, claims } = benchWith(store);
    say(() => 'silence');
    await outbox.enter(entry('a', 'bo'));
    await outbox.enter(entry('b', 'ada'));
    await outbox.enter(entry('c', 'bo'));
    say((id) => (id === 'a' ? 'person-locked' : 'yes'));
    expect(await outbox.replay()).toBe('held');
    expect([sent, await ids(store), claims]).toEqual([['a', 'b'], ['a', 'c'], []]);
    say(() => 'yes');
    expect(await outbox.replay()).toBe('empty');
    expect(sent).toEqual(['a', 'b', 'a', 'c']);
  });

  it('loses no refusal where the patience ends while the entry is taken out', async () => {
    const store = await freshStore();
    let endPatience: (() => void) | undefined;
    const patience = new Promise<undefined>((resolve) => {
      endPatience = () => resolve(undefined);
    });
    const slow: OutboxStore = {
      ...store,
      async remove(id) {
        endPatience?.();
        await new Promise((resolve) => setTimeout(resolve, 20));
        await store.remove(id);
      },
    };
    const { outbox, say } = benchWith(slow, { wait: () => patience });
    say(() => 'step-done-already');
    expect(await outbox.enter(entry('a'))).toMatchObject({ how: 'refused' });
    expect(await ids(store)).toEqual([]);
  });

  it('keeps the entry where the tablet’s disk fails on the way, and asks about it once it is refused', async () => {
    const store = await freshStore();
    let isBroken = true;
    const failing: OutboxStore = {
      ...store,
      first: () => (isBroken ? Promise.reject(new DOMException('no disk', 'UnknownError')) : store.first()),
    };
    const { outbox, say, claims } = benchWith(failing);
    say(() => 'step-done-already');
    expect(await outbox.enter(entry('a'))).toEqual({ how: 'kept' });
    isBroken = false;
    expect(await outbox.replay()).toBe('empty');
    expect(claims.map(([id]) => id)).toEqual(['a']);
  });

  it.each([
    ['device-not-paired', 'door'],
    ['person-locked', 'held'],
  ])('takes %s for no answer to the entry', async (code, rest) => {
    const store = await freshStore();
    const { outbox, say, claims } = benchWith(store);
    say(() => code);
    expect(await outbox.enter(entry('a'))).toEqual({ how: 'kept' });
    expect(await outbox.replay()).toBe(rest);
    expect([await ids(store), claims]).toEqual([['a'], []]);
  });

  it('lets nobody stand and wait longer than the patience is, and takes the answer when it comes', async () => {
    const store = await freshStore();
    let arrive: (() => void) | undefined;
    const slow = new Promise<void>((resolve) => {
      arrive = resolve;
    });
    const { outbox } = benchWith(store, { send: () => slow, wait: () => Promise.resolve(undefined) });
    expect(await outbox.enter(entry('a'))).toEqual({ how: 'kept' });
    expect(await ids(store)).toEqual(['a']);
    arrive?.();
    await expect.poll(() => ids(store)).toEqual([]);
  });

  it('leaves to another tab what somebody waits for there, until they have waited long enough', async () => {
    const store = await freshStore();
    const there = { ...entry('a'), state: 'asked' as const, tab: 'another tab', until: 5_000 };
    await store.add(there);
    const early = benchWith(store, { now: () => 4_999 });
    expect(await early.outbox.replay()).toBe('other-tab');
    expect(early.sent).toEqual([]);
    const late = benchWith(store, { now: () => 5_000 });
    expect(await late.outbox.replay()).toBe('empty');
    expect(late.sent).toEqual(['a']);
  });

  it('sends each entry once where two replays begin together', async () => {
    const store = await freshStore();
    const { outbox, say, sent } = benchWith(store);
    say(() => 'silence');
    for (const id of ['a', 'b']) await outbox.enter(entry(id));
    say(() => 'yes');
    await Promise.all([outbox.replay(), outbox.replay()]);
    expect(sent).toEqual(['a', 'b']);
  });

  it('refuses an id that lies here already', async () => {
    const store = await freshStore();
    const { outbox, say } = benchWith(store);
    say(() => 'silence');
    await outbox.enter(entry('a'));
    await expect(outbox.enter(entry('a'))).rejects.toThrow();
    expect(await ids(store)).toEqual(['a']);
  });
});

describe('one after the other', () => {
  it('takes the browser’s locks where it has them', async () => {
    const asked: string[] = [];
    const locks = {
      request: (name: string, work: () => Promise<unknown>) => {
        asked.push(name);
        return work();
      },
    } as unknown as LockManager;
    expect(await makeRunAlone(locks)(async () => 7)).toBe(7);
    expect(asked).toEqual(['gramwright.outbox']);
  });

  it('goes on after a piece of work that broke', async () => {
    const alone = makeRunAlone(undefined);
    const broken = alone(() => Promise.reject(new Error('broke')));
    const next = alone(async () => 'next');
    await expect(broken).rejects.toThrow('broke');
    expect(await next).toBe('next');
  });
});
