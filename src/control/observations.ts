import type { DayInputs } from './day-inputs.ts';

/**
 * Observations at the start of a control step. Filled by the engine, read by control; the arrays are
 * reused throughout a run.
 */
export interface Observation {
  /** Air temperature by room. [°C] */
  readonly temperature: Float64Array;
  /** Temperature that each room's thermostat feels, of air and surfaces. [°C] */
  readonly felt: Float64Array;
  /** Relative humidity of the air by room. [%] */
  readonly relativeHumidity: Float64Array;
  /** Absolute humidity of the air by room. [g/m3] */
  readonly absoluteHumidity: Float64Array;
  /** Output of each room's emitters over their maximum, mean over the step before. [-] */
  readonly output: Float64Array;
  /** Concentration by species and room. [species unit] */
  readonly species: readonly Float64Array[];
  /** Irradiance on the plane of each blind's pane, mean over the coming step. [W/m2] */
  readonly sun: Float64Array;
  /** Outdoors now: [0] temperature [°C], [1] relative humidity [%], [2] absolute humidity [g/m3]. */
  readonly outdoor: Float64Array;
  /** Outdoor concentration by species. [species unit] */
  readonly outdoorSpecies: Float64Array;
  /** Per device: water in the tank [kg]; 1 when the tank is full. */
  readonly tank: Float64Array;
  readonly full: Uint8Array;
}

/**
 * Commands for one control step. Each step begins with the scheduled values (`followSchedules`), which
 * people, rules and thermostats change before the engine applies them. The schedules themselves are
 * never written to.
 */
export interface Commands {
  /** Per room: what the thermostat holds, -Infinity for off. [°C] */
  readonly setpoints: Float64Array;
  /** Per room: what cooling holds, Infinity for off. [°C] */
  readonly coolingSetpoints: Float64Array;
  /** Per opening: open share, mean over the step [-]; share of the step in which it is open at all [-]. */
  readonly openings: Float64Array;
  readonly openTimes: Float64Array;
  /** Per blind: closed share, mean over the step. [-] */
  readonly blinds: Float64Array;
  /** Per doorway: open share, mean over the step. [-] */
  readonly doorways: Float64Array;
  /** Per device: share of full output over the coming step. [-] */
  readonly devices: Float64Array;
  /** Per device: 1 when its tank is emptied now. */
  readonly empty: Uint8Array;
  /** Per room: width of the thermostat's proportional band in this step [K]. */
  readonly band: Float64Array;
}

export function createObservation(
  rooms: number,
  species: number,
  devices: number,
  blinds = 0,
): Observation {
  const perRoom = (): Float64Array => new Float64Array(rooms);
  return {
    temperature: perRoom(),
    felt: perRoom(),
    relativeHumidity: perRoom(),
    absoluteHumidity: perRoom(),
    output: perRoom(),
    species: Array.from({ length: species }, perRoom),
    sun: new Float64Array(blinds),
    outdoor: new Float64Array(3),
    outdoorSpecies: new Float64Array(species),
    tank: new Float64Array(devices),
    full: new Uint8Array(devices),
  };
}

/** Commands of a home, all shut and off. */
export function createCommands(home: CommandCounts): Commands {
  const { rooms, openings, blinds = [], doorways, devices } = home;
  return {
    setpoints: new Float64Array(rooms.length),
    coolingSetpoints: new Float64Array(rooms.length).fill(Number.POSITIVE_INFINITY),
    openings: new Float64Array(openings.length),
    openTimes: new Float64Array(openings.length),
    blinds: new Float64Array(blinds.length),
    doorways: new Float64Array(doorways.length),
    devices: new Float64Array(devices.length),
    empty: new Uint8Array(devices.length),
    band: new Float64Array(rooms.length),
  };
}

type CommandCounts = Readonly<
  Record<'rooms' | 'openings' | 'doorways' | 'devices', { readonly length: number }>
> & { readonly blinds?: { readonly length: number } };

/** Begin step `s` of a day with what the clock says; devices and bands stay as they were. */
export function followSchedules(commands: Commands, day: DayInputs, s: number): void {
  copySlice(commands.setpoints, day.setpoints, s);
  copySlice(commands.coolingSetpoints, day.coolingSetpoints, s);
  copySlice(commands.openings, day.openings, s);
  copySlice(commands.openTimes, day.openTimes, s);
  if (day.blinds.length > 0) copySlice(commands.blinds, day.blinds, s);
  copySlice(commands.doorways, day.doorways, s);
}

function copySlice(to: Float64Array, from: Float64Array, s: number): void {
  const at = s * to.length;
  for (let i = 0; i < to.length; i++) to[i] = from[at + i]!;
}
