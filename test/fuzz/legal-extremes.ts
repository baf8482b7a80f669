import { stringify } from 'yaml';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { runPlan } from '../../src/studies/run-plan.ts';
import { periodOf } from '../../src/weather/period-of.ts';
import { readWeather } from '../../src/weather/read/read-weather.ts';
import { scenarioJsonSchema } from '../reference/scenario-json-schema.ts';
import type { Chooser } from './chooser.ts';
import { legalValue, type Schema } from './from-schema.ts';
import type { Target } from './targets.ts';
import { wrongFigures, wrongWith } from './verdict.ts';

/**
 * Homes that the schema allows, from one room to sixty, with devices, rules and habits, in weather
 * from -40 to 50 °C, still or stormy, dry or saturated; run for one to three days.
 */
export const legalExtremes: Target = {
  make: (choose) => {
    const hours = 24 * (1 + choose.index(3));
    return JSON.stringify({
      scenario: stringify(homeOf(choose)),
      weather: weatherOf(choose, hours),
    });
  },
  judge: (text) => {
    const { scenario, weather } = JSON.parse(text) as { scenario: string; weather: string };
    return wrongWith(() => {
      const plan = preparePlan(readScenario(scenario, 'case.yaml'), {
        ...{ plan: null, set: [], files: new Map() },
      });
      const outdoors = readWeather(weather, 'case.csv');
      const period = periodOf(outdoors, null, null, plan.household.clock);
      return wrongFigures(runPlan({ plan, weather: outdoors, period }).measures);
    });
  },
};

const SCHEMA = scenarioJsonSchema() as unknown as Schema;
const part = (...path: string[]): Schema =>
  path.reduce<Schema>(
    (at, key) => (key === '*' ? (at.additionalProperties as Schema) : at.properties?.[key]) ?? {},
    SCHEMA,
  );

function homeOf(choose: Chooser): unknown {
  const count = choose.pick([1, 1, 2, 3, 4, 6, 10, 25, 60]);
  const names = Array.from({ length: count }, (_, k) => `room ${k + 1}`);
  const room = () => ({
    ...some(part('home', 'rooms', '*'), choose, [
      'over',
      'above',
      'below',
      'storey',
      'outer walls',
    ]),
    'floor area': choose.pick([1, 4, 12, 40, 200]),
  });
  const doorways = names
    .slice(1)
    .map((name, k) => ({ between: [names[choose.index(k + 1)], name] }));
  return {
    title: 'A legal home',
    weather: 'case.csv',
    site: {
      latitude: choose.between(-60, 65),
      longitude: choose.between(-170, 170),
      elevation: 30,
    },
    // Large homes take long steps, so that a case is short.
    step: choose.pick(count > 6 ? [30, 60] : count > 2 ? [10, 20, 60] : [1, 5, 10, 60]),
    home: {
      rooms: Object.fromEntries(names.map((name) => [name, room()])),
      doorways,
      ...(choose.chance(0.5) && { build: some(part('home', 'build'), choose) }),
      ...(choose.chance(0.5) && {
        leakage: choose.pick([{ ach50: 0.1 }, { ach50: 40 }, { 'air changes': 0 }, { area: 400 }]),
      }),
    },
    heating: some(part('heating'), choose, [
      'rooms',
      'night',
      'hours',
      'gate',
      'sensor',
      'thermostat',
    ]),
    ...(choose.chance(0.3) && { cooling: coolingOf(choose) }),
    household: householdOf(names, choose),
    devices: devicesOf(names, choose),
    rules: choose.chance(0.5) ? [ruleOf(names, choose)] : [],
    seed: choose.index(1000),
    ...(choose.chance(0.3) && { blinds: [blindsOf(choose)] }),
  };
}

/** Cooling that heating leaves room for: its setpoint lies above all that heating may hold. */
function coolingOf(choose: Chooser): unknown {
  return {
    source: choose.pick(['ideal', 'split', 'reversible heat pump']),
    setpoint: choose.pick([40.5, 45]),
    ...(choose.chance(0.5) && { power: choose.pick([50, 2500, 20_000]) }),
  };
}

