import type { Household } from './household.ts';

/**
 * What people set, do and are during one range of control steps, laid out for the engine.
 *
 * Step by step, rooms (openings, doorways) side by side: `[s * rooms + i]`. All values are means
 * over the step, so a ten-minute airing inside a longer step opens the window by a share.
 */
export interface DayInputs {
  readonly rooms: number;
  readonly steps: number;
  /** People in the room; of those, awake. [-] */
  readonly occupants: Float64Array;
  readonly awake: Float64Array;
  /** Sensible heat of people by room. [W] */
  readonly peopleHeat: Float64Array;
  /** Sensible heat of appliances and activities by room. [W] */
  readonly applianceHeat: Float64Array;
  /** Vapour of people by room. [kg/s] */
  readonly peopleVapour: Float64Array;
  /** Vapour of appliances and activities by room. [kg/s] */
  readonly applianceVapour: Float64Array;
  /** Water that evaporates in the room and takes its latent heat from it. [kg/s] */
  readonly drying: Float64Array;
  /** How many species there are. */
  readonly speciesCount: number;
  /** Sources of people, `[(step * rooms + room) * speciesCount + species]`. [species unit m3/s] */
  readonly peopleSpecies: Float64Array;
  /** Sources of appliances and activities, laid out alike. [species unit m3/s] */
  readonly applianceSpecies: Float64Array;
  /** Thermostat setting, -Infinity for off. [°C] */
  readonly setpoints: Float64Array;
  /** Setpoint of cooling, Infinity for off. [°C] */
  readonly coolingSetpoints: Float64Array;
  /** Open share of each opening. [-] */
  readonly openings: Float64Array;
  /** Share of the step in which each opening stands open at all. [-] */
  readonly openTimes: Float64Array;
  /** Share of the step in which each blind may be closed; empty where nobody closes any. [-] */
  readonly blinds: Float64Array;
  /** Open share of each doorway. [-] */
  readonly doorways: Float64Array;
  /** Electricity of activities, whole home. [W] */
  readonly electricity: Float64Array;
  /** Gas that activities burn, whole home. [W] */
  readonly gas: Float64Array;
}

/** Room for one range of at most `steps` steps. */
export function createDayInputs(
  household: Household,
  rooms: number,
  species: number,
  steps: number,
): DayInputs {
  const perRoom = (): Float64Array => new Float64Array(steps * rooms);
  const perSpecies = (): Float64Array => new Float64Array(steps * rooms * species);
  return {
    rooms,
    steps,
    occupants: perRoom(),
    awake: perRoom(),
    peopleHeat: perRoom(),
    applianceHeat: perRoom(),
    peopleVapour: perRoom(),
    applianceVapour: perRoom(),
    drying: perRoom(),
    speciesCount: species,
    peopleSpecies: perSpecies(),
    applianceSpecies: perSpecies(),
    setpoints: perRoom(),
    coolingSetpoints: perRoom().fill(Number.POSITIVE_INFINITY),
    openings: new Float64Array(steps * household.openings.length),
    openTimes: new Float64Array(steps * household.openings.length),
    blinds: new Float64Array(steps * (household.blinds?.length ?? 0)),
    doorways: new Float64Array(steps * household.doorways.length),
    electricity: new Float64Array(steps),
    gas: new Float64Array(steps),
  };
}
