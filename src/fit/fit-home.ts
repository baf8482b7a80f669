import type { Home } from '../home/home.ts';
import type { Log } from '../log/log.ts';
import type { Adjustable } from '../scenario/edits/adjustables.ts';
import {
  heatAdjustables,
  type Logged,
  statedForCertain,
  waterAdjustables,
} from '../scenario/edits/adjustables.ts';
import { mergedFor, planChain } from '../scenario/plan-chain.ts';
import { preparePlan } from '../scenario/prepare-plan.ts';
import type { PreparedPlan } from '../scenario/prepared.ts';
import type { Scenario } from '../scenario/read-scenario.ts';
import { CARBON_DIOXIDE } from '../species/carbon-dioxide.ts';
import type { LocalClock } from '../units/local-clock.ts';
import { InputProblems } from '../units/problem.ts';
import type { Weather } from '../weather/weather.ts';
import { settingsAt, WRITTEN_DIGITS } from './parameters/scaled-parameter.ts';
import { logCautions } from './readings/log-cautions.ts';
import type { Beside } from './readings/metered-heat.ts';
import { notUsed } from './readings/not-used.ts';
import { GASES, type Reading, type Readings, readingsOf } from './readings/readings.ts';
import { commonSpan, type Division, divide } from './readings/span-of.ts';
import { weatherOfHours } from './readings/weather-of-hours.ts';
import { type Channel, meansOver } from './simulate/channel.ts';
import { cutWeather } from './simulate/cut-weather.ts';
import { loggedRequest } from './simulate/logged-request.ts';
import type { RunLogged } from './simulate/run-logged.ts';
import { createEvaluations, type Evaluations } from './stage/evaluations.ts';
import { fitStage, type StageFit } from './stage/fit-stage.ts';
import { type Hours, searchStage } from './stage/search-stage.ts';
import { meanOf } from './statistics/misfit.ts';
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
  /** Settings of the scenario as fitted. */
  readonly settings: readonly string[];
  readonly runs: number;
  /** What was logged of the home, and where; a series of no room is of the whole home or of outdoors. */
  readonly logged: readonly { readonly quantity: string; readonly room: string | null }[];
  /** What a log might tell, but the scenario states without doubt, in words. */
  readonly stated: readonly string[];
  /** Whether the weather was a typical year, which was never that of the log. */
  readonly typicalWeather: boolean;
  /** What is odd about the readings. */
  readonly cautions: readonly string[];
}

export interface FittedStage {
  readonly group: 'water' | 'heat';
  readonly channels: readonly Channel[];
  readonly fit: StageFit;
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
  requireHours(request, division);
  const beside = besideOf(request);
  const readings = readingsOf(log, plan.home, division, plan.dt, weather, beside);
  requireReadings(request, readings);
  const stages: FittedStage[] = [];
  const keep = (of: Group, fit: StageFit | null, before: readonly string[]): readonly string[] => {
    if (fit === null) return before;
    stages.push({ group: of.group, channels: of.channels, fit });
    const place = fit.parameters.map((parameter) => parameter.place);
    return [...before, ...settingsAt(of.adjustables, place, WRITTEN_DIGITS)];
  };
  const run = await request.startRuns(
    cutWeather(weather, division.start - BEFORE, division.start + division.hours * HOUR),
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
    skilled: foreseen.filter(({ alone }) => alone.skill > 0).length * 2 > foreseen.length,
    settings,
    runs: stages.reduce((sum, { fit }) => sum + fit.runs, 0) + 2,
    logged: log.series.map(({ quantity, room }) => ({ quantity, room })),
    stated: statedForCertain(rawOf(request), scenario.doubts),
    typicalWeather: weather.periodic,
    cautions: [
      ...(readings.heatingWords === null ? [] : [readings.heatingWords]),
      ...notUsed(log, plan.home, readings.used),
      ...logCautions(
        log,
        plan.home.rooms.map(({ name }) => name),
        weather,
        division,
      ),
    ],
  };
}

/** What is asked of a log in one stage. */
interface Group {
  readonly group: FittedStage['group'];
  readonly channels: readonly Channel[];
  readonly adjustables: readonly Adjustable[];
}

interface Work {
  readonly request: FitRequest;
  readonly run: RunLogged;
  readonly readings: Readings;
  readonly division: Division;
}