/** Blinds over all panes; a home that happens to have none is refused. */
function blindsOf(choose: Chooser): unknown {
  return {
    rooms: 'all',
    kind: choose.pick(['roller shutter', 'curtain']),
    'g share': choose.pick([0, 0.5, 1]),
    'u share': choose.pick([0, 0.5, 1]),
    hours: choose.pick(['always', 'never', '08:00-20:00', '22:05-06:35']),
    ...(choose.chance(0.5) && { 'sun over': choose.pick([0, 100, 1500]) }),
    ...(choose.chance(0.5) && { 'temperature over': choose.pick([-20, 22, 50]) }),
  };
}

/** Some legal keys of a section, those apart that need more than the schema says. */
function some(schema: Schema, choose: Chooser, apart: readonly string[] = []): object {
  const properties = Object.fromEntries(
    Object.entries(schema.properties ?? {}).filter(([key]) => !apart.includes(key)),
  );
  return legalValue({ ...schema, properties }, choose) as object;
}

function householdOf(names: readonly string[], choose: Chooser): unknown {
  const people = Array.from({ length: choose.pick([0, 1, 2, 8]) }, () => ({
    who: choose.pick(['adult', 'child', 'infant']),
    schedule: [{ room: choose.pick(names), from: '00:00', to: choose.pick(['12:00', '24:00']) }],
  }));
  const what = choose.pick(['shower', 'bath', 'cooking', 'laundry']);
  return {
    people,
    activities: [{ what, room: choose.pick(names), at: '07:00', water: choose.pick([0, 0.5, 5]) }],
    airing: choose.chance(0.5)
      ? [{ rooms: 'all', at: ['08:00'], lasts: choose.pick([1, 600]) }]
      : [],
  };
}

function devicesOf(names: readonly string[], choose: Chooser): unknown {
  const kinds = [
    { kind: 'dehumidifier', label: choose.pick([2, 12, 60]), runs: 'always', drained: true },
    { kind: 'humidifier', water: choose.pick([50, 2000]), power: 30, runs: 'always' },
    { kind: 'extract fan', flow: choose.pick([5, 100, 2000]), power: 10, runs: 'always' },
    { kind: 'purifier', 'clean air': choose.pick([10, 900]), power: 40, runs: 'always' },
    { kind: 'heater', power: choose.pick([100, 5000]), runs: 'always' },
    { kind: 'stove', burns: '06:00-20:00' },
  ];
  const chosen = Array.from({ length: choose.index(4) }, (_, k) => [
    `device ${k}`,
    { ...choose.pick(kinds), room: choose.pick(names) },
  ]);
  return Object.fromEntries(chosen);
}

function ruleOf(names: readonly string[], choose: Chooser): unknown {
  const room = choose.pick(names);
  const reading = choose.pick(['temperature', 'humidity', 'co2', 'dew point']);
  return {
    name: 'rule',
    when: [{ room, reading, [choose.pick(['over', 'under'])]: choose.pick([1, 20, 50]) }],
    'on delay': choose.pick([0, 10, 600]),
    response: [
      choose.pick([{ tell: 'now' }, { open: room, lasts: 30 }, { setpoint: 'off', room }]),
    ],
  };
}

function weatherOf(choose: Chooser, hours: number): string {
  const mean = choose.pick([-40, -10, 5, 20, 50]);
  const swing = choose.pick([0, 0, 5]);
  const humidity = choose.pick([1, 50, 100]);
  const wind = choose.pick([0, 3, 35]);
  const sun = choose.pick([0, 0, 900]);
  const lines = Array.from({ length: hours }, (_, h) => {
    const time = new Date(Date.UTC(2023, 5, 1, h)).toISOString().slice(0, 16);
    const t = Math.max(-40, Math.min(50, mean + swing * Math.sin((h * Math.PI) / 12)));
    return `${time}Z,${t.toFixed(2)},${humidity},${wind},${choose.pick([0, 90, 270])},${sun},${sun / 5}`;
  });
  return [
    ...['# title: Invented', '# latitude: 50', '# longitude: 0', '# elevation: 30'],
    'time,temperature,relative humidity,wind speed,wind direction,direct normal,diffuse horizontal',
    ...lines,
  ].join('\n');
}
