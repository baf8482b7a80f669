import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { likelyColdSpot } from '../../../../src/scenario/presets/rooms.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';

/** Where the panes of each room look that does not say. [deg] */
function facing(rooms: readonly string[]): Record<string, number> {
  const list = rooms.map((name) => `${name}: { floor area: 14 }`).join(', ');
  const site = 'latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London';
  const text = `title: Test\nweather: w.csv\nsite: { ${site} }\nhome: { rooms: { ${list} } }
plans: { now: { change: {} } }`;
  const scenario = readScenario(text, 'h.yaml');
  const { home } = preparePlan(scenario, { plan: 'now', set: [], files: new Map() });
  return Object.fromEntries(
    home.panes.map(({ room, azimuth }) => [home.rooms[room]!.name, azimuth]),
  );
}

describe('where rooms look that do not say', () => {
  test('living room and first bedroom to the front where others look to the back', () => {
    const home = facing(['living', 'bedroom', 'kitchen', 'child bedroom']);
    expect(home).toMatchObject({ living: 180, bedroom: 180, kitchen: 0, 'child bedroom': 0 });
  });

  test('a home of two rooms has one on either side, in whatever order they stand', () => {
    const home = { living: 180, bedroom: 0 };
    expect(facing(['living', 'bedroom'])).toMatchObject(home);
    expect(facing(['bedroom', 'living'])).toMatchObject(home);
  });
});

describe('the cold spot of walls that nobody looked at', () => {
  test('is as good, middling and poor as the words where their walls are', () => {
    expect([0.25, 0.45, 0.85, 1.3, 2.1].map((u) => likelyColdSpot(u).value)).toEqual([
      0.85, 0.85, 0.75, 0.65, 0.65,
    ]);
    expect(likelyColdSpot(0.85)).toMatchObject({ low: 0.7, high: 0.8 });
  });

  test('never jumps, and is never better for a worse wall', () => {
    for (let u = 0.1; u < 2.5; u += 0.01) {
      const step = likelyColdSpot(u).value - likelyColdSpot(u + 0.01).value;
      expect(step).toBeGreaterThanOrEqual(0);
      expect(step).toBeLessThan(0.004);
    }
  });
});
