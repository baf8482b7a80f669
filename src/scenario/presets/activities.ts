import { COMMON, type Preset } from '../../units/preset.ts';
import type { WHATS } from '../choices.ts';
import type { Use } from './rooms.ts';

export type What = (typeof WHATS)[number];

export interface ActivityPreset {
  /** Uses of the rooms where it takes place, in order of preference. */
  readonly uses: readonly Use[];
  /** Local times at which it starts; null is all day long. */
  readonly at: readonly string[] | null;
  /** [min] */
  readonly lasts: Preset;
  /** Water to the air, each time, of one. [L] */
  readonly water: Preset;
  /** Electricity, each time, of one. [kWh] */
  readonly energy: Preset;
  /** Share of what the household uses in a year, on every day of it; then `energy` is not asked. [-] */
  readonly ofHousehold?: number;
  /** Heat of a flame less that of its water, each time, of one; absent is none. [kWh] */
  readonly flame?: number;
  /** What keeps it from happening; see `Activity.stopsFor`. */
  readonly stopsFor?: 'an empty home' | 'holidays';
  /** True where the water evaporates in the room and takes its heat from it. */
  readonly drying: boolean;
}

const HANDBOOK = 'solar housing handbook 10.1';
const none = (source: string): Preset => ({ value: 0, low: 0, high: 0, source });
const minutes = (value: number, low: number, high: number): Preset => ({
  value,
  low,
  high,
  source: COMMON,
});

/**
 * When and where an activity happens and what heat and water it gives, water after four published
 * lists (see the sources). What it gives off besides stands with each species in `SPECIES`.
 *
 * Electricity, published besides: a fridge-freezer 1 kWh in 26 hours, an oven 2 kWh in half an hour, a
 * tumble dryer 4.5 kWh a cycle (Ofgem, average gas and electricity usage, 2023).
 */
export const ACTIVITIES: Readonly<Record<What, ActivityPreset>> = {
  shower: {
    uses: ['bathroom'],
    at: ['07:00'],
    lasts: minutes(10, 5, 15),
    water: {
      value: 0.42,
      low: 0.24,
      high: 1.1,
      source: `${HANDBOOK}: 2500 g/h; cold-climate list 0.24 L in 5 min; council leaflet 1.1 L`,
    },
    energy: none(COMMON),
    stopsFor: 'an empty home',
    drying: false,
  },
  bath: {
    uses: ['bathroom'],
    at: ['18:20'],
    lasts: minutes(20, 10, 40),
    water: { value: 0.23, low: 0.05, high: 1.1, source: `${HANDBOOK}: 700 g/h` },
    energy: none(COMMON),
    stopsFor: 'an empty home',
    drying: false,
  },
  cooking: {
    uses: ['kitchen', 'living'],
    at: ['17:45'],
    lasts: minutes(45, 30, 75),
    water: {
      value: 0.75,
      low: 0.45,
      high: 1.5,
      source: `${HANDBOOK}: 600 to 1500 g/h; cold-climate list 0.57 L a dinner`,
    },
    energy: { value: 0.9, low: 0.5, high: 1.8, source: COMMON },
    stopsFor: 'an empty home',
    drying: false,
  },
  'light meal': {
    uses: ['kitchen', 'living'],
    at: ['07:30'],
    lasts: minutes(15, 5, 30),
    water: { value: 0.15, low: 0.05, high: 0.4, source: `${HANDBOOK}: 600 g/h` },
    energy: { value: 0.2, low: 0.1, high: 0.4, source: COMMON },
    stopsFor: 'an empty home',
    drying: false,
  },
  dishes: {
    uses: ['kitchen', 'living'],
    at: ['19:00'],
    lasts: minutes(30, 15, 60),
    water: {
      value: 0.32,
      low: 0.2,
      high: 1,
      source: 'cold-climate list 0.68 US pint a day; NZ roofing code 1 L a day',
    },
    energy: none(COMMON),
    stopsFor: 'an empty home',
    drying: true,
  },
  'laundry dried indoors': {
    uses: ['utility', 'living'],
    at: ['18:30'],
    lasts: minutes(840, 480, 1440),
    water: {
      value: 2,
      low: 1.5,
      high: 5,
      source: 'Glasgow study of 100 homes: 2 L a load; NZ roofing code: 5 L',
    },
    energy: none(COMMON),
    stopsFor: 'holidays',
    drying: true,
  },
  plants: {
    uses: ['living'],
    at: null,
    lasts: minutes(1440, 1440, 1440),
    water: { value: 0.24, low: 0.17, high: 0.36, source: `${HANDBOOK}: 7 to 15 g/h each` },
    energy: none(COMMON),
    drying: true,
  },
  fridge: {
    uses: ['kitchen', 'living'],
    at: null,
    lasts: minutes(1440, 1440, 1440),
    water: none(COMMON),
    energy: { value: 0.7, low: 0.4, high: 1.2, source: COMMON },
    drying: false,
  },
  'lights and appliances': {
    uses: ['living'],
    at: ['17:30'],
    lasts: minutes(330, 240, 420),
    water: none(COMMON),
    energy: none(COMMON),
    ofHousehold: 0.4,
    stopsFor: 'an empty home',
    drying: false,
  },
  standby: {
    uses: ['kitchen', 'hall', 'living'],
    at: null,
    lasts: minutes(1440, 1440, 1440),
    water: none(COMMON),
    energy: none(COMMON),
    ofHousehold: 0.3,
    drying: false,
  },
  candles: {
    uses: ['living'],
    at: ['20:00'],
    lasts: minutes(120, 60, 240),
    water: { value: 0.013, low: 0.006, high: 0.038, source: 'paraffin of 5 g/h gives 6.6 g/h' },
    energy: none('burns wax, 0.12 kWh each'),
    flame: 0.12, // 60 W over two hours
    stopsFor: 'an empty home',
    drying: false,
  },
  cleaning: {
    uses: ['kitchen', 'living'],
    at: ['10:00'],
    lasts: minutes(30, 15, 60),
    water: { value: 0.1, low: 0.02, high: 0.3, source: `${COMMON}: a wet cloth` },
    energy: none(COMMON),
    stopsFor: 'an empty home',
    drying: true,
  },
  'tumble dryer': {
    uses: ['utility', 'bathroom', 'kitchen'],
    at: ['19:00'],
    lasts: minutes(120, 60, 180),
    water: {
      value: 0.3,
      low: 0.1,
      high: 0.6,
      source: 'what a condenser lets by of 2 L: 5 to 30 %, by its class (EN 61121, from memory)',
    },
    energy: {
      value: 2.2,
      low: 1.5,
      high: 5.3,
      source: 'a load of 9 kg in a magazine: heat pump 2.2, condenser 5.2, vented 5.3 kWh',
    },
    stopsFor: 'holidays',
    drying: false,
  },
  other: {
    uses: ['living'],
    at: null,
    lasts: minutes(60, 60, 60),
    water: none('not given'),
    energy: none('not given'),
    drying: false,
  },
};

/** An airing: how long [min] and how wide [-] where nobody says. */
export const AIRING: Readonly<Record<'lasts' | 'openShare', Preset>> = {
  lasts: { value: 10, low: 5, high: 15, source: 'airing guidance: 5 to 15 minutes by season' },
  openShare: { value: 1, low: 0.5, high: 1, source: COMMON },
};
