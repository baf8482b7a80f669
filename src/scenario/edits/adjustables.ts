import type { Assumed } from '../../home/notices.ts';
import { SPECIES } from '../../species/species-table.ts';
import type { Preset } from '../../units/preset.ts';
import { mapping } from '../checks/tolerant-readers.ts';
import {
  CAPACITY_FACTOR,
  LOSS_FACTOR,
  MOISTURE_FACTOR,
  OPEN_WHEN_MILD,
  STEADY_HEAT,
  STEADY_MOISTURE,
  THERMOSTAT_BIAS,
} from '../presets/fitted.ts';
import { pointerOf } from '../yaml/json-pointer.ts';
import { settingWords } from '../yaml/settings.ts';
import {
  CAPACITIES,
  COOLING_SETPOINT,
  type FitKind,
  type FitPlace,
  PLACES,
  steadyHeat,
  steadyMoisture,
  U_VALUES,
} from './fit-places.ts';
import { givenNumber } from './scenario-facts.ts';

/** Something of a scenario that a log may tell: one number, at one place or several at a time. */
export interface Adjustable {
  /** A short name that no other has, such as "air leakage" or "steady moisture (bedroom)". */
  readonly name: string;
  readonly kind: FitKind;
  /** The room that it is of; absent for the home. */
  readonly room?: string;
  readonly unit: string;
  /** What it may be: above 0, from 0 to 1, or anything. */
  readonly scale: 'positive' | 'share' | 'plain';
  readonly value: number;
  /** What holds where the scenario says nothing more: `value`, or what stands for none. */
  readonly before: number;
  /** Standard deviation that no fit goes below, on its scale: 0.1 is 10 % of what is above 0. */
  readonly least: number;
  /** Limits that hold it in 95 of 100 homes. */
  readonly low: number;
  readonly high: number;
  /** Who says so. */
  readonly source: string;
  /** Where it is written, and what is written there for a value. */
  readonly places: readonly AdjustedPlace[];
  /** Settings that have to be made besides, before those of the places. */
  readonly besides: readonly string[];
}

interface AdjustedPlace {
  readonly path: string;
  readonly at: (value: number) => number;
  /** Part of the building whose U-value it is; absent for all else. */
  readonly part?: string;
}

/** What a log holds, as far as it decides what can be fitted. */
export interface Logged {
  /** Rooms with a humidity, with a temperature, and those of the latter whose heat was metered. */
  readonly humid: readonly string[];
  readonly warm: readonly string[];
  readonly metered: readonly string[];
  /** Whether days were mild enough for people to leave windows open. */
  readonly mild: boolean;
  /**
   * Whether airing for some minutes shows in readings of water and breath, falls between them by chance,
   * or was logged itself at all windows; `shows` where not given.
   */
  readonly airing?: 'shows' | 'falls between' | 'logged';
  /** Whether rooms whose temperature was logged may have been cooled. */
  readonly cooled?: boolean;
  /** Species that some room has a series of. */
  readonly species: readonly string[];
  /** Parts of a building that the home has not, such as the roof of a flat. */
  readonly absent?: readonly string[];
}

/**
 * What readings of humidity may tell: where water comes from, where it goes, what holds it; with a
 * species, also how much of it people give off.
 *
 * @param raw      the scenario with its plan laid on, as plain values
 * @param assumed  what the prepared plan fills in
 * @param doubts   what the scenario doubts
 */
export function waterAdjustables(
  raw: unknown,
  assumed: readonly Assumed[],
  doubts: readonly Doubt[],
  { humid, mild, airing = 'shows', species }: Logged,
): Adjustable[] {
  const known = createKnown(raw, assumed, doubts);
  return [
    ...known.at(PLACES.ach50),
    ...known.at(PLACES.airChanges),
    ...known.at(PLACES.leakageArea),
    ...(mild && airing !== 'logged' ? known.own(PLACES.openWhenMild, OPEN_WHEN_MILD) : []),
    ...(airing === 'logged' ? [] : known.at(PLACES.usualAiring)).map((one) =>
      airing === 'shows' ? one : { ...one, least: BETWEEN_READINGS },
    ),
    ...known.own(PLACES.moistureFactor, MOISTURE_FACTOR, MOISTURE_FACTOR.value),
    ...known.at(PLACES.moistureBuffer),
    ...known.at(PLACES.deepMoisture),
    ...humid.flatMap((room) => known.own(steadyMoisture(room), STEADY_MOISTURE)),
    ...species.flatMap((name) =>
      ['awake', 'asleep'].flatMap((state) =>
        known.at({
          ...{
            name: `${symbolOf(name)} of a body ${state}`,
            kind: 'breath',
            unit: 'm3/h',
            scale: 'positive',
          },
          steps: ['household', 'bodies', state, name],
        }),
      ),
    ),
  ];
}

