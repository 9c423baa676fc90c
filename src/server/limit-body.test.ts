import { Hono } from 'hono';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { routes } from '../contract/index.ts';
import { limitBody } from './limit-body.ts';

const app = new Hono().use('/api/*', limitBody).all('*', (http) => http.text('let through'));

const send = (path: string, bytes: number) =>
  app.request(path.replace(/:\w+/g, 'x'), {
    method: 'POST',
    headers: { 'content-length': String(bytes) },
    body: 'x',
  });

/** The longest single text that a shape takes: where files come in, all but a few kilobytes of the body. */
function longestText(shape: unknown): number {
  if (typeof shape !== 'object' || shape === null) return 0;
  const own = 'maxLength' in shape && typeof shape.maxLength === 'number' ? shape.maxLength : 0;
  return Math.max(own, ...Object.values(shape).map(longestText));
}

const largest = Object.entries(routes).map(([name, { path, input }]) => {
  const shape = input && z.toJSONSchema(input, { io: 'input', unrepresentable: 'any' });
  return { name, path, bytes: longestText(shape) };
});

describe('the door for bodies', () => {
  it('takes the largest file that a route says it takes, with all that goes with it', async () => {
    const refused = await Promise.all(
      largest.map(async ({ name, path, bytes }) => ((await send(path, bytes + 20_000)).ok ? [] : [name])),
    );
    expect(refused.flat()).toEqual([]);
    expect(largest.filter(({ bytes }) => bytes > 1_000_000).length).toBeGreaterThan(3);
  });

  it('refuses what is larger, in megabytes', async () => {
    const refused = await send('/api/lots/x/certificates', 31 * 1024 * 1024);
    expect(refused.status).toBe(413);
    expect(await refused.json()).toMatchObject({ problems: [{ code: 'body-too-large', allowed: 30 }] });
    expect((await send('/api/orders', 1024 * 1024 + 1)).status).toBe(413);
    expect((await send('/api/orders', 1024 * 1024)).ok).toBe(true);
  });
});
