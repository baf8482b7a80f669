import type { Log } from '../log/log.ts';
import type { Adjustable } from '../scenario/edits/adjustables.ts';
import type { FitKind } from '../scenario/edits/fit-places.ts';
import { type Stated, statedForCertain } from '../scenario/edits/stated-for-certain.ts';
import { mergedFor, planChain } from '../scenario/plan-chain.ts';
import { preparePlan } from '../scenario/prepare-plan.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import type { LocalClock } from '../units/local-clock.ts';
import { InputProblems } from '../units/problem.ts';
import { SECONDS_PER_HOUR } from '../units/time-units.ts';
import type { Weather } from '../weather/weather.ts';
import { adjustablesOf } from './adjustables-of.ts';
import { channelsOf, type FitGroup } from './channels-of.ts';
import type { FittedStage } from './fitted-stage.ts';
import { otherTimes } from './judge/other-times.ts';
import { skillOf } from './judge/skill-of.ts';
import { settingsAt, WRITTEN_DIGITS } from './parameters/scaled-parameter.ts';
import { logCautions } from './readings/log-cautions.ts';
import type { Beside } from './readings/metered-heat.ts';
import { notUsed } from './readings/not-used.ts';
import { type Readings, readingsOf } from './readings/readings.ts';
import type { Division } from './readings/span.ts';
import { commonSpan, divide } from './readings/span-of.ts';
import { takenAsSaid } from './readings/taken-as-said.ts';
import { unmeasuredRooms } from './readings/unmeasured-rooms.ts';
import { requireHours, requireReadings } from './require-log.ts';
import type { Channel } from './simulate/channel.ts';
import { cutWeather } from './simulate/cut-weather.ts';
import { loggedRequest } from './simulate/logged-request.ts';
import type { RunLogged } from './simulate/run-logged.ts';
import { createEvaluations, type Evaluations } from './stage/evaluations.ts';
import { fitStage, type StageFit } from './stage/fit-stage.ts';
import { type Hours, searchStage } from './stage/search-stage.ts';
import { type Foreseen, foresee } from './withheld.ts';

/** What a fit needs. */
export interface FitRequest {
  readonly scenario: Scenario;
  readonly files: ReadonlyMap<string, string>;
  /** The plan that was lived in while the log was taken. */
  readonly plan: string;
  /** Settings laid on it. */
  readonly set: readonly string[];
  readonly log: Log;
  readonly weather: Weather;
  /** Makes ready for runs under some weather. */
  readonly startRuns: (weather: Weather) => Promise<RunLogged>;
}

/** What a log tells of a home. */
export interface HomeFit {
  readonly title: string;
  readonly plan: string;
  /** The household's wall clock. */
  readonly clock: LocalClock;
  readonly division: Division;
  /** Water first, with temperatures as logged, then heat; only those for which something was logged. */
  readonly stages: readonly FittedStage[];
  /** The withheld hours, foreseen. */
  readonly foreseen: readonly Foreseen[];
  /** Whether most of what was foreseen beats guessing. */
  readonly skilled: boolean;
  /** Whether its values may be taken for those of the home: by habits too, something beats guessing. */
  readonly reliable: boolean;
  /** Settings of the scenario as fitted. */
  readonly settings: readonly string[];
  readonly runs: number;
  /** What was logged of the home, and where; a series of no room is of the whole home or of outdoors. */
  readonly logged: readonly { readonly quantity: string; readonly room: string | null }[];
  /** What a log might tell, but the scenario states without doubt. */
  readonly stated: readonly Stated[];
  /** Whether the weather was a typical year, which was never that of the log. */
  readonly typicalWeather: boolean;
  /** What is odd about the readings. */
  readonly cautions: readonly string[];
}

/**
 * Fit a home to its log: what the first part of the log tells, and how well the rest is foreseen.
 *
 * @throws InputProblems for a log that does not fit the home or the weather
 */