/** What readings of temperature may tell: losses, capacity, sun, thermostats, heat of other kinds. */
export function heatAdjustables(
  raw: unknown,
  assumed: readonly Assumed[],
  doubts: readonly Doubt[],
  { warm, metered, cooled = false, absent = [] }: Logged,
): Adjustable[] {
  const known = createKnown(raw, assumed, doubts);
  const heating = mapping(raw, 'heating');
  return [
    ...known.together(
      { name: 'heat loss factor', kind: 'heat loss' },
      LOSS_FACTOR,
      U_VALUES.filter(({ part }) => !absent.includes(part)),
    ),
    ...known.together(
      { name: 'heat capacity factor', kind: 'heat capacity' },
      CAPACITY_FACTOR,
      CAPACITIES,
    ),
    ...known.at(PLACES.windowShading),
    ...known.at(PLACES.heaterPower),
    ...warm.flatMap((room) =>
      metered.includes(room) || heating['source'] === 'none'
        ? []
        : thermostatBias(heating, room, known),
    ),
    ...(cooled ? coolingBias(raw, known) : []),
    ...warm.flatMap((room) => known.own(steadyHeat(room), STEADY_HEAT)),
  ];
}

const symbolOf = (name: string): string =>
  SPECIES.find((each) => each.name === name)?.symbol ?? name;

export interface Doubt {
  readonly path: string;
  readonly low: number;
  readonly high: number;
}

/** A thermostat's error; a room that is off has none. */
function thermostatBias(
  heating: Readonly<Record<string, unknown>>,
  room: string,
  known: ReturnType<typeof createKnown>,
): Adjustable[] {
  const own = mapping(heating['rooms'])[room];
  if (own === 'off') return [];
  const plain = typeof own === 'number' || typeof own === 'string';
  const sensor = mapping(own)['sensor'] ?? heating['sensor'];
  const whole = typeof sensor === 'string' ? { place: sensor } : { ...mapping(sensor) };
  const at = ['heating', 'rooms', room];
  const besides = [
    ...(plain ? [settingWords(pointerOf(at), JSON.stringify({ setpoint: own }))] : []),
    settingWords(pointerOf([...at, 'sensor']), JSON.stringify({ ...whole, bias: 0 })),
  ];
  const steps = [...at, 'sensor', 'bias'];
  return known
    .own(
      {
        ...{ name: `thermostat error (${room})`, kind: 'thermostat', room },
        ...{ unit: 'K', scale: 'plain', steps },
      },
      THERMOSTAT_BIAS,
    )
    .map((each) => ({ ...each, besides }));
}

/** Setpoints of cooling that are given as one number each. */
function coolingSetpoints(raw: unknown) {
  const { rooms } = mapping(raw, 'cooling');
  const own = Array.isArray(rooms) ? [] : Object.keys(mapping(rooms));
  const all = [
    COOLING_SETPOINT.steps,
    ...own.flatMap((room) => {
      const at = ['cooling', 'rooms', room];
      return [at, [...at, 'setpoint']];
    }),
  ];
  return all.flatMap((steps) => {
    const path = pointerOf(steps);
    const given = givenNumber(raw, path);
    return given === undefined ? [] : [{ path, given }];
  });
}

/** What rooms are cooled to where nobody stated it for certain, else the error of what cools them. */
function coolingBias(raw: unknown, known: ReturnType<typeof createKnown>): Adjustable[] {
  const asked = known.at(COOLING_SETPOINT);
  const given = coolingSetpoints(raw);
  if (asked.length > 0 || given.length === 0) return asked;
  const places = given.map(({ path, given }) => ({ path, at: (x: number) => given - x }));
  const is = { unit: 'K', scale: 'plain' } as const;
  return [
    {
      ...{ name: 'thermostat error of cooling', kind: 'thermostat of cooling' },
      ...{ ...is, ...THERMOSTAT_BIAS, before: THERMOSTAT_BIAS.value },
      ...{ places, besides: [], least: LEAST.plain },
    },
  ];
}