const groupOf = (group: FittedStage['group'], work: Work, plan: PreparedPlan): Group => ({
  group,
  channels: channelsOf(group, work.readings, plan.home),
  adjustables: adjustablesOf(group, work, plan),
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
  return createEvaluations(of.channels, async (places) => {
    const plans = places.map((place) =>
      attempt(() => prepared(request, [...before, ...settingsAt(of.adjustables, place)])),
    );
    const tasks = plans.flatMap((plan) => (plan === null ? [] : [{ plan, logged }]));
    const found = [...(await run(tasks))];
    return plans.map((plan) => (plan === null ? null : found.shift()!));
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

/** What runs of a group are compared with; fitted hours alone count, so observed series reach to their end. */
function channelsOf(
  group: FittedStage['group'],
  { rooms, heating, heatingWords }: Readings,
  home: Home,
): Channel[] {
  const whole =
    group === 'heat' && heating !== null ? [heatingOf(heating, heatingWords !== null)] : [];
  const ofRooms = rooms.flatMap(
    ({ name: room, temperature, humidity, species }, roomIndex): Channel[] => {
      const at = { room, roomIndex };
      if (group === 'heat') {
        if (temperature === null) return [];
        const { hourly } = temperature;
        return [
          {
            ...at,
            quantity: 'temperature',
            name: 'temperature',
            unit: 'K',
            observed: hourly,
            floor: 0.1,
          },
        ];
      }
      const humid: Channel[] =
        humidity === null
          ? []
          : [
              {
                ...{ ...at, quantity: 'humidity', name: 'relative humidity', unit: '%' },
                ...{ observed: humidity.hourly, floor: 0.5 },
              },
            ];
      const traced = home.species.flatMap(({ name, unit }, q): Channel[] => {
        const reading = species[name];
        if (reading === undefined || !GASES.includes(name)) return [];
        return [
          {
            ...{ ...at, quantity: { species: q }, name: CARBON_DIOXIDE.symbol, unit },
            ...{ observed: reading.hourly, floor: 20 },
          },
        ];
      });
      return [...humid, ...traced];
    },
  );
  return [...ofRooms, ...whole];
}

/**
 * Heat of the whole home, whose error is some part of what it usually is. Of a meter that counts hot
 * water too only days are compared: showers and meals have their hours.
 */
function heatingOf({ hourly }: Reading, byMeter: boolean): Channel {
  const floor = Math.max(LEAST_HEAT, 0.1 * meanOf(hourly));
  const at = { room: 'the home', roomIndex: -1, quantity: 'heating', name: 'heating' } as const;
  if (!byMeter) return { ...at, unit: 'W', observed: hourly, floor };
  return { ...at, unit: 'W', observed: meansOver(hourly, DAILY), over: DAILY, floor };
}

/** What the plan's scenario says of logged gas and electricity that heats no rooms. */
function besideOf({ scenario, plan }: FitRequest): Beside {
  const { log = {} } = scenario.checked.get(plan) ?? {};
  return {
    gas: log['gas beside heating'] ?? null,
    electricity: log['electricity beside heating'] ?? null,
  };
}

function adjustablesOf(
  group: FittedStage['group'],
  { request, readings: { rooms }, division }: Work,
  plan: PreparedPlan,
): Adjustable[] {
  const { scenario } = request;
  const raw = rawOf(request);
  const named = (has: (room: Readings['rooms'][number]) => boolean) =>
    rooms.filter(has).map((room) => room.name);
  const logged: Logged = {
    humid: named(({ humidity }) => humidity !== null),
    warm: named(({ temperature }) => temperature !== null),
    metered: named(({ heat }) => heat !== null),
    mild: mildHours(request, division) >= FEWEST_MILD,
    absent: absentParts(plan.home),
    species: GASES.filter((gas) => rooms.some(({ species }) => species[gas] !== undefined)),
  };
  const of = group === 'water' ? waterAdjustables : heatAdjustables;
  return of(raw, plan.assumed, scenario.doubts, logged);
}

/** The scenario with its plan laid on, as plain values. */
function rawOf({ scenario, plan }: FitRequest): unknown {
  const chain = planChain(scenario.yaml.value, plan);
  return mergedFor(scenario.yaml.value, 'names' in chain ? chain.names : []);
}

/** Of walls, roofs and floors those that a home has none of. */
function absentParts({ elements }: Home): readonly string[] {
  const has = (kind: 'wall' | 'roof' | 'floor', to: 'outdoors' | 'ground') =>
    elements.some((one) => one.kind === kind && one.far.to === to);
  const parts = [
    ['wall', has('wall', 'outdoors')],
    ['roof', has('roof', 'outdoors')],
    ['floor', has('floor', 'ground')],
    ['exposed floor', has('floor', 'outdoors')],
  ] as const;
  return parts.flatMap(([part, there]) => (there ? [] : [part]));
}

/** Share of the fitted hours in which it was mild outdoors. [-] */
function mildHours({ weather }: FitRequest, division: Division): number {
  const fitted = weatherOfHours(weather, division, 0, division.withheld);
  return fitted.filter((t) => t > MILD).length / Math.max(1, fitted.length);
}

/** The first file of a log. */
const placeOf = (log: Log) => ({
  ...{ file: log.series[0]?.from.split(', ')[0] ?? 'the log', line: 0, column: 0, where: '' },
});

function requireHours({ log, weather }: FitRequest, { hours }: Division): void {
  if (hours >= FEWEST_HOURS) return;
  const day = (utc: number) => new Date(utc * 1000).toISOString().slice(0, 10);
  const weatherEnd = weather.start + weather.count * weather.step;
  throw new InputProblems([
    {
      ...placeOf(log),
      expected: 'a log and weather that have at least a week in common',
      got: `${Math.round(hours / 24)} days: the log from ${day(log.start)} to ${day(log.end)}, the weather from ${day(weather.start)} to ${day(weatherEnd)}`,
      hint: 'measured weather of the same days is needed; --weather names another file',
    },
  ]);
}

function requireReadings({ log }: FitRequest, { rooms }: Readings): void {
  if (rooms.some(({ temperature, humidity }) => temperature !== null || humidity !== null)) return;
  const found = log.series
    .map(({ quantity, room, place }) => `${quantity} of ${room ?? `the ${place}`}`)
    .join(', ');
  const names = rooms.map(({ name }) => name).join(', ');
  throw new InputProblems([
    {
      ...placeOf(log),
      expected: `temperature or humidity of a room: ${names}`,
      got: found,
      hint: 'say under "log: readings:" of the scenario which room and quantity a column is',
    },
  ]);
}

const MOST_RUNS = { water: 150, heat: 400 } as const;
/** Of those of water, for a first search. */
const ROUGH_RUNS = 45;
const DAILY = 24;
/** [W] */
const LEAST_HEAT = 20;
const HOUR = 3600;
/** Days before the log that runs may look back at. [s] */
const BEFORE = 30 * 86_400;
/** Outdoors [°C], and the share of the fitted hours from which windows may tell. */
const MILD = 6;
const FEWEST_MILD = 0.05;
const FEWEST_HOURS = 7 * 24;
