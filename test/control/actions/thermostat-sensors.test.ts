import { expect, test } from 'vitest';
import { always, quietHousehold } from '../../engine/homes.ts';
import { type MadeRoom, underThermostat } from '../made-room.ts';
import { HOME } from '../people.ts';

const steady = quietHousehold(HOME, { setpoints: [always(18), always(20)] });
const room: MadeRoom = { outdoors: 5, heated: 45, timeConstant: 20 * 3600, begin: 18 };

test('a sensor that reads too much holds the room so much cooler, off stays off', () => {
  const { setpoints, temperatures } = underThermostat({ bias: 1.5 }, steady, { room });
  expect(new Set(setpoints)).toEqual(new Set([18.5]));
  expect(temperatures.at(-1)).toBeCloseTo(18.5, 9);
  const off = quietHousehold(HOME);
  expect(new Set(underThermostat({ bias: 1.5 }, off).setpoints)).toEqual(
    new Set([Number.NEGATIVE_INFINITY]),
  );
});

test('a valve that warms its own sensor and a proportional band make one band', () => {
  expect(new Set(underThermostat({}, steady).bands)).toEqual(new Set([0]));
  const both = { valveBias: 1.5, proportionalBand: 2 };
  expect(new Set(underThermostat(both, steady).bands)).toEqual(new Set([3.5]));
});

test('a deadband switches half below and half above the setting', () => {
  const deadband = 1;
  const { setpoints, temperatures, outputs } = underThermostat({ deadband }, steady, {
    room,
    dt: 60,
    days: 2,
  });
  expect(new Set(setpoints)).toEqual(new Set([19.5, 20.5]));
  const settled = temperatures.slice(temperatures.findIndex((t) => t >= 20.5 - 1e-9));
  expect(Math.min(...settled)).toBeCloseTo(19.5, 9);
  expect(Math.max(...settled)).toBeCloseTo(20.5, 9);
  // Full on until the upper edge: only the step that gets there, and the one held at the lower, are part.
  const starts = outputs.filter((out, s) => out > 0 && outputs[s - 1] === 0).length;
  const part = outputs.filter((out) => out > 0 && out < 0.999).length;
  expect(part).toBeLessThanOrEqual(2 * starts + 2);
  // Up one kelvin takes tau ln(25.5/24.5), down tau ln(15.5/14.5): so many switchings in 48 h.
  const cycle = 20 * (Math.log(25.5 / 24.5) + Math.log(15.5 / 14.5));
  expect(Math.abs(starts - 48 / cycle)).toBeLessThanOrEqual(2);
});

test('a wider deadband starts less often and wanders further', () => {
  const run = (deadband: number) => {
    const { outputs, temperatures } = underThermostat({ deadband }, steady, { room, days: 3 });
    const starts = outputs.filter((out, s) => s > 0 && out > 0 && outputs[s - 1] === 0).length;
    const late = temperatures.slice(144);
    return { starts, swing: Math.max(...late) - Math.min(...late) };
  };
  const [narrow, wide] = [run(0.5), run(2)];
  expect(wide.starts).toBeLessThan(narrow.starts);
  expect(wide.swing).toBeGreaterThan(narrow.swing);
  expect(wide.starts).toBeGreaterThan(0);
});

test('a valve that warms its own sensor switches off sooner', () => {
  const run = (valveBias: number) =>
    underThermostat({ deadband: 1, valveBias }, steady, { room, dt: 60, days: 2 }).temperatures;
  const late = (ts: number[]): number => Math.max(...ts.slice(1440));
  expect(late(run(0.8))).toBeLessThan(late(run(0)) - 0.1);
});

test('a deadband under a programme that is off never starts', () => {
  const off = quietHousehold(HOME);
  const { outputs } = underThermostat({ deadband: 1 }, off, { room });
  expect(Math.max(...outputs)).toBe(0);
});
