import {
  AIR_TERMS,
  type AirTerm,
  ENERGY_TERMS,
  type EnergyTerm,
  type Ledger,
  type SpeciesTerm,
  WATER_TERMS,
  type WaterTerm,
} from '../../src/engine/ledger/ledger.ts';
import type { DeviceTrace, TraceView } from '../../src/engine/record/trace.ts';
import type { Run } from '../../src/engine/run.ts';
import type { RoomBands } from '../../src/home/bands.ts';
import type { Home, Room } from '../../src/home/home.ts';
import { createMeasures } from '../../src/measures/create-measures.ts';
import type { MeasuresSetup } from '../../src/measures/measures-setup.ts';
import { monthEnds } from '../../src/measures/month-ends.ts';
import type { PlanMeasures } from '../../src/measures/plan-measures.ts';
import { saturationPressure } from '../../src/physics/moist-air/saturation-pressure.ts';
import { toLocal, UTC_CLOCK } from '../../src/units/local-clock.ts';
import type { Weather } from '../../src/weather/weather.ts';
import { aHome, aRoom } from '../home/a-home.ts';

type CoolerTrace = TraceView['home']['coolers'][number];

/** Monday 2 January 2023, midnight UTC. [s UTC] */
export const START = Date.UTC(2023, 0, 2) / 1000;

/** What one step of a hand-made trace holds; what is left out is fine, empty and dry. */
export interface Moment {
  air?: number;
  operative?: number;
  humidity?: number;
  heating?: number;
  cooling?: number;
  occupants?: number;
  asleep?: number;
  /** Air straight from outdoors. [m3/s] */
  outdoorAir?: number;
  /** Above outdoors. [Pa] */
  pressure?: number;
  windowOpen?: number;
  condensation?: number;
  species?: readonly number[];
  outdoor?: number;
  outdoorVapour?: number;
  infiltration?: number;
  fuel?: readonly number[];
  backup?: readonly number[];
  devices?: readonly Partial<Record<keyof DeviceTrace, number>>[];
  /** Closed share of each blind. [-] */
  blinds?: readonly number[];
  coolers?: readonly Partial<Record<keyof CoolerTrace, number>>[];
  electricity?: number;
  gas?: number;
}

export function room(name: string, over: Partial<Room> = {}): Room {
  return {
    ...aRoom(name, 12),
    volume: 30,
    mass: { capacity: 1e6, area: 20 },
    buffer: { capacity: 1, conductance: 1e-8, deep: { capacity: 0, conductance: 0 } },
    coldSpotFactor: 0.7,
    ...over,
  };
}

export function home(over: Partial<Home> = {}): Home {
  return aHome({
    rooms: [room('den')],
    leakage: { how: { by: 'rate', flow: 0.01 }, share: [1], ach50: null },
    ...over,
  });
}

export const BOILER = {
  name: 'boiler',
  fuel: 'gas',
  waterTemperature: 60,
  power: 2e4,
  conversion: { by: 'efficiency', efficiency: 0.85 },
} as const;

export const BANDS: RoomBands = {
  temperature: { low: 18, high: 26, reason: 'test' },
  humidity: { low: 40, high: 60, reason: 'test' },
  species: {},
};

export const WEATHER: Weather = {
  title: 'none',
  latitude: 54,
  longitude: -2,
  elevation: 0,
  start: START,
  step: 3600,
  count: 2,
  periodic: true,
  temperature: Float64Array.of(5, 5),
  humidityRatio: Float64Array.of(0.004, 0.004),
  pressure: Float64Array.of(101_325, 101_325),
  windSpeed: Float64Array.of(3, 5),
  windDirection: Float64Array.of(0, 0),
  directNormal: Float64Array.of(0, 0),
  diffuseHorizontal: Float64Array.of(0, 0),
  sun: 'measured',
  species: {},
  notes: [],
};

export function setup(over: Partial<MeasuresSetup> = {}): MeasuresSetup {
  const own = over.home ?? home();
  return {
    scenario: 'Hand-made',
    plan: 'as-lived',
    home: own,
    bands: own.rooms.map(() => BANDS),
    mouldClasses: own.rooms.map(() => 'very sensitive' as const),
    prices: { currency: 'GBP', fuels: {} },
    weather: WEATHER,
    clock: UTC_CLOCK,
    period: { start: START, hours: 24 },
    purchases: [],
    discountRate: 0,
    assumed: [],
    cautions: [],
    ...over,
  };
}

/** A trace cut into stretches of so many steps, the last as long as what is left. */
export function* stretches(
  own: Home,
  start: number,
  dt: number,
  steps: number,
  cuts: readonly number[],
  at: (step: number, room: number) => Moment,
): Generator<TraceView> {
  let firstStep = 0;
  for (let k = 0; firstStep < steps; k++) {
    const length = Math.min(cuts[k % cuts.length]!, steps - firstStep);
    yield stretch(own, start, dt, firstStep, length, at);
    firstStep += length;
  }
}

