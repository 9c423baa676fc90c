import type { Hono } from 'hono';
import { routes } from '../contract/index.ts';
import { problem, refused } from '../core/problem.ts';
import { hashDeviceToken, newDeviceToken } from '../machine/index.ts';
import { admitDevice, type Context, workshopZone } from '../work/index.ts';
import { answerProblems } from './answer.ts';
import { deviceCookie } from './device-cookie.ts';
import { askerOf } from './gate.ts';
import { readRequest } from './read-request.ts';

/** Answered here and not by a use-case alone: the secret goes into the cookie and nowhere else. */
export function addPairing(app: Hono, context: Context): void {
  const { method, path } = routes.pairDevice;
  app.on(method, path, async (http) => {
    const request = await readRequest(http, routes.pairDevice);
    if (!request.ok) return answerProblems(request.problems, 400);
    const { code, name } = request.value.body as { code: string; name: string };
    const token = newDeviceToken();
    const admitted = askerOf(http)
      ? await admitDevice(context, { code, name, tokenHash: hashDeviceToken(token) })
      : refused(problem('only-on-a-device', 'device'));
    if (!admitted.ok) return answerProblems(admitted.problems, 422, await workshopZone(context));
    return Response.json(admitted.value, { status: 201, headers: { 'set-cookie': deviceCookie(token) } });
  });
}