export async function fitHome(request: FitRequest): Promise<HomeFit> {
  const { scenario, log, weather } = request;
  const plan = prepared(request, []);
  const division = divide(commonSpan(log, weather));
  requireHours(log, weather, division);
  const beside = besideOf(request);
  const readings = readingsOf(log, plan.home, division, plan.dt, weather, beside);
  requireReadings(log, readings);
  const stages: FittedStage[] = [];
  const keep = (of: Group, fit: StageFit | null, before: readonly string[]): readonly string[] => {
    if (fit === null) return before;
    stages.push({ group: of.group, channels: of.channels, fit });
    const place = fit.parameters.map((parameter) => parameter.place);
    return [...before, ...settingsAt(of.adjustables, place, WRITTEN_DIGITS)];
  };
  const run = await request.startRuns(
    cutWeather(
      weather,
      division.start - BEFORE,
      division.start + division.hours * SECONDS_PER_HOUR,
    ),
  );
  let settings: readonly string[] = [];
  const work = { request, run, readings, division };
  const water = groupOf('water', work, plan);
  const heat = groupOf('heat', work, plan);
  // Panes on which water condenses are as cold as the heat stage finds: water is sought roughly,
  // then heat, then water to the end.
  const both = water.channels.length > 0 && heat.channels.length > 0;
  const rough = both ? await roughPlace(water, work) : water.adjustables.map(() => 0);
  if (heat.channels.length > 0) {
    const before = settingsAt(water.adjustables, rough);
    settings = keep(heat, await fitted(heat, work, before, MOST_RUNS.heat), settings);
  }
  if (water.channels.length > 0) {
    const most = MOST_RUNS.water - (both ? ROUGH_RUNS : 0);
    settings = keep(water, await fitted(water, work, settings, most, rough), settings);
  }
  stages.sort((a, b) => (a.group === b.group ? 0 : a.group === 'water' ? -1 : 1));
  const foreseen = await foresee(run, prepared(request, settings), readings, {
    ...{ division, weather, stages },
  });
  return {
    title: scenario.title,
    plan: plan.plan,
    clock: plan.household.clock,
    division,
    stages,
    foreseen,
    ...skillOf(foreseen),
    settings,
    runs: stages.reduce((sum, { fit }) => sum + fit.runs, 0) + 2,
    logged: log.series.map(({ quantity, room }) => ({ quantity, room })),
    stated: statedForCertain(rawOf(request), scenario.doubts),
    typicalWeather: weather.periodic,
    cautions: [
      ...otherTimes(plan, stages, division),
      ...(readings.heating?.words == null ? [] : [readings.heating.words]),
      ...unmeasuredRooms(plan.home, readings),
      ...notUsed(log, plan.home, readings.used),
      ...takenAsSaid(plan.home, log, weather, division, movesCooling(stages)),
      ...logCautions(
        log,
        plan.home.rooms.map(({ name }) => name),
        weather,
        division,
      ),
    ],
  };
}

/** Whether what rooms are cooled to, or what cools them reads, was looked for. */
const movesCooling = (stages: readonly FittedStage[]): boolean =>
  stages.some(({ fit }) =>
    fit.parameters.some(({ adjustable: { kind } }) => OF_COOLING.includes(kind)),
  );

/** What is asked of a log in one stage. */
interface Group {
  readonly group: FitGroup;
  readonly channels: readonly Channel[];
  readonly adjustables: readonly Adjustable[];
}

interface Work {
  readonly request: FitRequest;
  readonly run: RunLogged;
  readonly readings: Readings;
  readonly division: Division;
}

const groupOf = (group: FitGroup, work: Work, plan: PreparedPlan): Group => ({
  group,
  channels: channelsOf(group, work.readings, plan.home),
  adjustables: adjustablesOf(group, {
    ...{ scenario: work.request.scenario, raw: rawOf(work.request), plan },
    ...{ weather: work.request.weather, readings: work.readings, division: work.division },
  }),
});

const fitted = (
  of: Group,
  work: Work,
  before: readonly string[],
  most: number,
  start: readonly number[] = of.adjustables.map(() => 0),
): Promise<StageFit | null> =>
  fitStage(of, evaluationsOf(of, work, before), fittedHours(work), most, start);

/** Where a short search for a group ends. */
async function roughPlace(of: Group, work: Work): Promise<readonly number[]> {
  const start = of.adjustables.map(() => 0);
  const evaluations = evaluationsOf(of, work, []);
  const hours = fittedHours(work);
  const search = { channels: of.channels, form: 'free run', hours, near: false } as const;
  const found = await searchStage(evaluations, search, start, ROUGH_RUNS);
  return found?.minimum.at ?? start;
}

const fittedHours = ({ division: { release, withheld } }: Work): Hours => ({
  from: release,
  to: withheld,
});

/** Runs of a group beside the fitted hours, with settings of other groups laid on before its own. */
function evaluationsOf(of: Group, work: Work, before: readonly string[]): Evaluations {
  const { request, run, readings, division } = work;
  const { release, withheld } = division;
  const { dt } = prepared(request, []);
  const temperature = of.group === 'water';
  const logged = loggedRequest(readings, dt, { from: 0, release, to: withheld, temperature });
  return createEvaluations(of.channels, async (place) => {
    const settings = [...before, ...settingsAt(of.adjustables, place)];
    const plan = attempt(() => prepared(request, settings));
    return plan === null ? null : run({ plan, logged });
  });
}

/** The plan with settings laid on. @throws InputProblems */
function prepared({ scenario, plan, set, files }: FitRequest, settings: readonly string[]) {
  return preparePlan(scenario, { plan, set: [...set, ...settings], files });
}

function attempt<T>(work: () => T): T | null {
  try {
    return work();
  } catch (error) {
    if (error instanceof InputProblems) return null;
    throw error;
  }
}

/** What the plan's scenario says of logged gas and electricity that heats no rooms. */
function besideOf({ scenario, plan }: FitRequest): Beside {
  const { log = {} } = scenario.checked.get(plan) ?? {};
  return {
    gas: log['gas beside heating'] ?? null,
    electricity: log['electricity beside heating'] ?? null,
  };
}

/** The scenario with its plan laid on, as plain values. */
function rawOf({ scenario, plan }: FitRequest): unknown {
  const chain = planChain(scenario.yaml.value, plan);
  return mergedFor(scenario.yaml.value, 'names' in chain ? chain.names : []);
}

const OF_COOLING: readonly FitKind[] = ['cooling setpoint', 'thermostat of cooling'];
const MOST_RUNS = { water: 150, heat: 400 } as const;
/** Of those of water, for a first search. */
const ROUGH_RUNS = 45;
/** Days before the log that runs may look back at. [s] */
const BEFORE = 30 * 86_400;
