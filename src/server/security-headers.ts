import type { MiddlewareHandler } from 'hono';

/** Everything comes from this server, pictures also from within a drawing; no other page may hold one of ours in a frame. */
const CONTENT_POLICY = [
  "default-src 'self'",
  "img-src 'self' data:",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'self'",
  "frame-ancestors 'none'",
].join('; ');

export const securityHeaders: MiddlewareHandler = async (http, next) => {
  await next();
  const set = (name: string, value: string): void => http.res.headers.set(name, value);
  set('content-security-policy', CONTENT_POLICY);
  set('x-content-type-options', 'nosniff');
  set('x-frame-options', 'DENY');
  set('referrer-policy', 'no-referrer');
  set('cross-origin-opener-policy', 'same-origin');
  set('cross-origin-resource-policy', 'same-origin');
  if (http.req.path.startsWith('/api')) set('cache-control', 'no-store');
};
