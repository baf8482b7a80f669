import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Log, LoggedSeries } from '../../../src/log/log.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { type AgainstLog, againstLog } from '../../../src/studies/against/against-log.ts';
import type { HourlyRooms } from '../../../src/studies/against/hourly-rooms.ts';
import { simulatedHours } from '../../../src/studies/against/simulated-hours.ts';
import { type PlanRequest, runPlan } from '../../../src/studies/run-plan.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';

const text = readFileSync('weather/saltmere-typical.csv', 'utf8');
const weather = readWeather(text.replace('# typical: true\n', ''), 'weather.csv');
const scenario = readOnce(readFileSync('scenarios/flat.yaml', 'utf8'), 'flat.yaml');
const plan = preparePlan(scenario, { plan: null, set: [], files: new Map() });
const start = Date.UTC(2023, 1, 1) / 1000;
const hours = 240;
const request: PlanRequest = { plan, weather, period: { start, hours } };

describe('a log that the simulation itself made', () => {
  let made: HourlyRooms;
  let outcome: ReturnType<typeof runPlan>;
  beforeAll(() => {
    const watch = simulatedHours(plan.home, hours);
    outcome = runPlan(request, [watch.observe]);
    made = watch.result();
  });

  /** Means of each hour as a meter would stamp them, so that the hours of the log are those of the run. */
  const logOf = (change: (quantity: string, value: number, h: number) => number): Log => {
    const series = plan.home.rooms.flatMap((room, i) =>
      ['temperature', 'relative humidity', 'co2'].map((quantity): LoggedSeries => {
        const { values } = made.rooms[i]!.columns.get(quantity)!;
        return {
          ...{ quantity, place: 'room', room: room.name, device: null, reading: 'mean' },
          times: Float64Array.from({ length: hours + 1 }, (_, h) => start + h * 3600),
          values: Float64Array.from({ length: hours + 1 }, (_, h) =>
            h === 0 ? Number.NaN : change(quantity, values[h - 1]!, h - 1),
          ),
          from: 'test',
        };
      }),
    );
    return { series, start, end: start + hours * 3600 };
  };
  const against = (log: Log): AgainstLog =>
    againstLog(request, log, { log: 'a.csv', weather: 'w.csv' }, []).against;

  test('fits to rounding, and with full skill', () => {
    const { misfits, period } = against(logOf((_, value) => value));
    expect(period.hours).toBe(hours);
    expect(misfits.filter(({ quantity }) => quantity === 'temperature')).toHaveLength(3);
    expect(misfits.filter(({ quantity }) => quantity === 'vapour excess')).toHaveLength(3);
    for (const { quantity, bias, rmse, skill } of misfits) {
      // Vapour of hourly means is not quite the hour's mean vapour; everything else is the same number.
      expect(Math.abs(bias)).toBeLessThan(quantity === 'vapour excess' ? 0.05 : 1e-9);
      expect(rmse).toBeLessThan(quantity === 'vapour excess' ? 0.2 : 1e-9);
      expect(skill.mean).toBeGreaterThan(0.9);
    }
  });

  test('its figures are those of the run, but for temperatures of the air', () => {
    const { rooms } = against(logOf((_, value) => value));
    for (const { name } of plan.home.rooms) {
      const { logged, simulated } = rooms[name]!;
      expect(logged.hours).toBe(hours);
      expect(simulated.cold_spot_hours_above_80_pct).toBe(
        outcome.measures.rooms[name]!.cold_spot_hours_above_80_pct,
      );
      // Hours are means of six steps, added up in another order.
      expect(simulated.mould_index_peak).toBeCloseTo(
        outcome.measures.rooms[name]!.mould_index_peak,
        12,
      );
      expect(logged.too_cold_hours).toBe(simulated.too_cold_hours);
    }
  });

  test('a sensor that reads 1 K low makes the run 1 K warm', () => {
    const { misfits, rooms } = against(logOf((q, v) => (q === 'temperature' ? v - 1 : v)));
    for (const { quantity, bias, rmse } of misfits) {
      if (quantity !== 'temperature') continue;
      expect(bias).toBeCloseTo(1, 9);
      expect(rmse).toBeCloseTo(1, 9);
    }
    const { logged, simulated } = rooms['bedroom']!;
    expect(logged.too_cold_hours).toBeGreaterThan(simulated.too_cold_hours);
  });

  test('nothing is counted in a gap', () => {
    const { misfits, rooms } = against(
      logOf((_, value, h) => (h >= 50 && h < 150 ? Number.NaN : value)),
    );
    expect(misfits.every((misfit) => misfit.hours === 140)).toBe(true);
    expect(rooms['bedroom']!.logged.hours).toBe(140);
    expect(rooms['bedroom']!.simulated.too_cold_hours).toBeLessThanOrEqual(140);
  });
});

describe('what cannot be compared is told', () => {
  const one = (room: string, from: number): Log => {
    const times = Float64Array.from({ length: 100 }, (_, h) => from + h * 3600);
    const values = times.map((_, h) => 20 + (h % 2));
    const series: LoggedSeries = {
      ...{ quantity: 'temperature', place: 'room', room, device: null, reading: 'instant' },
      ...{ times, values, from: 'test' },
    };
    return { series: [series], start: from, end: times.at(-1)! };
  };
  const names = { log: 'a.csv', weather: 'w.csv' };

  test('a log of another time than the weather', () => {
    expect(() =>
      againstLog(request, one('bedroom', Date.UTC(2025, 0, 1) / 1000), names, []),
    ).toThrow(
      "w.csv: period: expected a day or more of the log's time, 2025-01-01T00:00Z to 2025-01-05T03:00Z, " +
        'got 2023-02-01T00:00Z to 2023-02-11T00:00Z (give the weather of those days with --weather, and see "period" of the scenario)',
    );
  });

  test('weather of a typical year', () => {
    const typical = { ...request, weather: readWeather(text, 'weather.csv') };
    const log = one('bedroom', Date.UTC(2025, 0, 1) / 1000);
    expect(() => againstLog(typical, log, names, [])).toThrow(
      "w.csv: expected the weather of the log's own days, 2025-01-01T00:00Z to 2025-01-05T03:00Z, got a " +
        'typical year (Saltmere, invented typical year) (give the weather that was measured with --weather)',
    );
  });

  test('no room of the home', () => {
    expect(() => againstLog(request, one('attic', start), names, [])).toThrow(
      'a.csv: rooms: expected temperature, humidity or air of a room of the home (living, bedroom, bathroom) in those hours, ' +
        'got temperature of attic (say which column is of which room under "log: readings:" of the scenario)',
    );
  });
});
