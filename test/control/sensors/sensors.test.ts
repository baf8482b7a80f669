import { expect, test } from 'vitest';
import {
  type Condition,
  PERFECT_SENSOR,
  type Quantity,
  type Sensor,
} from '../../../src/control/automation.ts';
import { createMoment, turnTo } from '../../../src/control/control-context.ts';
import { createObservation, type Observation } from '../../../src/control/observations.ts';
import { createSensors, type Sensors } from '../../../src/control/sensors/sensors.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { quietHousehold } from '../../engine/homes.ts';
import { compare } from '../../reference/compare.ts';
import { AHEAD } from '../../units/summer-time.ts';
import { condition, HOME, MONDAY } from '../rehearse.ts';

interface Script {
  readonly steps?: number;
  readonly dt?: number;
  readonly seed?: number;
  readonly start?: number;
  readonly see?: (observed: Observation, step: number) => void;
}

/** What sensors report at each of some steps, not rounded. [step][condition] */
function readings(conditions: readonly Condition[], script: Script): number[][] {
  return watched(conditions, script, ({ of }) => of.map(({ reading }) => reading));
}

/** Which conditions are met at each of some steps. [step][condition] */
function verdicts(conditions: readonly Condition[], script: Script): number[][] {
  return watched(conditions, script, ({ met }) => [...met]);
}

function watched(
  conditions: readonly Condition[],
  { steps = 1, dt = 600, seed = 1, start = MONDAY, see = () => {} }: Script,
  tell: (sensors: Sensors) => number[],
): number[][] {
  const household = quietHousehold(HOME, { clock: AHEAD });
  const moment = createMoment(household);
  const presence = {
    present: Uint8Array.of(0, 1),
    anyone: true,
    someoneHome: true,
    awakeHome: true,
  };
  const windows = { open: Uint8Array.of(0, 0), readOpen: Uint8Array.of(1, 0) };
  const around = { home: HOME, household, dt, moment, presence, windows };
  const sensors = createSensors(conditions, around, seed);
  const observed = createObservation(2, 2, 2);
  observed.outdoor.set([5, 80, 5.4]);
  return Array.from({ length: steps }, (_, s) => {
    see(observed, s);
    turnTo(moment, moment.day, s, start, dt, observed);
    sensors.read();
    return tell(sensors);
  });
}

const one = (sensor: Partial<Sensor>): Condition =>
  condition('temperature', 'above', 0, { sensor: { ...PERFECT_SENSOR, ...sensor } });
const ramp = (observed: Observation, s: number): void => {
  observed.temperature[0] = 20 + 0.07 * s;
};

test('a perfect sensor tells the truth at once', () => {
  const told = readings([one({})], { steps: 5, see: ramp });
  expect(told.flat()).toEqual([20, 20.07, 20.14, 20.21, 20.28]);
});

test('bias is added, and readings are rounded after it', () => {
  // 18.7, 18.77, 18.84, 18.91 and 18.98 round to 18.5 and then to 19.
  const sensor = { ...PERFECT_SENSOR, bias: -1.3, step: 0.5 };
  const conditions = (['above', 'below'] as const).flatMap((is) =>
    [18.49, 18.5, 18.51, 18.99, 19, 19.01].map((value) =>
      condition('temperature', is, value, { sensor }),
    ),
  );
  const at18 = [1, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1];
  const at19 = [1, 1, 1, 1, 0, 0, 0, 0, 0, 0, 0, 1];
  expect(verdicts(conditions, { steps: 5, see: ramp })).toEqual([at18, at19, at19, at19, at19]);
});

test('a condition holds from its edge until it is clear again, either way up', () => {
  const up = condition('temperature', 'above', 22, { clear: 20 });
  const down = condition('temperature', 'below', 20, { clear: 22 });
  const swing = [21, 22, 22.1, 20.1, 20, 19.9, 21.9, 22, 23];
  const see = (observed: Observation, s: number): void => {
    observed.temperature[0] = swing[s]!;
  };
  expect(verdicts([up, down], { steps: swing.length, see })).toEqual([
    [0, 0],
    [0, 0],
    [1, 0],
    [1, 0],
    [0, 0],
    [0, 1],
    [0, 1],
    [0, 0],
    [1, 0],
  ]);
});

test('noise that is left out could not have turned a condition', () => {
  const sensor = { ...PERFECT_SENSOR, noise: 0.4, step: 0.5 };
  const levels = [17, 18.25, 19, 19.5, 20, 20.5, 22, 25];
  const conditions = levels.map((value, k) =>
    condition('temperature', k % 2 === 0 ? 'above' : 'below', value, {
      clear: value + (k % 2 === 0 ? -0.6 : 0.6),
      sensor,
    }),
  );
  // A condition that is met half the time, so that the noise is drawn at every step.
  const coin = condition('temperature', 'above', 20, { sensor });
  const see = (observed: Observation, s: number): void => {
    observed.temperature[0] = 20 + 4 * Math.sin(s / 7);
  };
  const alone = conditions.map((one) => verdicts([one], { steps: 500, see }).flat());
  const together = verdicts([...conditions, coin], { steps: 500, see });
  conditions.forEach((_, k) => {
    expect(together.map((row) => row[k])).toEqual(alone[k]);
  });
});

test('a reading stands until the next report is due', () => {
  const told = readings([one({ every: 1500 })], { steps: 7, see: ramp });
  const at = [0, 0, 0, 3, 3, 3, 6].map((s) => 20 + 0.07 * s);
  expect(told.flat()).toEqual(at);
});

