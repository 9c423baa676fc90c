import { describe, expect, it } from 'vitest';
import { requestUrl } from './request-url.ts';

describe('requestUrl', () => {
  it('fills the parameters of the path in', () => {
    expect(requestUrl('getOrder', { params: { id: 'ab-1' } })).toBe('/api/orders/ab-1');
  });

  it('puts the query behind the path and leaves out what was not asked', () => {
    const url = requestUrl('checkRevision', {
      params: { id: 'r1' },
      query: { markets: 'GB', other: undefined },
    });
    expect(url).toBe('/api/revisions/r1/check?markets=GB');
  });

  it('escapes what would change the path or the query', () => {
    expect(requestUrl('getOrder', { params: { id: 'a/b' } })).toBe('/api/orders/a%2Fb');
    expect(requestUrl('findLots', { query: { like: 'a&b=c' } })).toBe('/api/lots?like=a%26b%3Dc');
  });

  it('throws where a parameter is missing, since that is a mistake of ours', () => {
    expect(() => requestUrl('getOrder')).toThrow('id');
  });
});
