import { expect, test } from 'vitest';
import type { DeviceControl } from '../../../src/control/automation.ts';
import { always } from '../../engine/homes.ts';
import { control, rehearse } from '../rehearse.ts';

/** How long a device runs at full output in four weeks [h], and how often it starts. */
function ran(one: Partial<DeviceControl>, dt: number) {
  const { devices, report } = rehearse({
    ...{ dt, days: 28, automation: { deviceControls: [control(one)] } },
  });
  const hours = devices.reduce((sum, [share]) => sum + (share! * dt) / 3600, 0);
  return { hours, starts: report.devices[0]!.starts };
}

test('run and rest by turns come to the same in every step', () => {
  const timers = { mostRun: 15 * 60, leastRest: 45 * 60 };
  for (const dt of [1, 5, 10, 15, 20, 30, 60].map((minutes) => minutes * 60)) {
    const { hours, starts } = ran(timers, dt);
    expect(hours).toBeCloseTo(168, 6);
    expect(starts).toBe(28 * 24);
    // Several runs a step, and periods that fit no step.
    expect(ran({ mostRun: 240, leastRest: 120 }, dt).hours).toBeCloseTo(28 * 16, 6);
    const odd = ran({ mostRun: 17 * 60, leastRest: 6 * 60 }, dt);
    expect(Math.abs(odd.hours - (28 * 24 * 17) / 23)).toBeLessThan(17 / 60);
  }
});

test('at half output it runs as long', () => {
  const by = { kind: 'clock', schedule: always(0.5) } as const;
  for (const dt of [60, 600, 1200]) {
    expect(ran({ by, mostRun: 900, leastRest: 2700 }, dt).hours).toBeCloseTo(84, 6);
  }
});

test('without a least rest it rests for ten minutes after its longest run', () => {
  for (const dt of [60, 300, 600, 1200]) {
    expect(ran({ mostRun: 20 * 60 }, dt).hours).toBeCloseTo((28 * 24 * 2) / 3, 6);
  }
});

test('a longest run that is shorter than the least one wins', () => {
  const timers = { leastRun: 3600, mostRun: 900, leastRest: 2700 };
  for (const dt of [60, 600, 1200]) expect(ran(timers, dt).hours).toBeCloseTo(168, 6);
});
