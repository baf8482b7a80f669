/**
 * What there is to be seen at the start of a control step. Filled by the engine, read by control;
 * the arrays stay the same for a whole run.
 */
export interface Observation {
  /** Per room. */
  readonly temperature: Float64Array; // air [°C]
  readonly relativeHumidity: Float64Array; // [%]
  readonly absoluteHumidity: Float64Array; // [g/m3]
  /** Heat of the room's emitters over their most, mean over the step before. [-] */
  readonly output: Float64Array;
  /** By species, one number a room. */
  readonly species: readonly Float64Array[];
  /** Outdoors now: [0] temperature [°C], [1] relative humidity [%], [2] absolute humidity [g/m3]. */
  readonly outdoor: Float64Array;
  /** Outdoors now, by species. */
  readonly outdoorSpecies: Float64Array;
  /** Per device: water in the tank [kg]; 1 when the tank is full. */
  readonly tank: Float64Array;
  readonly full: Uint8Array;
}

/** What control tells the engine besides the day's lines. */
export interface Commands {
  /** Per device: share of full output over the coming step. [-] */
  readonly devices: Float64Array;
  /** Per device: 1 when its tank is emptied now. */
  readonly empty: Uint8Array;
  /** Per room: width of the thermostat's proportional band in this step [K]. */
  readonly band: Float64Array;
}

export function createObservation(rooms: number, species: number, devices: number): Observation {
  const perRoom = (): Float64Array => new Float64Array(rooms);
  return {
    temperature: perRoom(),
    relativeHumidity: perRoom(),
    absoluteHumidity: perRoom(),
    output: perRoom(),
    species: Array.from({ length: species }, perRoom),
    outdoor: new Float64Array(3),
    outdoorSpecies: new Float64Array(species),
    tank: new Float64Array(devices),
    full: new Uint8Array(devices),
  };
}

export function createCommands(rooms: number, devices: number): Commands {
  return {
    devices: new Float64Array(devices),
    empty: new Uint8Array(devices),
    band: new Float64Array(rooms),
  };
}
