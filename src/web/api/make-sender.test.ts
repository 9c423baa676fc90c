import { describe, expect, it } from 'vitest';
import type { Stamp } from '../../contract/index.ts';
import { problem } from '../../core/problem.ts';
import { ApiProblem } from './api-problem.ts';
import { makeSender, type Stamped } from './make-sender.ts';

const silence = () => new ApiProblem([problem('workshop-not-reached', '/api/x')], false);
const refusal = () => new ApiProblem([problem('lot-overdrawn', 'quantity')], true);

/** A workshop that answers as the script says; what it heard is kept. */
function scripted(...answers: ('ok' | Error)[]) {
  const heard: { id: string; grams: unknown }[] = [];
  let made = 0;
  const sendEntry = makeSender<string>({
    stamp: async (): Promise<Stamp> => {
      made += 1;
      return { id: `stamp-${made}`, at: '2027-02-03T09:00:00Z', by: 'p1', device: 'bench' };
    },
    send: async ({ body }: Stamped) => {
      heard.push({ id: body.stamp.id, grams: (body as unknown as { grams: unknown }).grams });
      const answer = answers.shift();
      if (answer instanceof Error) throw answer;
      return 'done';
    },
  });
  const enter = (grams: string) => sendEntry({ body: { grams } });
  const codeOf = (grams: string) => enter(grams).catch((error: unknown) => (error as Error).message);
  return { enter, codeOf, heard };
}

describe('makeSender', () => {
  it('gives each acknowledged entry a stamp of its own', async () => {
    const { enter, heard } = scripted('ok', 'ok');
    await enter('10');
    await enter('10');
    expect(heard.map(({ id }) => id)).toEqual(['stamp-1', 'stamp-2']);
  });

  it('keeps the stamp of an entry that nobody acknowledged', async () => {
    const { enter, codeOf, heard } = scripted(silence(), silence(), 'ok');
    expect(await codeOf('10')).toBe('workshop-not-reached');
    expect(await codeOf('10')).toBe('workshop-not-reached');
    expect(await enter('10')).toBe('done');
    expect(heard.map(({ id }) => id)).toEqual(['stamp-1', 'stamp-1', 'stamp-1']);
  });

  it('gives a new stamp after a refusal, since nothing was written', async () => {
    const { enter, codeOf, heard } = scripted(refusal(), 'ok');
    expect(await codeOf('10')).toBe('lot-overdrawn');
    await enter('9');
    expect(heard.map(({ id }) => id)).toEqual(['stamp-1', 'stamp-2']);
  });

  it('settles the earlier entry first when the person changed it, and says that it had arrived', async () => {
    const { codeOf, heard } = scripted(silence(), 'ok');
    await codeOf('10');
    expect(await codeOf('12')).toBe('earlier-entry-arrived');
    expect(heard).toEqual([
      { id: 'stamp-1', grams: '10' },
      { id: 'stamp-1', grams: '10' },
    ]);
  });

  it('sends the changed entry when the earlier one turns out refused', async () => {
    const { enter, codeOf, heard } = scripted(silence(), refusal(), 'ok');
    await codeOf('10');
    expect(await enter('9')).toBe('done');
    expect(heard.map(({ id, grams }) => `${id} ${grams}`)).toEqual(['stamp-1 10', 'stamp-1 10', 'stamp-2 9']);
  });

  it('keeps the earlier entry in hand while the network stays down, whatever was changed', async () => {
    const { codeOf, heard } = scripted(silence(), silence(), 'ok');
    await codeOf('10');
    expect(await codeOf('12')).toBe('workshop-not-reached');
    expect(await codeOf('10')).toBe('done');
    expect(heard.every(({ id, grams }) => id === 'stamp-1' && grams === '10')).toBe(true);
  });
});
