import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createPlanSeries } from '../../src/measures/series/plan-series.ts';
import { type PlanVariant, prepareVariant } from '../../src/studies/plan-variant.ts';
import { reportStudy, type WatchedRun } from '../../src/studies/report-study.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { figureText } from '../../src/units/figure-text.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { readOnce } from '../scenario/read-once.ts';

/** Three January days of a damp home of two rooms. */
const TEXT = `title: Two damp rooms
weather: saltmere.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
period: { from: "01-10", to: "01-12" }
step: 30
home:
  leakage: { ach50: 20 } # so that warmth alone can dry the nook
  deep moisture: 0
  rooms:
    den: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom, cold spot factor: 0.5 }
household:
  people: [{ name: A, sleeps in: nook }]
  activities: [{ what: other, room: nook, at: "12:00", lasts: 12 h, water: 0.4 }]
heating: { setpoint: 18 }
plans:
  as-lived: { change: {} }
  dry:
    change: { devices: { drier: { kind: dehumidifier, room: nook, label: 16, target: 50 % } } }
    purchases: [{ what: drier, price: 180, lasts: 8 }]
`;
const scenario = readOnce(TEXT, 'damp.yaml');
const weather = readWeather(readFileSync('weather/saltmere-typical.csv', 'utf8'), 'saltmere.csv');

const simulated = { runs: 0 };
function watch(variant: PlanVariant): WatchedRun {
  const plan = prepareVariant(scenario, new Map(), variant);
  simulated.runs++;
  const { from, to } = plan.period;
  const period = periodOf(weather, from, to, plan.household.clock);
  const series = createPlanSeries({ ...plan, period, clock: plan.household.clock });
  const { measures, run } = runPlan({ plan, weather, period }, [series.observe]);
  return { measures, series: series.result(), ledger: run.ledger };
}

const study = await reportStudy({
  ...{ scenario, files: new Map(), plans: ['as-lived', 'dry'], set: [], watch },
  inputWords: (pointer) => ({ name: pointer, unit: '' }),
  ...{ about: null, run: (variant) => watch(variant).measures },
  draw: { samples: 4, seed: 1, years: 1 },
  runIn: (variant) => watch(variant).measures,
  refuseAbout: () => {
    throw new Error('nothing was named');
  },
});
const { options, pictured } = study;
const purchase = study.purchase!;
const [baseline] = options;
const spots = ({ rooms }: WatchedRun['measures'], room = 'nook') =>
  rooms[room]!.cold_spot_hours_above_80_pct;

describe('a report of a real home', () => {
  test('counts the runs that were made', () => {
    expect(study.runs).toBe(simulated.runs);
  });

  test('the sum comes to what the two runs differ by', () => {
    const extra =
      purchase.about.option.measures.money.total_per_year - baseline!.measures.money.total_per_year;
    expect(Math.abs(purchase.sum!.net - extra)).toBeLessThan(0.0101); // purchase cost and bill, a half each
    expect(purchase.doubt.figure).toBeCloseTo(extra, 9);
    expect(purchase.draws!.difference.money.as_is).toBeCloseTo(extra, 9);
    expect(purchase.draws!.pairs).toHaveLength(4);
    expect([...purchase.doubt.effects, ...purchase.doubt.impossible]).toHaveLength(6);
  });

  test('the machine dries the room, and the warmer room is as safe as with it', () => {
    const dried = spots(purchase.about.option.measures);
    expect(dried).toBeLessThan(spots(baseline!.measures));
    expect(purchase.equalSafety!.warmer_by_k).toBeGreaterThan(0);
    expect(spots(purchase.warmer!.measures)).toBeLessThanOrEqual(dried);
  });

  test('pictures show the runs of their options, the baseline first', () => {
    expect(pictured.map(({ option }) => option.name).slice(0, 2)).toEqual(['as-lived', 'dry']);
    for (const { option, measures, series } of pictured) {
      expect({ ...measures, plan: option.name }).toEqual(option.measures);
      expect(series.outdoors.temperature).toHaveLength(72);
    }
  });

  test('every price, hour and value at which the answer turns round is a number', () => {
    expect(purchase.decision.sentences.join(' ')).not.toMatch(/NaN|undefined|Infinity/);
    for (const { low, high, value, today, note } of purchase.flips) {
      expect(note).not.toContain('undefined');
      if (value === null) continue;
      expect(value).toBeGreaterThanOrEqual(low);
      expect(value).toBeLessThanOrEqual(high);
      expect(figureText(value)).not.toBe(figureText(today));
    }
  });
});
