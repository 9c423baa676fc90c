import { describe, expect, it } from 'vitest';
import { closestFirst, type RoomLine, spanOfRoom } from './span-of-room.ts';

const bound = (percent: string) => ({
  percent,
  shownPercent: percent,
  grams: '1',
  isIncluded: true,
  says: { code: 'room-rise', parameters: {} },
});
const line = (name: string, percent: string, up: Partial<RoomLine['up']> = {}, down = up): RoomLine => ({
  name,
  percent,
  says: [],
  up: { label: null, report: null, limit: null, ...up },
  down: { label: null, report: null, limit: null, ...down },
});

describe('the span of a line', () => {
  it('goes from what breaks first below to what breaks first above', () => {
    const span = spanOfRoom(
      line('orange', '0.5', { label: bound('4'), report: bound('1') }, { label: bound('0') }),
    );
    expect(span).toMatchObject({ low: '0', high: '1', level: 0.5, highest: { percent: '1' } });
    expect(span).toMatchObject({ lowestKind: 'label', highestKind: 'report' });
  });

  it('is all or nothing where nothing known stops it', () => {
    expect(spanOfRoom(line('shea', '25', {}, {}))).toMatchObject({
      low: '0',
      high: '100',
      level: 0.25,
      highest: undefined,
      lowest: undefined,
    });
  });

  it('draws what stands at its bound at the end, never beyond', () => {
    expect(spanOfRoom(line('orange', '1', { limit: bound('1') }, {})).level).toBe(1);
    expect(spanOfRoom(line('orange', '1', { limit: bound('1') }, { label: bound('1') })).level).toBe(0.5);
    expect(spanOfRoom(line('orange', '1.001', { limit: bound('1') }, {})).level).toBe(1);
  });
});

describe('the lines in their order', () => {
  it('begin with the least room upward for its size; what nothing stops and then the largest come last', () => {
    const lines = [
      line('shea', '80', { label: bound('80.1') }, {}),
      line('wax', '5', {}, {}),
      line('starch', '4', { label: bound('8') }, {}),
      line('orange', '0.8', { report: bound('1') }, {}),
      line('nothing', '0', { limit: bound('1') }, {}),
    ];
    expect(closestFirst([])).toEqual([]);
    expect(closestFirst(lines).map(({ name }) => name)).toEqual([
      'orange',
      'starch',
      'wax',
      'nothing',
      'shea',
    ]);
  });
});