function stretch(
  own: Home,
  start: number,
  dt: number,
  firstStep: number,
  steps: number,
  at: (step: number, room: number) => Moment,
): TraceView {
  const rooms = own.rooms.length;
  const perRoom = (of: (m: Moment) => number): Float64Array =>
    Float64Array.from({ length: steps * rooms }, (_, n) =>
      of(at(firstStep + Math.floor(n / rooms), n % rooms)),
    );
  const perStep = (of: (m: Moment) => number): Float64Array =>
    Float64Array.from({ length: steps }, (_, s) => of(at(firstStep + s, 0)));
  const air = (m: Moment): number => m.air ?? 20;
  const humidity = (m: Moment): number => m.humidity ?? 50;
  return {
    firstStep,
    steps,
    rooms,
    dt,
    start: start + firstStep * dt,
    room: {
      airTemperature: perRoom(air),
      radiantTemperature: perRoom((m) => 2 * (m.operative ?? air(m)) - air(m)),
      operativeTemperature: perRoom((m) => m.operative ?? air(m)),
      humidityRatio: perRoom(() => 0.007),
      relativeHumidity: perRoom(humidity),
      vapourPressure: perRoom((m) => (humidity(m) / 100) * saturationPressure(air(m))),
      heating: perRoom((m) => m.heating ?? 0),
      cooling: perRoom((m) => m.cooling ?? 0),
      outdoorAir: perRoom((m) => m.outdoorAir ?? 0),
      pressureDifference: perRoom((m) => m.pressure ?? 0),
      occupants: perRoom((m) => m.occupants ?? 0),
      asleep: perRoom((m) => m.asleep ?? 0),
      windowOpen: perRoom((m) => m.windowOpen ?? 0),
      condensation: perRoom((m) => m.condensation ?? 0),
      wallCondensation: perRoom(() => 0),
      heldHeat: perRoom(() => 0),
      heldVapour: perRoom(() => 0),
      species: own.species.map((_, k) => perRoom((m) => m.species?.[k] ?? 0)),
    },
    home: {
      outdoorTemperature: perStep((m) => m.outdoor ?? 20),
      outdoorVapourPressure: perStep((m) => m.outdoorVapour ?? 600),
      outdoorSpecies: own.species.map(({ outdoor }) => perStep(() => outdoor)),
      infiltration: perStep((m) => m.infiltration ?? 0),
      sourceFuel: own.sources.map((_, k) => perStep((m) => m.fuel?.[k] ?? 0)),
      sourceBackup: own.sources.map((_, k) => perStep((m) => m.backup?.[k] ?? 0)),
      electricity: perStep((m) => m.electricity ?? 0),
      gas: perStep((m) => m.gas ?? 0),
      blinds: (own.blinds ?? []).map((_, b) => perStep((m) => m.blinds?.[b] ?? 0)),
      coolers: (own.cooling ?? []).map((_, c) => {
        const of = (what: keyof CoolerTrace) => perStep((m) => m.coolers?.[c]?.[what] ?? 0);
        return { removed: of('removed'), water: of('water'), electricity: of('electricity') };
      }),
      devices: own.devices.map((_, d) => {
        const of = (what: keyof DeviceTrace) => perStep((m) => m.devices?.[d]?.[what] ?? 0);
        return {
          electricity: of('electricity'),
          fuel: of('fuel'),
          water: of('water'),
          heat: of('heat'),
          share: of('share'),
        };
      }),
    },
  };
}

/** Ledger amounts for the first room in the first month; everything else is 0. */
export interface LedgerEntries {
  energy?: Partial<Record<EnergyTerm, number>>;
  water?: Partial<Record<WaterTerm, number>>;
  air?: Partial<Record<AirTerm, number>>;
  residual?: Partial<Ledger['residual']>;
}

export function ledger(
  rooms: number,
  months: readonly number[],
  entries: LedgerEntries = {},
  doorways = 0,
): Ledger {
  const column = (value = 0): Float64Array => {
    const values = new Float64Array(rooms * months.length);
    values[0] = value;
    return values;
  };
  const all = <Term extends string>(
    terms: readonly Term[],
    values: Partial<Record<Term, number>> = {},
  ): Record<Term, Float64Array> =>
    Object.fromEntries(terms.map((term) => [term, column(values[term])])) as never;
  return {
    months,
    rooms,
    energy: all(ENERGY_TERMS, entries.energy),
    water: all(WATER_TERMS, entries.water),
    air: all(AIR_TERMS, entries.air),
    doorways: {
      forth: new Float64Array(doorways * months.length),
      back: new Float64Array(doorways * months.length),
    },
    species: [] as Record<SpeciesTerm, Float64Array>[],
    stored: { energy: new Float64Array(rooms), water: new Float64Array(rooms), species: [] },
    residual: { energy: 0, water: 0, air: 0, species: [], ...entries.residual },
  };
}

function run(own: MeasuresSetup, dt: number, entries: LedgerEntries, control: Run['control']): Run {
  const { start, hours } = own.period;
  const months = monthEnds(own.period, own.clock).map((end) =>
    new Date(toLocal(own.clock, end - 1) * 1000).getUTCMonth(),
  );
  const { rooms, doorways } = own.home;
  const books = ledger(rooms.length, months, entries, doorways.length);
  return { start, hours, dt, ledger: books, control, notices: [] };
}

/** Measures of a trace over the setup's period, handed over in stretches of a day. */
export function measure(
  own: MeasuresSetup,
  at: (step: number, room: number) => Moment,
  {
    dt = 600,
    cuts = [86_400 / dt],
    entries = {},
    control = null,
  }: {
    dt?: number;
    cuts?: readonly number[];
    entries?: LedgerEntries;
    control?: Run['control'];
  } = {},
): PlanMeasures {
  const measures = createMeasures(own);
  const steps = (own.period.hours * 3600) / dt;
  for (const part of stretches(own.home, own.period.start, dt, steps, cuts, at)) {
    measures.observe(part);
  }
  return measures.finish(run(own, dt, entries, control));
}
