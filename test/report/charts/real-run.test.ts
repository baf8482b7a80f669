import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { dailyRanges } from '../../../src/measures/series/daily-ranges.ts';
import { extremeWeek } from '../../../src/measures/series/extreme-week.ts';
import { createPlanSeries } from '../../../src/measures/series/plan-series.ts';
import { calendarChart } from '../../../src/report/charts/calendar-chart.ts';
import { coldSpotChart } from '../../../src/report/charts/cold-spot-chart.ts';
import { heatChart } from '../../../src/report/charts/heat-chart.ts';
import { hoursOutside } from '../../../src/report/charts/hours-outside.ts';
import { monthlyHeat } from '../../../src/report/charts/monthly-heat.ts';
import { mouldChart } from '../../../src/report/charts/mould-chart.ts';
import { chartsToSvg } from '../../../src/report/charts/to-svg.ts';
import { waterBalance } from '../../../src/report/charts/water-balance.ts';
import { waterChart } from '../../../src/report/charts/water-chart.ts';
import { weekChart } from '../../../src/report/charts/week-chart.ts';
import { yearChart } from '../../../src/report/charts/year-chart.ts';
import { packPictures } from '../../../src/report/page/packed-pictures.ts';
import { pictureDataOf } from '../../../src/report/page/picture-data-of.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { runPlan } from '../../../src/studies/run-plan.ts';
import { periodOf } from '../../../src/weather/period-of.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';
import { drawingsOf } from './sample.ts';
import { expectValid } from './vega-lite-schema.ts';

const ROOM = 4;
const scenario = readOnce(readFileSync('scenarios/terrace.yaml', 'utf8'), 'terrace.yaml');
const weather = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'saltmere.csv');
const plan = preparePlan(scenario, { plan: 'as-lived', set: [], files: new Map() });
const { clock } = plan.household;
const period = periodOf(weather, null, null, clock);
const watched = createPlanSeries({ ...plan, period, clock });
const { measures, run } = runPlan({ plan, weather, period }, [watched.observe]);
const { start, outdoors, rooms } = watched.result();
const room = rooms[ROOM]!;
const figures = measures.rooms[room.name]!;
const bands = plan.bands[ROOM]!;
const name = plan.plan;
const from = extremeWeek(outdoors.temperature, start, clock, 'lowest');
const spotDays = dailyRanges(room.coldSpotHumidity, start, clock);
const outside = hoursOutside(room.operativeTemperature, room.relativeHumidity, bands);
const asLived = {
  ...({ name, description: '', origin: 'baseline', assumedPurchases: [], raw: {} } as const),
  variant: { plan: name, set: [] },
};
const charts = {
  week: weekChart(
    {
      ...{ room: room.name, quantity: 'temperature', band: bands.temperature, clock },
      start: start + from * 3600,
      plans: [{ name, values: room.operativeTemperature.subarray(from, from + 168) }],
      occupied: room.occupied.subarray(from, from + 168),
    },
    720,
  ),
  year: yearChart(
    {
      ...{ room: room.name, plan: name, quantity: 'humidity', band: bands.humidity },
      days: dailyRanges(room.relativeHumidity, start, clock),
    },
    720,
  ),
  'cold-spot': coldSpotChart(
    {
      room: room.name,
      plans: [{ name, days: spotDays, hoursAbove80: figures.cold_spot_hours_above_80_pct }],
    },
    720,
  ),
  calendar: calendarChart({ room: room.name, plan: name, start, clock, hours: outside }, 720),
  heat: heatChart(monthlyHeat(run.ledger), name, 720),
  water: waterChart(waterBalance(run.ledger), name, 720),
  mould: mouldChart(
    { room: room.name, start, clock, plans: [{ name, index: room.mouldIndex }] },
    720,
  ),
};

test('the kept series agree with the figures of the run', () => {
  const mean = (values: Float32Array) => values.reduce((sum, v) => sum + v, 0) / values.length;
  // Float32 keeps seven digits.
  expect(mean(room.airTemperature)).toBeCloseTo(figures.mean_temperature_c, 4);
  expect(mean(room.relativeHumidity)).toBeCloseTo(figures.mean_relative_humidity_pct, 4);
  expect(mean(room.occupied) * period.hours).toBeCloseTo(figures.occupied_hours, 2);
  expect(room.coldSpotHumidity.filter((v) => v > 80).length).toBe(
    figures.cold_spot_hours_above_80_pct,
  );
  expect(room.mouldIndex.at(-1)).toBeCloseTo(figures.mould_index_end, 6);
  expect(Math.max(...room.mouldIndex)).toBeLessThanOrEqual(figures.mould_index_peak + 1e-6);
});

test('pictures of a year of the demonstration: valid, no complaint, small', async () => {
  const said: string[] = [];
  const svgs = await chartsToSvg(drawingsOf(charts), { warn: (text) => said.push(text) });
  expect(said).toEqual([]);
  for (const { spec } of Object.values(charts)) expectValid(spec);
  for (const svg of svgs) {
    expect(svg.length).toBeGreaterThan(3000);
    expect(svg.length).toBeLessThan(120_000); // a page of 3 MB holds some twenty-five
    expect(svg).not.toMatch(/NaN|Infinity/);
  }
});

test('hours of a year for pictures are small: a page of 4 MB holds those of six plans', () => {
  const series = watched.result();
  const option = { ...asLived, prepared: plan, measures };
  const data = pictureDataOf([{ option, measures, series, ledger: run.ledger }], room.name);
  const bytes = Buffer.byteLength(JSON.stringify(packPictures(data)));
  expect(bytes).toBeLessThan(200_000);
  expect(bytes).toBeGreaterThan(50_000);
});

test('titles and tables carry the figures of the run', () => {
  expect(charts.heat.title).toContain(`(${Math.round(measures.heating.useful_kwh)} kWh)`);
  const [all = []] = charts.heat.table.rows;
  expect(all[1]).toBe(String(Math.round(measures.heating.useful_kwh)));
  expect(charts['cold-spot'].title).toContain(`${figures.cold_spot_hours_above_80_pct} h`);
  expect(charts.year.table.rows).toHaveLength(365);
  const kept = charts.water.table.rows.map(([, kg]) => Number(kg)).reduce((a, b) => a + b, 0);
  expect(Math.abs(kept)).toBeLessThan(0.05 * charts.water.table.rows.length); // each to 0.1 kg
});
