import { request } from 'node:http';
import { connect, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openTestWorkshop, type TestWorkshop } from '../../test/workshop/open-test-workshop.ts';
import { must } from '../core/problem.ts';
import { useCases } from '../work/index.ts';
import { createApp } from './create-app.ts';
import { type Listening, serve } from './serve.ts';

let bench: TestWorkshop;
let listening: Listening;

beforeAll(async () => {
  bench = await openTestWorkshop();
  const app = createApp({
    context: bench.context,
    useCases,
    version: '1',
    webFolder: join(tmpdir(), 'no-pages-here'),
    port: () => listening.port,
    log: { warn: () => undefined, error: () => undefined },
  });
  listening = must(await serve(app.fetch, 0));
});
afterAll(async () => {
  await listening.close();
  await bench.close();
});

/** The status of a request by whatever name. */
const statusFor = (host: string): Promise<number | undefined> =>
  new Promise((found, failed) => {
    request(
      { port: listening.port, host: '127.0.0.1', path: '/api/health', headers: { host } },
      (response) => {
        response.resume();
        found(response.statusCode);
      },
    )
      .once('error', failed)
      .end();
  });

describe('a server on a real port', () => {
  it('answers at its address, and takes an entry', async () => {
    expect((await fetch(`${listening.address}/api/health`)).status).toBe(200);
    const made = await fetch(`${listening.address}/api/people`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ stamp: bench.stamp(), name: 'Over the wire' }),
    });
    expect(made.status).toBe(201);
  });

  it('answers no foreign name', async () => {
    expect(await statusFor(`127.0.0.1:${listening.port}`)).toBe(200);
    expect(await statusFor('workshop.example')).toBe(403);
    expect(await statusFor(`workshop.example:${listening.port}`)).toBe(403);
  });

  it('listens on this computer only', async () => {
    const reached = await new Promise<boolean>((answer) => {
      // 127.0.0.2 is this computer too, by another address: only who listens on all of them would answer.
      const socket = connect(listening.port, '127.0.0.2');
      socket.once('connect', () => answer(true)).once('error', () => answer(false));
    });
    expect(reached).toBe(false);
  });

  it('whose port is taken says so, names it and another', async () => {
    const result = await serve(() => new Response(), listening.port);
    expect(result).toEqual({
      ok: false,
      problems: [
        { code: 'port-taken', where: 'port', found: `${listening.port}`, allowed: `${listening.port + 1}` },
      ],
    });
  });

  it('is told no as well where something else has the port', async () => {
    const other = createServer();
    const port = await new Promise<number>((found) => {
      other.listen(0, '127.0.0.1', () => found((other.address() as { port: number }).port));
    });
    expect(await serve(() => new Response(), port)).toMatchObject({ problems: [{ code: 'port-taken' }] });
    await new Promise((closed) => other.close(closed));
  });

  it('lets what is under way end before it closes', async () => {
    let finish: (response: Response) => void = () => undefined;
    const slow = must(
      await serve(
        () =>
          new Promise<Response>((answer) => {
            finish = answer;
          }),
        0,
      ),
    );
    const answer = fetch(slow.address, { headers: { connection: 'close' } });
    await new Promise((waited) => setTimeout(waited, 100));
    const closed = slow.close();
    finish(new Response('done'));
    expect(await (await answer).text()).toBe('done');
    await closed;
    await expect(fetch(slow.address)).rejects.toThrow();
  });
});
