import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { simulationAnswer } from '../../../src/cli/runs/simulation-task.ts';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import { inputInWords } from '../../../src/report/page/input-in-words.ts';
import type { ReportInput } from '../../../src/report/page/report-input.ts';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import type { PreparedPlan } from '../../../src/scenario/prepared.ts';
import { type PlanVariant, prepareVariant } from '../../../src/studies/plan-variant.ts';
import {
  type ReportStudy,
  reportStudy,
  type WatchedRun,
} from '../../../src/studies/report-study.ts';
import { InputProblems } from '../../../src/units/problem.ts';
import { readWeather } from '../../../src/weather/read/read-weather.ts';
import { readOnce } from '../../scenario/read-once.ts';

/** A week and more in the winter of two damp rooms, their names and words full of markup. */
export const COTTAGE = `# <!-- a "cottage" & its rooms -->
title: A cottage </script><b>& "more"
weather: w.csv
site: { latitude: 54.2, longitude: -1.9, timezone: Europe/London }
period: { from: "01-05", to: "01-14" }
step: 60
money: { currency: GBP, gas: { price: 0.07, standing: 0.3 }, electricity: { price: 0.27, standing: 0.5 } }
home:
  build: { age: 1911, shape: terrace, walls: solid brick, glazing: double }
  leakage: { ach50: 20 }
  rooms:
    den </script>: { floor area: 14, use: living }
    nook: { floor area: 9, use: bedroom, cold spot factor: 0.72 }
heating: { setpoint: 18 }
household:
  people: [{ who: adult, pattern: at home, sleeps in: nook }]
  activities: [{ what: laundry dried indoors, room: nook, water: 1 L, at: "09:00" }]
doubts: { /home/leakage/ach50: [12, 28] }
`;
export const DRY_PLAN = `plans:
  now: { description: as it is, change: {} }
  dry:
    description: a <drier> in the nook
    change: { devices: { drier: { kind: dehumidifier, room: nook, label: 12 L/day, target: 62 } } }
    purchases: [{ what: drier, price: 180, lasts: 8 years }]
`;
const WEATHER = readFileSync('weather/saltmere-typical.csv', 'utf8');
const YEAR = readWeather(WEATHER, 'w.csv');

/** One plan of a cottage, run here and now; `more` are files beside the weather, by name. */
export function ranPlan(
  text: string,
  plan: string,
  more: readonly (readonly [string, string])[] = [],
): { readonly prepared: PreparedPlan; readonly measures: PlanMeasures } {
  const files = new Map([['w.csv', WEATHER], ...more]);
  const prepared = preparePlan(readOnce(text, 'cottage.yaml'), { plan, set: [], files });
  const setup = { file: 'cottage.yaml', weather: YEAR };
  const answer = simulationAnswer(setup, { plan: prepared, watched: false });
  if ('problems' in answer) throw new InputProblems(answer.problems);
  return { prepared, measures: answer.done.measures };
}

/** The study of a cottage, run here and now. */
export async function studyOf(
  text: string,
  {
    about = null,
    samples = 0,
  }: {
    about?: string | null;
    /** How often doubtful inputs are drawn. */
    samples?: number;
  } = {},
): Promise<ReportStudy> {
  const files = new Map([['w.csv', WEATHER]]);
  const setup = { file: 'cottage.yaml', weather: YEAR };
  const ask = (variant: PlanVariant, watched: boolean) => {
    const plan = prepareVariant(scenario, files, variant);
    const answer = simulationAnswer(setup, { plan, watched });
    if ('problems' in answer) throw new InputProblems(answer.problems);
    return answer.done;
  };
  const scenario = readOnce(text, 'cottage.yaml');
  return reportStudy({
    ...{ scenario, files, set: [], about, inputWords: inputInWords },
    draw: { samples, seed: 1, years: 1 },
    plans: scenario.plans.map(({ name }) => name),
    refuseAbout: (known) => {
      throw new Error(`only ${known.join(', ')}`);
    },
    run: (variant) => ask(variant, false).measures,
    runIn: (variant) => ask(variant, false).measures,
    watch: (variant) => ask(variant, true) as WatchedRun,
  });
}

export const sha256 = (text: string): string =>
  createHash('sha256').update(text, 'utf8').digest('base64');

export const inputOf = (study: ReportStudy, text: string): ReportInput => ({
  ...{ study, text, sha256, date: '2030-01-02', version: '1.2.3' },
  weather: {
    title: 'Made-up <winter>',
    periodic: true,
    notes: [{ id: 'weather-gap', text: 'a gap of 2 h was filled & marked' }],
  },
  living: null,
  script: 'for (let k = 0; k < 2 && k >= 0; k++) {} // <b>"é"',
});