test('a lag answers a jump as a first-order store does', () => {
  const jump = (observed: Observation, s: number): void => {
    observed.temperature[0] = s === 0 ? 0 : 1;
  };
  const told = readings([one({ lag: 900 })], { steps: 4, dt: 300, see: jump }).flat();
  expect(told[0]).toBe(0);
  compare({
    topic: 'Control',
    what: 'reading one time constant after a jump of 1 K, first-order sensor',
    unit: 'K',
    source: 'solution of τ dy/dt = x − y',
    mark: 'closed form',
    expected: 1 - Math.exp(-1),
    got: told[3]!,
    tolerance: { relative: 1e-12 },
    because: 'exact for what is level within steps',
  });
});

test('noise has the mean and the spread it was given', () => {
  const n = 20_000;
  const told = readings([one({ noise: 0.5, bias: 2 })], { steps: n }).flat();
  const mean = told.reduce((sum, x) => sum + x, 0) / n;
  const spread = Math.sqrt(told.reduce((sum, x) => sum + (x - mean) ** 2, 0) / n);
  // Four standard errors of either.
  expect(Math.abs(mean - 2)).toBeLessThan((4 * 0.5) / Math.sqrt(n));
  expect(Math.abs(spread - 0.5)).toBeLessThan((4 * 0.5) / Math.sqrt(2 * n));
});

test('noise depends on seed and time, not on which other sensors there are', () => {
  const noisy = one({ noise: 1 });
  const other = condition('co2', 'above', 0, { sensor: { ...PERFECT_SENSOR, noise: 50 } });
  const alone = readings([noisy], { steps: 20 }).map(([first]) => first);
  expect(readings([noisy], { steps: 20 }).map(([first]) => first)).toEqual(alone);
  expect(readings([other, noisy], { steps: 20 }).map(([, second]) => second)).toEqual(alone);
  expect(readings([noisy], { steps: 20, seed: 2 }).map(([first]) => first)).not.toEqual(alone);
});

test('sensors of two rooms err each for itself', () => {
  const told = readings([one({ noise: 1 }), { ...one({ noise: 1 }), room: 1 }], { steps: 20 });
  for (const [den, bath] of told) expect(den).not.toBe(bath);
});

test('sensors of one room that measure different things err each for itself', () => {
  const noise = { sensor: { ...PERFECT_SENSOR, noise: 1 } };
  const both = [
    condition('temperature', 'above', 50, noise),
    condition('relative humidity', 'above', 50, noise),
  ];
  const see = (observed: Observation): void => {
    observed.temperature[0] = 50;
    observed.relativeHumidity[0] = 50;
  };
  for (const [warm, humid] of readings(both, { steps: 20, see })) expect(warm).not.toBe(humid);
});

test('two conditions on the same kind of sensor in one room read the same; other kinds do not', () => {
  const above = one({ noise: 1 });
  const below: Condition = { ...above, is: 'below', value: 18 };
  const finer = one({ noise: 1, step: 0.001 });
  for (const [a, b, c] of readings([above, below, finer], { steps: 20 })) {
    expect(a).toBe(b);
    expect(Math.abs(a! - c!)).toBeGreaterThan(0.001);
  }
});

function reads(
  quantity: Quantity,
  room: number,
  see: (observed: Observation) => void = () => {},
): number {
  return readings([condition(quantity, 'above', 0, { room })], { see })[0]![0]!;
}

test('quantities are those of the room, or of outdoors', () => {
  const set = (observed: Observation): void => {
    observed.relativeHumidity.set([50, 70]);
    observed.absoluteHumidity.set([8.6, 12]);
    observed.species[1]!.set([3, 14]);
    observed.outdoorSpecies.set([420, 9]);
  };
  expect(reads('relative humidity', 1, set)).toBe(70);
  expect(reads('relative humidity', -1, set)).toBe(80);
  expect(reads('temperature', -1, set)).toBe(5);
  expect(reads('absolute humidity', 1, set)).toBe(12);
  expect(reads('absolute humidity', -1, set)).toBe(5.4);
  expect(reads('humidity above outdoors', 1, set)).toBeCloseTo(6.6, 12);
  expect(reads('pm25', 1, set)).toBe(14);
  expect(reads('pm25', -1, set)).toBe(9);
  expect([reads('window', 0), reads('window', 1), reads('window', -1)]).toEqual([1, 0, 1]);
  expect([reads('presence', 0), reads('presence', 1), reads('presence', -1)]).toEqual([0, 1, 1]);
});

test('the dew point is that of the water in the air, and dry air does not stop it', () => {
  for (const [t, dew] of [
    [20, 9.3],
    [5, -3],
  ] as const) {
    const got = reads('dew point', 0, (observed) => {
      observed.temperature[0] = t;
      observed.absoluteHumidity[0] = vapourDensity(saturationPressure(dew), t);
    });
    expect(got).toBeCloseTo(dew, 9);
  }
  expect(reads('dew point', 0, (observed) => observed.absoluteHumidity.fill(0))).toBeLessThan(-80);
});

test('a species the home does not carry reads as no number', () => {
  expect(reads('tvoc', 0)).toBeNaN();
});

test('the hour is local, of the middle of the step, and starts anew at midnight', () => {
  const hour = condition('hour', 'above', 0, { room: -1 });
  const winter = readings([hour], { steps: 24, dt: 3600 }).flat();
  expect(winter[0]).toBe(1.5);
  expect(winter.slice(21)).toEqual([22.5, 23.5, 0.5]);
  const noon = condition('hour since noon', 'above', 0, { room: -1 });
  const since = readings([noon], { steps: 24, dt: 3600 }).flat();
  expect([since[0], ...since.slice(9, 12), since[23]]).toEqual([13.5, 22.5, 23.5, 0.5, 12.5]);
  const summer = readings([hour], { start: Date.UTC(2023, 6, 3) / 1000, dt: 3600 });
  expect(summer[0]).toEqual([2.5]);
});
