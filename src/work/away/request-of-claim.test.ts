import { describe, expect, it } from 'vitest';
import { explainRequest } from './request-of-claim.ts';

const stamp = { id: 's1', at: '2026-11-26T08:05:00Z', by: 'p1', device: 'tablet' };
const round = { load: 1, round: 1, looked: 'loose', goes: 'on', minutes: '2', celsius: null, cups: [] };
const told = { what: 'A round', why: 'It was so', at: null, by: 'p1', device: 'tablet' };

describe('a round of whipping that comes late', () => {
  it('carries the yes to what is asked about its cups', () => {
    const sure = ['cup-heavier-than-bowl', 'cup-density-unusual'];
    const request = { params: { id: 'b1' }, body: { position: 3, ...round, stamp } };
    const explained = explainRequest('recordRound', request, { ...told, sure });
    expect(explained).toMatchObject({ ok: true, value: { body: { sure } } });
    expect(explainRequest('recordRound', request, { ...told, sure: [] })).toMatchObject({
      value: { body: { sure: [] } },
    });
  });
});
