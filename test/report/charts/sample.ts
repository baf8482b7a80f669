import type { Foreseen } from '../../../src/fit/withheld.ts';
import { dailyRanges } from '../../../src/measures/series/daily-ranges.ts';
import { againstChart } from '../../../src/report/charts/against-chart.ts';
import { airChart } from '../../../src/report/charts/air-chart.ts';
import { alertsChart } from '../../../src/report/charts/alerts-chart.ts';
import { calendarChart } from '../../../src/report/charts/calendar-chart.ts';
import type { Chart } from '../../../src/report/charts/chart.ts';
import { coldSpotChart } from '../../../src/report/charts/cold-spot-chart.ts';
import { cumulativeMoneyChart } from '../../../src/report/charts/cumulative-money-chart.ts';
import { doubtChart } from '../../../src/report/charts/doubt-chart.ts';
import { drawsChart } from '../../../src/report/charts/draws-chart.ts';
import { foreseenChart } from '../../../src/report/charts/foreseen-chart.ts';
import { frontierChart } from '../../../src/report/charts/frontier-chart.ts';
import { heatChart } from '../../../src/report/charts/heat-chart.ts';
import { hoursOutside } from '../../../src/report/charts/hours-outside.ts';
import { monthlyHeat } from '../../../src/report/charts/monthly-heat.ts';
import { mouldChart } from '../../../src/report/charts/mould-chart.ts';
import { tradeOffChart } from '../../../src/report/charts/trade-off-chart.ts';
import { waterBalance } from '../../../src/report/charts/water-balance.ts';
import { waterChart } from '../../../src/report/charts/water-chart.ts';
import { weekChart } from '../../../src/report/charts/week-chart.ts';
import { yearChart } from '../../../src/report/charts/year-chart.ts';
import type { HoursBesideLog } from '../../../src/studies/against/against-log.ts';
import { UTC_CLOCK } from '../../../src/units/local-clock.ts';
import { ledger, START } from '../../measures/hand-made.ts';

/** Hours of two invented plans of one room, and what people named them. */
export interface SampleNames {
  readonly room: string;
  readonly plans: readonly [string, string];
  readonly currency: string;
  readonly device: string;
}

export const PLAIN: SampleNames = {
  room: 'den',
  plans: ['warm', 'cool'],
  currency: 'GBP',
  device: 'drier',
};

export const BANDS = {
  temperature: { low: 18, high: 26 },
  humidity: { low: 40, high: 60 },
};
export const START_HERE = { start: START, clock: UTC_CLOCK };

export const series = (hours: number, at: (hour: number) => number): Float32Array =>
  Float32Array.from({ length: hours }, (_, h) => at(h));

const HOURS = 60 * 24;
const temperature = [
  series(HOURS, (h) => 20 + Math.sin(h / 24)),
  series(HOURS, (h) => (h % 24 < 6 ? 17 : 19)),
];
const humidity = [series(HOURS, (h) => 45 + (h % 24)), series(HOURS, (h) => 62 + (h % 24) / 2)];

/** One picture of every kind from hand-made figures, made once for the same names and width. */
export function sampleCharts(names: SampleNames, width: number): Readonly<Record<string, Chart>> {
  const key = JSON.stringify([names, width]);
  const charts = made.get(key) ?? makeCharts(names, width);
  made.set(key, charts);
  return charts;
}
const made = new Map<string, Readonly<Record<string, Chart>>>();

