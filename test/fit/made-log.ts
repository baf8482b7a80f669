import { mean } from 'simple-statistics';
import { simulate } from '../../src/engine/simulate.ts';
import type { Log, LoggedSeries } from '../../src/log/log.ts';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import type { Scenario } from '../../src/scenario/read-scenario.ts';
import { seededRandom, standardNormal } from '../../src/units/seeded-random.ts';
import type { Weather } from '../../src/weather/weather.ts';

/** How a log is made from a home whose values are known. */
export interface MadeLog {
  readonly scenario: Scenario;
  readonly files: ReadonlyMap<string, string>;
  readonly weather: Weather;
  /** Hidden values, as settings. */
  readonly truth: readonly string[];
  /** [s UTC] */
  readonly start: number;
  readonly days: number;
  /** Time between readings. [s] */
  readonly every: number;
  readonly rooms: readonly string[];
  readonly species?: readonly string[];
  /** A gas meter that counts so much besides heating, at all hours. [W] */
  readonly gasBeside?: number;
  /** A meter of the electricity that the heating draws, read every day. */
  readonly heatingMeter?: true;
  /** A device whose power is logged. */
  readonly device?: string;
  /** Standard deviation of sensors' errors, and how they hang together from hour to hour. */
  readonly noise: { readonly temperature: number; readonly humidity: number; readonly rho: number };
  readonly seed: number;
}

/** The log of an invented home: what sensors with autocorrelated errors read of a simulated truth. */
export function madeLog(made: MadeLog): Log {
  const { scenario, files, weather, truth, start, days, every, noise } = made;
  const plan = preparePlan(scenario, { plan: scenario.plans[0]!.name, set: truth, files });
  const { home, household, automation, dt } = plan;
  const steps = (days * 86_400) / dt;
  const temperature = home.rooms.map(() => new Float64Array(steps));
  const humidity = home.rooms.map(() => new Float64Array(steps));
  const gas = new Float64Array(steps);
  const power = new Float64Array(steps);
  const device = home.devices.findIndex(({ name }) => name === made.device);
  const levels = home.species.map(() => home.rooms.map(() => new Float64Array(steps)));
  simulate({ home, household, automation, weather, dt, start, hours: days * 24, spinUpDays: 30 }, [
    ({ firstStep, steps: many, rooms, room, home: whole }) => {
      for (let s = 0; s < many; s++) {
        gas[firstStep + s] = (whole.sourceFuel[0]?.[s] ?? 0) + (made.gasBeside ?? 0);
        power[firstStep + s] = whole.devices[device]?.electricity[s] ?? 0;
        for (let i = 0; i < rooms; i++) {
          const k = s * rooms + i;
          temperature[i]![firstStep + s] = room.airTemperature[k]!;
          humidity[i]![firstStep + s] = room.relativeHumidity[k]!;
          levels.forEach((each, q) => {
            each[i]![firstStep + s] = room.species[q]![k]!;
          });
        }
      }
    },
  ]);
  const random = seededRandom(made.seed);
  const stride = every / dt;
  const rho = noise.rho ** (every / 3600);
  const series = (
    quantity: string,
    room: string,
    values: Float64Array,
    sd: number,
    most = Number.POSITIVE_INFINITY,
  ): LoggedSeries => {
    const count = Math.floor(values.length / stride);
    let error = sd * standardNormal(random);
    const readings = Float64Array.from({ length: count }, (_, n) => {
      if (n > 0) error = rho * error + sd * Math.sqrt(1 - rho * rho) * standardNormal(random);
      // What it was between two steps, whose means these are.
      const before = values[Math.max(0, n * stride - 1)]!;
      return Math.min(most, (before + values[n * stride]!) / 2 + error);
    });
    const times = Float64Array.from({ length: count }, (_, n) => start + n * every);
    const where = { place: 'room', room, device: null, reading: 'instant' } as const;
    return { quantity, ...where, times, values: readings, from: 'made' };
  };
  const all = made.rooms.flatMap((name) => {
    const i = home.rooms.findIndex((room) => room.name === name);
    return [
      series('temperature', name, temperature[i]!, noise.temperature),
      series('relative humidity', name, humidity[i]!, noise.humidity, 100),
      ...(made.species ?? []).map((one) => {
        const q = home.species.findIndex((s) => s.name === one);
        return series(one, name, levels[q]![i]!, 20);
      }),
    ];
  });
  const meters = [
    ...(made.gasBeside === undefined ? [] : [meter('gas', null, gas, start, dt, 86_400)]),
    ...(made.heatingMeter ? [meter('heating electricity', null, gas, start, dt, 86_400)] : []),
    ...(device < 0 ? [] : [meter('device power', made.device!, power, start, dt, every)]),
  ];
  return { series: [...all, ...meters], start, end: start + days * 86_400 };
}

/** Readings of a meter of the whole home or a device, as means between them. @param every  [s] */
function meter(
  quantity: string,
  device: string | null,
  power: Float64Array,
  start: number,
  dt: number,
  every: number,
): LoggedSeries {
  const many = every / dt;
  const values = Float64Array.from({ length: power.length / many + 1 }, (_, k) =>
    k === 0 ? Number.NaN : mean([...power.subarray((k - 1) * many, k * many)]),
  );
  const times = values.map((_, k) => start + k * every);
  const where = { place: 'home', room: null, device, reading: 'mean' } as const;
  return { quantity, ...where, times, values, from: `made, ${quantity}` };
}
