import { describe, expect, it } from 'vitest';
import type { KeptEntry } from '../../away/kept-entry.ts';
import type { Addition, Batch, Step } from './batch.ts';
import { projectKept } from './project-kept.ts';

/** What the projection looks at; whatever else a screen tells goes through as it is. */
const addition = (screen: number): Addition =>
  ({
    kind: 'addition',
    screen,
    position: screen,
    itemName: `Item ${screen}`,
    lotId: `lot-${screen}`,
    lotNumber: `L-${screen}`,
    targetGrams: '100',
    lowGrams: '98',
    highGrams: '102',
    entries: [],
    inGrams: '0',
    leftGrams: '100',
    done: null,
  }) as unknown as Addition;

const step = (screen: number): Step =>
  ({
    kind: 'step',
    screen,
    position: 0,
    what: 'Whip',
    begun: [],
    whipped: [],
    done: null,
  }) as unknown as Step;

const batchOf = (screens: Batch['screens'], more: Partial<Batch> = {}): Batch =>
  ({ id: 'b', screens, struck: [], deviations: [], spills: [], ...more }) as Batch;

let ids = 0;
const kept = (route: KeptEntry['route'], body: object, more: Partial<KeptEntry> = {}): KeptEntry => {
  ids += 1;
  const id = `kept-${ids}`;
  const at = '2026-11-26T10:03:00.000Z';
  const stamp = { id, at, by: 'ana', device: 'tablet' };
  const told = { state: 'waiting', tab: 't', until: 0 } as const;
  return { id, route, params: { id: 'b' }, body: { ...body, stamp }, at, ...told, ...more };
};
const weigh = (position: number, actualGrams: string, more: object = {}) =>
  kept('recordAddition', { position, lotId: `lot-${position}`, scaleId: null, actualGrams, ...more });

const nameOf = (id: string) => (id === 'ana' ? 'Ana' : '');
const project = (batch: Batch, ...entries: KeptEntry[]) => projectKept(batch, entries, nameOf);
const screenAt = (batch: Batch, index: number) => batch.screens[index] as Addition;