function makeCharts(names: SampleNames, width: number): Record<string, Chart> {
  const { room, plans, currency, device } = names;
  const days = (values: Float32Array | undefined) => dailyRanges(values!, START, UTC_CLOCK);
  const week = (of: Float32Array[]) =>
    plans.map((name, k) => ({ name, values: of[k]!.subarray(0, 168) }));
  const books = ledger(1, [0, 1], {
    energy: { heating: 9e9, sun: 1e9, people: 5e8, walls: -7e9, panes: -2e9, leakage: -1.5e9 },
    water: { people: 300, drying: 120, leakage: -400, openings: -15 },
  });
  return {
    'week-temperature': weekChart(
      {
        ...{ room, quantity: 'temperature', band: BANDS.temperature, ...START_HERE },
        plans: week(temperature),
        occupied: series(168, (h) => (h % 24 < 8 ? 1 : 0)),
      },
      width,
    ),
    'week-humidity': weekChart(
      { room, quantity: 'humidity', band: BANDS.humidity, ...START_HERE, plans: week(humidity) },
      width,
    ),
    'year-temperature': yearChart(
      {
        ...{ room, plan: plans[1], quantity: 'temperature', band: BANDS.temperature },
        days: days(temperature[1]),
      },
      width,
    ),
    'year-temperature-infant': yearChart(
      {
        ...{ room, plan: plans[1], quantity: 'temperature' },
        band: { low: 16, high: 20, mild: { high: 26 } },
        days: days(temperature[1]),
        mild: Array.from(days(temperature[1]).mean, (_, k) => (k % 5 < 3 ? 1 : 0)),
      },
      width,
    ),
    'year-humidity': yearChart(
      {
        ...{ room, plan: plans[0], quantity: 'humidity', band: BANDS.humidity },
        days: days(humidity[0]),
      },
      width,
    ),
    'cold-spot': coldSpotChart(
      {
        room,
        plans: plans.map((name, k) => ({
          name,
          days: days(humidity[k]!.map((value) => value + 15)),
          hoursAbove80: 100 * (k + 1),
        })),
      },
      width,
    ),
    calendar: calendarChart(
      {
        ...{ room, plan: plans[1], ...START_HERE },
        hours: hoursOutside(temperature[1]!, humidity[1]!, BANDS),
      },
      width,
    ),
    heat: heatChart(monthlyHeat(books), plans[0], width),
    water: waterChart(waterBalance(books), plans[0], width),
    mould: mouldChart(
      {
        ...{ room, ...START_HERE },
        plans: plans.map((name, k) => ({ name, index: series(60, (day) => (k * day) / 20) })),
      },
      width,
    ),
    'trade-off': tradeOffChart(
      {
        currency,
        plans: plans.map((name, k) => ({ name, money: 900 - 100 * k, hours: 40 + 300 * k })),
      },
      width,
    ),
    bargain: tradeOffChart(
      {
        currency,
        plans: plans.map((name, k) => ({ name, money: 900 - 100 * k, hours: 4 + k })),
        curves: [
          {
            plan: plans[0],
            points: [1, 2, 3].map((k) => ({ name: `${k} K`, money: 700 + 80 * k, hours: 7 - k })),
          },
        ],
        front: [
          { name: plans[1], money: 780, hours: 5 },
          { name: room, money: 860, hours: 4.5 },
        ],
        bend: { name: room, money: 860, hours: 4.5 },
      },
      width,
    ),
    frontier: frontierChart(
      {
        currency,
        runs: Array.from({ length: 40 }, (_, k) => ({
          ...{ money: 800 + 10 * k, hours: 40 + ((k * 37) % 41) * (40 - k) },
        })),
        frontier: plans.map((name, k) => ({ name, money: 900 + 100 * k, hours: 340 - 300 * k })),
        bend: { name: plans[0], money: 900, hours: 340 },
      },
      width,
    ),
    draws: drawsChart(
      {
        ...{ plan: plans[1], baseline: plans[0] },
        figures: ['money a year', room].map((name, k) => ({
          ...{ name, unit: currency, better: 'costs less', decimals: 0 },
          ...{
            changes: Array.from({ length: 30 }, (_, n) => 10 * n - 60 * k),
            p10: 20,
            median: 140,
            p90: 260,
          },
        })),
      },
      width,
    ),
    air: airChart(
      {
        ...{ label: `gas of ${room}`, unit: 'ppm', outdoors: 420 },
        rooms: [
          { name: room, limit: 1000, hours: 1 },
          { name: plans[0], limit: Number.POSITIVE_INFINITY, hours: 0 },
        ],
        plans: plans.map((name, k) => ({
          name,
          levels: [700, 500].map((mean) => ({
            ...{ mean: mean + k, evening: mean + 100, night: mean + 200 },
            ...{ p95: mean + 400 - 50 * k, peak: mean + 900 },
          })),
        })),
      },
      width,
    ),
    alerts: alertsChart(
      {
        ...{ plan: plans[0], weeks: 52 },
        rules: [
          { name: room, byHour: BY_HOUR, heardByHour: BY_HOUR.map((count) => count >> 1) },
          { name: plans[1], byHour: BY_HOUR.map(() => 0), heardByHour: BY_HOUR.map(() => 0) },
        ],
      },
      width,
    ),
    money: cumulativeMoneyChart(
      { device, currency, price: 180, years: 8, savedPerYear: 50, discountRate: 0.03 },
      width,
    ),
    against: againstChart(
      {
        ...{ room, quantity: 'temperature', unit: 'K', hours: HOURS, bias: 0.5, rmse: 1.2 },
        ...{ mean_logged: 20, mean_simulated: 20.5 },
        skill: { mean: 0.4, same_hour_of_week: null, last_day_repeated: -0.2 },
      },
      besideLog(room),
      UTC_CLOCK,
      width,
    ),
    foreseen: foreseenChart(foreseenHours(room), START, UTC_CLOCK, width),
    doubt: doubtChart(
      {
        ...{ figure: `extra money a year of ${device}`, unit: currency, asIs: 40 },
        inputs: [
          { name: `leakage of ${room}`, low: '3 1/h', high: '9 1/h', atLow: 120, atHigh: -30 },
          { name: plans[0], low: `1 ${currency}`, high: `2 ${currency}`, atLow: 50, atHigh: 90 },
          { name: plans[1], low: '0.8', high: '1.2', atLow: 25, atHigh: 40 },
        ],
      },
      width,
    ),
  };
}

