import { MOST_FLOOR_U_VALUE, MOST_U_VALUE } from '../presets/most-u-value.ts';
/** What a log may tell, by what it does in a home. */
export type FitKind =
  | 'leakage at 50 Pa'
  | 'leakage'
  | 'windows left open'
  | 'usual airing'
  | 'moisture factor'
  | 'moisture buffer'
  | 'deep moisture'
  | 'steady moisture'
  | 'breath'
  | 'U-value'
  | 'heat loss'
  | 'heat capacity'
  | 'window shading'
  | 'heater power'
  | 'thermostat'
  | 'thermostat of cooling'
  | 'cooling setpoint'
  | 'steady heat';

/** One number of a scenario that a log may tell. */
export interface FitPlace {
  /** In words; no other has the same. */
  readonly name: string;
  readonly kind: FitKind;
  /** The room that it is of; absent for the home. */
  readonly room?: string;
  readonly unit: string;
  /** What it may be: above 0, from 0 to 1, or anything. */
  readonly scale: 'positive' | 'share' | 'plain';
  /** Keys that lead to it. */
  readonly steps: readonly string[];
}

/** Those of the home and its people that stand in one place each. */
export const PLACES = {
  ach50: positive('leakage at 50 Pa', 'air leakage at 50 Pa', '/h', 'home', 'leakage', 'ach50'),
  airChanges: positive('leakage', 'air changes', '/h', 'home', 'leakage', 'air changes'),
  leakageArea: positive('leakage', 'leakage area', 'm2', 'home', 'leakage', 'area'),
  openWhenMild: positive(
    'windows left open',
    'windows left open when mild',
    '',
    'household',
    'open when mild',
  ),
  usualAiring: called('usual airing', '', 'household', 'usual airing'),
  moistureFactor: called('moisture factor', '', 'household', 'moisture factor'),
  moistureBuffer: called('moisture buffer', 'g/m2%', 'home', 'moisture buffer'),
  deepMoisture: called('deep moisture', '', 'home', 'deep moisture'),
  windowShading: {
    ...called('window shading', '', 'home', 'build', 'window shading'),
    scale: 'share',
  },
  heaterPower: positive(
    'heater power',
    'heater power per area',
    'W/m2',
    'heating',
    'emitters',
    'power per area',
  ),
} as const satisfies Readonly<Record<string, FitPlace>>;

/** What rooms are cooled to. */
export const COOLING_SETPOINT: FitPlace = {
  ...{ name: 'cooling setpoint', kind: 'cooling setpoint', unit: '°C', scale: 'plain' },
  steps: ['cooling', 'setpoint'],
};

/** Those that a factor of heat loss moves together, by the part of the building. */
export const U_VALUES: readonly (FitPlace & { readonly part: string; readonly most: number })[] = [
  ...['wall', 'window', 'roof', 'floor', 'exposed floor'],
].map((part) => ({
  ...positive('U-value', `${part} U-value`, 'W/m2K', 'home', 'build', `${part} u-value`),
  part,
  most: part.endsWith('floor') ? MOST_FLOOR_U_VALUE : MOST_U_VALUE,
}));

/** Those that a factor of heat capacity moves together. */
export const CAPACITIES: readonly FitPlace[] = ['wall heat capacity', 'internal mass'].map((key) =>
  positive('heat capacity', key, 'kJ/m2K', 'home', 'build', key),
);

export const steadyMoisture = (room: string): FitPlace => ofRoom('steady moisture', 'g/h', room);

export const steadyHeat = (room: string): FitPlace => ofRoom('steady heat', 'W', room);

/** What a room is given at all hours. */
function ofRoom(kind: 'steady moisture' | 'steady heat', unit: string, room: string): FitPlace {
  return { ...positive(kind, `${kind} (${room})`, unit, 'home', 'rooms', room, kind), room };
}

/** A number whose kind is its name. */
function called(kind: FitKind, unit: string, ...steps: readonly string[]): FitPlace {
  return positive(kind, kind, unit, ...steps);
}

function positive(
  kind: FitKind,
  name: string,
  unit: string,
  ...steps: readonly string[]
): FitPlace {
  return { name, kind, unit, scale: 'positive', steps };
}