describe('a batch with what lies on this tablet', () => {
  it('is done where it was weighed here, marked so, with who and when', () => {
    const entry = weigh(0, '101');
    const { done, isKept, leftGrams } = screenAt(project(batchOf([addition(0), addition(1)]), entry), 0);
    expect([isKept, leftGrams]).toEqual([true, '0']);
    expect(done).toEqual({
      entryId: entry.id,
      lotId: 'lot-0',
      lotNumber: 'L-0',
      askedGrams: '100',
      actualGrams: '101',
      at: '2026-11-26T10:03:00.000Z',
      by: 'Ana',
      verdict: 'inside',
      isPart: false,
      substitute: null,
      scaleName: null,
      reading: null,
    });
  });

  it.each([
    ['97.999999', 'low'],
    ['98', 'inside'],
    ['102', 'inside'],
    ['102.000001', 'high'],
  ])('judges %s g as the workshop will', (grams, verdict) => {
    expect(screenAt(project(batchOf([addition(0)]), weigh(0, grams)), 0).done?.verdict).toBe(verdict);
  });

  it('stays open after a part, and is done with the sum once the last one is in', () => {
    const part = project(batchOf([addition(0)]), weigh(0, '60.1', { isPart: true }));
    expect(screenAt(part, 0)).toMatchObject({ inGrams: '60.1', leftGrams: '39.9', done: null });
    const whole = project(batchOf([addition(0)]), weigh(0, '60.1', { isPart: true }), weigh(0, '40.2'));
    expect(screenAt(whole, 0).entries.map(({ actualGrams }) => actualGrams)).toEqual(['60.1', '40.2']);
    expect(screenAt(whole, 0).done).toMatchObject({ actualGrams: '100.3', verdict: 'inside' });
  });

  it('is open again where an entry of the workshop, or one made here, was struck here', () => {
    const entry = weigh(0, '101');
    const strike = kept('strikeAddition', { entryId: entry.id, reason: 'Slip.' });
    expect(screenAt(project(batchOf([addition(0)]), entry, strike), 0)).toMatchObject({
      done: null,
      inGrams: '0',
      leftGrams: '100',
      entries: [],
    });
  });

  it('is open again where the part before the last weighing was struck here', () => {
    const part = weigh(0, '60', { isPart: true });
    const strike = kept('strikeAddition', { entryId: part.id, reason: 'Slip.' });
    const struck = screenAt(project(batchOf([addition(0)]), part, weigh(0, '40'), strike), 0);
    expect(struck).toMatchObject({ done: null, inGrams: '40', leftGrams: '60' });
  });

  it('is open again where what was entered was spilt before it went in, and tells what was spilt', () => {
    const entry = weigh(0, '101');
    const spill = kept('recordSpill', {
      position: 0,
      lotId: 'lot-0',
      grams: '101',
      reason: 'Knocked over',
      entryId: entry.id,
    });
    const spilt = project(batchOf([addition(0)]), entry, spill);
    expect(screenAt(spilt, 0)).toMatchObject({ done: null, inGrams: '0', leftGrams: '100', isKept: true });
    expect(spilt.spills).toMatchObject([{ screen: 0, grams: '101', lotNumber: 'L-0', by: 'Ana' }]);
    expect(project(spilt, spill).spills).toHaveLength(1);
    const strike = kept('strikeAddition', { entryId: spill.id, reason: 'It was 1.01 g.' });
    expect(project(spilt, strike).spills).toEqual([]);
  });

  it('leaves what is in where only what was on its way was spilt', () => {
    const body = { position: 0, lotId: 'other', grams: '5', reason: 'Knocked over', entryId: null };
    const spilt = project(batchOf([addition(0)]), weigh(0, '101'), kept('recordSpill', body));
    expect(screenAt(spilt, 0).done).toMatchObject({ actualGrams: '101' });
    expect(spilt.spills).toMatchObject([{ grams: '5', lotNumber: '' }]);
  });

  it('shows a step that was begun, whipped in a round and done here, and what was done differently', () => {
    const begin = kept('beginStep', { position: 0 });
    const round = kept('recordRound', {
      position: 0,
      load: 1,
      round: 1,
      minutes: '3',
      looked: 'soft-peaks',
      goes: 'on',
      celsius: null,
    });
    const done = kept('recordStep', { position: 0, celsius: '21', minutes: '6', remark: 'Pale.' });
    const said = kept('recordDeviation', { screen: 0, what: 'Radio on', why: 'Rain' });
    const batch = project(batchOf([step(0)]), begin, round, done, said);
    expect(batch.screens[0]).toMatchObject({
      isKept: true,
      begun: [{ entryId: begin.id, load: 1, round: 1, by: 'Ana' }],
      whipped: [{ entryId: round.id, looked: 'soft-peaks', cups: [], remark: '' }],
      done: { entryId: done.id, celsius: '21', weighed: null },
    });
    expect(batch.deviations).toMatchObject([{ what: 'Radio on', by: 'Ana' }]);
  });

  it('counts once what the workshop tells of already: its answer was lost, and not the entry', () => {
    const entry = weigh(0, '101');
    const once = project(batchOf([addition(0)]), entry);
    expect(project(once, entry)).toEqual(once);
  });

  it('leaves struck what was struck at the workshop since', () => {
    const entry = weigh(0, '101');
    const struck = [{ entryId: entry.id }] as unknown as Batch['struck'];
    expect(screenAt(project(batchOf([addition(0)], { struck }), entry), 0).done).toBeNull();
  });

  it('changes nothing of another batch, and nothing where it knows no way to show it', () => {
    const batch = batchOf([addition(0)]);
    expect(project(batch, { ...weigh(0, '101'), params: { id: 'other' } })).toEqual(batch);
    expect(project(batch, kept('recordFill', { grossGrams: '46' }))).toEqual(batch);
    expect(project(batch)).toBe(batch);
  });
});
