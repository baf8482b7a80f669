import type { Observer } from '../engine/record/trace.ts';
import type { Run } from '../engine/run.ts';
import { simulate } from '../engine/simulate.ts';
import { createMeasures } from '../measures/create-measures.ts';
import { ledgerSum } from '../measures/ledger-sum.ts';
import { createLowestAir } from '../measures/notices/lowest-air.ts';
import type { PlanMeasures } from '../measures/plan-measures.ts';
import { isYearOrMore } from '../measures/years-in.ts';
import { frost } from '../scenario/notices/cautions.ts';
import { needlessHeating, needlessMonths } from '../scenario/notices/needless-heating.ts';
import { tariffDates } from '../scenario/notices/tariff-dates.ts';
import { weatherElsewhere } from '../scenario/notices/weather-elsewhere.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import { uncoveredLevels } from '../scenario/uncovered-levels.ts';
import { InputProblems } from '../units/problem.ts';
import type { Weather } from '../weather/weather.ts';
import { heatsByPresence } from './effects/plan-changes.ts';
import { stepSensitive } from './step-sensitive.ts';

/** Request to run one plan over one period of weather. */
export interface PlanRequest {
  readonly plan: PreparedPlan;
  readonly weather: Weather;
  /** First instant, on the hour [s UTC], and length [h]. */
  readonly period: { readonly start: number; readonly hours: number };
}

/** What came of it. */
export interface PlanOutcome {
  readonly measures: PlanMeasures;
  readonly run: Run;
}

/**
 * Simulate one plan and make its figures. Whoever else wants to see the run may watch it.
 *
 * @param spinUpDays  days before the period in which walls forget the temperatures they began with
 * @throws InputProblems for levels outdoors from a file that do not cover the period
 */
export function runPlan(
  request: PlanRequest,
  watchers: readonly Observer[] = [],
  spinUpDays = SPIN_UP_DAYS,
): PlanOutcome {
  const { plan, weather, period } = request;
  requireLevels(request);
  const { home, household, automation, dt } = plan;
  const activitiesBurnGas = household.activities.some(({ gas = 0 }) => gas > 0);
  const { clock } = household;
  const measures = createMeasures({
    ...plan,
    ...{ heatsByPresence: heatsByPresence(plan), activitiesBurnGas, clock, weather, period },
    stepSensitive: stepSensitive(plan),
  });
  // Only a year tells that it never comes near freezing.
  const asked = isYearOrMore(period.hours) && plan.cautions.some(({ id }) => id === 'frost');
  const lowest = asked ? createLowestAir(home.rooms.length) : null;
  const run = simulate({ home, household, automation, weather, dt, ...period, spinUpDays }, [
    measures.observe,
    ...(lowest === null ? [] : [lowest.observe]),
    ...watchers,
  ]);
  const figures = measures.finish(run);
  const known = figures.cautions.flatMap((each) =>
    each.id === 'frost' && lowest !== null
      ? frost(plan, (room) => lowest.result(room) >= MILD)
      : [each],
  );
  const cautions = [...cautionsOfWeather(request, run), ...known];
  return { measures: { ...figures, cautions }, run };
}

/** What only shows beside the weather, and what came of it. */
function cautionsOfWeather({ plan, weather, period }: PlanRequest, { ledger }: Run) {
  const months = needlessMonths(plan, weather, period);
  const rows = ledger.months.flatMap((month, row) => ((months & (1 << month)) === 0 ? [] : [row]));
  const heat = ledgerSum(ledger.energy.heating, rows, ledger);
  return [
    ...weatherElsewhere(plan.home.site, weather),
    ...tariffDates(plan.prices, weather, period),
    ...(heat < LEAST_HEAT ? [] : needlessHeating(plan, months)),
  ];
}

function requireLevels({ plan, period }: PlanRequest): void {
  const missing = uncoveredLevels(plan, period);
  if (missing.length === 0) return;
  const place = { file: plan.scenario, line: 0, column: 0, hint: '' };
  throw new InputProblems(
    missing.map((found) => ({ ...place, ...found, where: found.path.join('.') })),
  );
}

/** After this long a home of heavy walls has forgotten 99 % of the temperatures it began with. [day] */
const SPIN_UP_DAYS = 30;
/**
 * Air of a room that stays above this all year is not near freezing: pipes in a corner may be 3 K colder,
 * and a cold spell that no year of the weather has, another 5 K. Own judgement. [°C]
 */
const MILD = 8;
/** A kilowatt-hour, less than which is not worth a word. [J] */
const LEAST_HEAT = 3.6e6;
