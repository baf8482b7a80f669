import { COMMON, type Preset } from '../../units/preset.ts';

/** What a thermostat with a gate and the like does where nobody says. [min], [K] */
export const THERMOSTAT = {
  holdOff: { value: 10, low: 0, high: 30, source: COMMON },
  /** Of the one thermostat that calls for the whole home. [K] */
  deadband: { value: 1, low: 0.3, high: 2, source: COMMON },
  /** Of plain valves beside it. [K] */
  plainValve: {
    value: 2,
    low: 1,
    high: 3,
    source: 'EN 215 names valves by a flow at 2 K below the setting (from memory)',
  },
  longestLead: { value: 180, low: 60, high: 300, source: COMMON },
  radiantShare: {
    value: 0.3,
    low: 0,
    high: 0.5,
    source: 'common practice, for a sensor on a wall away from the emitter',
  },
  valveBias: {
    value: 2,
    low: 1,
    high: 5,
    source: 'householders report gaps of 1.8, 3.5 to 4 and over 5 K between valve and room',
  },
} as const satisfies Readonly<Record<string, Preset>>;

/** Whoever could open or shut a window does so: share of the times [-], after so long [min]. */
export const ACTING = {
  probability: {
    value: 0.6,
    low: 0.2,
    high: 0.9,
    source: 'no figure found for homes: a guess, which the result depends on',
  },
  delay: { value: 5, low: 1, high: 30, source: COMMON },
  /** How long a window that was shut on advice stays so. [min] */
  closedFor: { value: 180, low: 60, high: 480, source: COMMON },
} as const satisfies Readonly<Record<string, Preset>>;

/** How days differ at random: shift [min], share of days off [-] and of days out [-]. */
export const IRREGULAR = {
  spread: { value: 20, low: 5, high: 60, source: COMMON },
  'days off': { value: 0.04, low: 0.01, high: 0.1, source: COMMON },
  'days out': { value: 0.04, low: 0.01, high: 0.1, source: COMMON },
} as const satisfies Readonly<Record<string, Preset>>;
