import { expect, test } from 'vitest';
import { dampestRoom } from '../../../src/studies/proposals/dampest-room.ts';
import { type RoomFigures, somePlan } from '../some-plan.ts';

const spots = (cold_spot_hours_above_80_pct: number): RoomFigures => ({
  over: { cold_spot_hours_above_80_pct },
});

test.each<[string, RoomFigures, RoomFigures]>([
  ['cold spots first', spots(10), { outside: { humidity_high: 5000 } }],
  [
    'among equals, hours above the band',
    { outside: { humidity_high: 9 } },
    { outside: { humidity_high: 8 } },
  ],
  [
    'then the mean',
    { over: { mean_relative_humidity_pct: 61 } },
    { over: { mean_relative_humidity_pct: 60 } },
  ],
  ['of rooms that somebody uses', spots(1), { over: { ...spots(900).over, occupied_hours: 0 } }],
])('%s', (_, damper, other) => {
  expect(dampestRoom(somePlan('x', { den: damper, bath: other }))).toBe('den');
  expect(dampestRoom(somePlan('x', { den: other, bath: damper }))).toBe('bath');
});

test('none where nobody is in any room', () => {
  const empty: RoomFigures = { over: { occupied_hours: 0 } };
  expect(dampestRoom(somePlan('x', { den: empty, bath: empty }))).toBeNull();
});