/** What is known of numbers before the log is looked at. */
function createKnown(raw: unknown, assumed: readonly Assumed[], doubts: readonly Doubt[]) {
  /** The number at a place where it is assumed or doubted; null where it is given for certain or not asked. */
  function prior(path: string): Preset | null {
    const doubt = doubts.find((each) => each.path === path);
    const row = assumed.find((each) => each.path === path);
    const value = givenNumber(raw, path) ?? row?.value;
    if (typeof value !== 'number') return null;
    if (doubt !== undefined) return { value, low: doubt.low, high: doubt.high, source: DOUBTED };
    if (row === undefined || row.low === null || row.high === null) return null;
    return { value, low: row.low, high: row.high, source: row.source };
  }

  function at({ steps, ...is }: FitPlace): Adjustable[] {
    const path = pointerOf(steps);
    const found = prior(path);
    if (found === null || !(found.low < found.high)) return [];
    return [alone({ ...is, ...found, before: found.value }, path)];
  }

  /**
   * A number that stands nowhere unless somebody gives it: as given or doubted, else as it may be.
   *
   * @param without  what it is where nobody gives it
   */
  function own({ steps, ...is }: FitPlace, usual: Preset, without = 0): Adjustable[] {
    const path = pointerOf(steps);
    const doubt = doubts.find((each) => each.path === path);
    const given = givenNumber(raw, path);
    if (given !== undefined && doubt === undefined) return [];
    const found =
      doubt === undefined
        ? usual
        : { value: given ?? usual.value, low: doubt.low, high: doubt.high, source: DOUBTED };
    return [alone({ ...is, ...found, before: given ?? without }, path)];
  }

  /** All assumed numbers among some, times one factor. */
  function together(
    is: Pick<Adjustable, 'name' | 'kind'>,
    usual: Preset,
    all: readonly (Pick<FitPlace, 'steps'> & {
      readonly part?: string;
      /** Most that the place takes. */
      readonly most?: number;
    })[],
  ): Adjustable[] {
    const places = all.flatMap(({ steps, part, most = Number.POSITIVE_INFINITY }) => {
      const path = pointerOf(steps);
      const value = prior(path)?.value;
      if (value === undefined) return [];
      const at = (x: number) => Math.min(most, value * x);
      return [{ path, at, ...(part !== undefined && { part }) }];
    });
    return places.length === 0
      ? []
      : [
          {
            ...is,
            unit: '',
            scale: 'positive',
            ...usual,
            before: usual.value,
            places,
            besides: [],
            least: LEAST.positive,
          },
        ];
  }

  return { at, own, together };
}

/** A number that stands in one place and is set there as it is. */
const alone = (
  of: Pick<Adjustable, 'name' | 'kind' | 'room' | 'unit' | 'scale' | 'before'> & Preset,
  path: string,
): Adjustable => ({
  ...of,
  places: [{ path, at: (x) => x }],
  besides: [],
  least: LEAST_OF[of.kind] ?? LEAST[of.scale],
});

/**
 * What is claimed at best: sensors see a place and not a room, and a model is not the home. Small
 * sources are told only beside the large ones, and vapour that comes in bursts only as finely as it
 * was logged; how far is taken from twins.
 */
const LEAST = { positive: 0.08, share: 0.27, plain: 0.1 } as const;
const LEAST_OF: Partial<Readonly<Record<FitKind, number>>> = {
  ...{ 'steady moisture': 0.65, 'steady heat': 0.6, 'heater power': 0.18 },
  ...{ 'moisture factor': 0.11, 'moisture buffer': 0.11, 'deep moisture': 0.24 },
};

/**
 * Of airing for ten minutes in readings half an hour apart: a twin's 1 was found as 1.73, 1.29, 0.96, 0.60 and 0.87
 * where they fell 0, 5, 10, 20 and 25 minutes past the hour, and as 0.93 to 1.12 in readings 5 to 15 minutes apart.
 */
const BETWEEN_READINGS = 0.4;

const DOUBTED = 'stated in the scenario';
