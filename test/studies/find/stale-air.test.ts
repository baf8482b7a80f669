import { expect, test } from 'vitest';
import { stalestRoom } from '../../../src/studies/find/stale-air.ts';
import { someLevel, somePlan } from '../some-plan.ts';

const room = (hours: number, level: number) => ({
  occupied: { co2_high: hours },
  over: { species: { co2: someLevel(level) } },
});

test('air is stalest where it stands above its band longest with somebody in', () => {
  const plan = somePlan('p', { den: room(10, 900), bath: room(20, 700) });
  expect(stalestRoom(plan)).toBe('bath');
});

test('where it never does, in the room with most carbon dioxide, whatever stands first', () => {
  const plan = somePlan('p', { den: room(0, 500), bath: room(0, 800) });
  expect(stalestRoom(plan)).toBe('bath');
});
