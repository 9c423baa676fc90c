import { describe, expect, it } from 'vitest';
import { routes } from '../../contract/index.ts';
import { wayOf } from './way-of.ts';

const HOME = 'https://workshop.test:4717';
const way = (path: string, more: { method?: string; mode?: string } = {}) =>
  wayOf({ method: 'GET', mode: 'cors', url: new URL(path, HOME).href, ...more }, HOME);

describe('what becomes of a request while the workshop may be silent', () => {
  /** As the table of routes has it: an address that is moved there is not kept any more, and this says so. */
  const addressOf = (route: { readonly path: string }) => route.path.replaceAll(/:\w+/g, 'a-1');

  it.each([routes.getWorkshop, routes.listBatches, routes.getBatch, routes.listRuns, routes.getRun])(
    '$path is known, and kept for the bench',
    (route) => {
      expect(way(addressOf(route))).toBe('known');
    },
  );

  it('keeps the photographs of steps, wherever their address leads', () => {
    expect(way(addressOf(routes.getAttachment))).toBe('picture');
    expect(way(addressOf(routes.getAttachment), { mode: 'navigate' })).toBe('pass');
  });

  it.each([
    '/api/customers',
    '/api/orders',
    '/api/morning',
    '/api/live',
    '/api/door',
    '/api/filling-runs/r-1/cost',
    '/api/batches/b-1/sheet.pdf',
    '/api/batches/b-1/additions',
    '/api/workshop?anything=else',
    '/api/workshop/begin',
  ])('%s is nobody’s to keep', (path) => {
    expect(way(path)).toBe('pass');
  });

  it('keeps nothing that is written, nothing of another site and no paper in a tab of its own', () => {
    expect(way('/api/batches', { method: 'POST' })).toBe('pass');
    expect(way('https://elsewhere.test/api/batches')).toBe('pass');
    expect(way('/api/batches/b-1', { mode: 'navigate' })).toBe('pass');
    expect(way('/', { method: 'POST', mode: 'navigate' })).toBe('pass');
  });

  it('opens any page, and takes files by whether their name changes with them', () => {
    expect(way('/making/b-1', { mode: 'navigate' })).toBe('page');
    expect(way('/assets/index-a1B2c3D4.js')).toBe('hashed');
    expect(way('/first.js')).toBe('file');
  });
});
