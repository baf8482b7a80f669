/** One number of a scenario that a log may tell. */
export interface FitPlace {
  /** In words; no other has the same. */
  readonly name: string;
  readonly unit: string;
  /** What it may be: above 0, from 0 to 1, or anything. */
  readonly scale: 'positive' | 'share' | 'plain';
  /** Keys that lead to it. */
  readonly steps: readonly string[];
}

/** Those of the home and its people that stand in one place each. */
export const PLACES = {
  ach50: positive('air leakage at 50 Pa', '/h', 'home', 'leakage', 'ach50'),
  airChanges: positive('air changes', '/h', 'home', 'leakage', 'air changes'),
  leakageArea: positive('leakage area', 'm2', 'home', 'leakage', 'area'),
  openWhenMild: positive('windows left open when mild', '', 'household', 'open when mild'),
  usualAiring: positive('usual airing', '', 'household', 'usual airing'),
  moistureFactor: positive('moisture factor', '', 'household', 'moisture factor'),
  moistureBuffer: positive('moisture buffer', 'g/m2%', 'home', 'moisture buffer'),
  deepMoisture: positive('deep moisture', '', 'home', 'deep moisture'),
  windowShading: {
    ...positive('window shading', '', 'home', 'build', 'window shading'),
    scale: 'share',
  },
  heaterPower: positive('heater power per area', 'W/m2', 'heating', 'emitters', 'power per area'),
} as const satisfies Readonly<Record<string, FitPlace>>;

/** What rooms are cooled to. */
export const COOLING_SETPOINT: FitPlace = {
  ...{ name: 'cooling setpoint', unit: '°C', scale: 'plain', steps: ['cooling', 'setpoint'] },
};

/** Those that a factor of heat loss moves together, by the part of the building. */
export const U_VALUES: readonly (FitPlace & { readonly part: string })[] = [
  ...['wall', 'window', 'roof', 'floor', 'exposed floor'],
].map((part) => ({
  ...positive(`${part} U-value`, 'W/m2K', 'home', 'build', `${part} u-value`),
  part,
}));

/** Those that a factor of heat capacity moves together. */
export const CAPACITIES: readonly FitPlace[] = ['wall heat capacity', 'internal mass'].map((key) =>
  positive(key, 'kJ/m2K', 'home', 'build', key),
);

export const steadyMoisture = (room: string): FitPlace =>
  positive(`steady moisture (${room})`, 'g/h', 'home', 'rooms', room, 'steady moisture');

export const steadyHeat = (room: string): FitPlace =>
  positive(`steady heat (${room})`, 'W', 'home', 'rooms', room, 'steady heat');

function positive(name: string, unit: string, ...steps: readonly string[]): FitPlace {
  return { name, unit, scale: 'positive', steps };
}