/** Pictures as drawings, each by its own name. */
export const drawingsOf = (charts: Record<string, Chart>) =>
  Object.entries(charts).map(([id, chart]) => ({ id, chart }));

const BY_HOUR = Array.from({ length: 24 }, (_, hour) => hour);

/** Sixty days of one room, logged with a gap of two days, and simulated half a kelvin warmer. */
function besideLog(room: string): HoursBesideLog {
  const at = (of: (h: number) => number) => Float64Array.from({ length: HOURS }, (_, h) => of(h));
  const hourly = (values: Float64Array) => ({
    hours: HOURS,
    outdoors: { temperature: values, vapourPressure: values },
    rooms: [{ vapourPressure: values, columns: new Map([['temperature', { unit: 'K', values }]]) }],
  });
  return {
    ...{ start: START, rooms: [room] },
    logged: hourly(at((h) => (h >= 240 && h < 288 ? Number.NaN : 20 + Math.sin(h / 24)))),
    simulated: hourly(at((h) => 20.5 + Math.sin(h / 24))),
  };
}

/** Ten withheld days after two fitted ones, foreseen half a point too high. */
function foreseenHours(room: string): Foreseen {
  const logged = Float64Array.from({ length: 288 }, (_, h) =>
    h === 100 ? Number.NaN : 50 + (h % 24),
  );
  const judgement: Foreseen['judgement'] = {
    ...{ hours: 239, rmse: 0.5, bias: 0.5, bestGuess: 'mean', skill: 0.93, band: 1.5, inside: 1 },
    guesses: { mean: 7, week: 8, day: 9 },
  };
  const at = { room, roomIndex: 0, quantity: 'humidity' as const };
  return {
    channel: { ...at, name: 'relative humidity', unit: '%', observed: logged, floor: 0.5 },
    from: 'weather alone',
    forecast: logged.slice(48).map((_, h) => 50.5 + (h % 24)),
    guess: logged.slice(48).fill(62),
    guideline14: null,
    judgement,
    alone: judgement,
  };
}
