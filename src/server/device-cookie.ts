import type { Context as HonoContext } from 'hono';

/** `__Host-`: a browser takes it over https only, for this host alone, and for all of its paths (RFC 6265bis, 4.1.3.2). */
export const DEVICE_COOKIE = '__Host-gramwright-device';
/** As long as browsers keep one, 400 days (RFC 6265bis, 5.5); it is given again whenever the pages are opened. */
const SECONDS = 400 * 24 * 60 * 60;

/** No script reads it, and no page of another site sends it along. */
export const deviceCookie = (token: string): string =>
  `${DEVICE_COOKIE}=${token}; Max-Age=${SECONDS}; Path=/; Secure; HttpOnly; SameSite=Strict`;

export function readDeviceCookie({ req }: HonoContext): string | undefined {
  const pairs = (req.header('cookie') ?? '').split(';').map((pair) => pair.trim().split('='));
  return pairs.find(([name]) => name === DEVICE_COOKIE)?.[1];
}
