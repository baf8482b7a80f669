/** What somebody tries on a home: knobs, each at what it is today or elsewhere. */
export interface Trial {
  /** How much warmer every thermostat is set. [K] */
  readonly warmer: number;
  /** Setting of the night; null or the one offered is as it is, moved along with the thermostats. [°C] */
  readonly night: number | null;
  /** Whether rooms are heated only while somebody is seen in them. */
  readonly presence: boolean;
  /** All windows wide open twice a day for so long, besides the habits there are; 0 for none. [min] */
  readonly airing: number;
  /** What a dehumidifier keeps the offered room at; null for none. [%] */
  readonly dehumidifier: number | null;
  /** Price of electricity over today's. [-] */
  readonly electricity: number;
}

/** Which knobs a home has, and where they stand today. */
export interface TrialOffer {
  /** Whether there are thermostats to set, and to what; null where that differs by the hour. [°C] */
  readonly heats: boolean;
  readonly setpoint: number | null;
  /** What the night or the setback is; null where there is no such knob. [°C] */
  readonly night: number | null;
  readonly presence: boolean;
  readonly airing: boolean;
  /** Where a dehumidifier would stand; null where there is one already. */
  readonly room: string | null;
  /** Mean price of electricity; null where its prices are in a file. [currency/kWh] */
  readonly electricity: number | null;
}

/** Everything as it is today. */
export const AS_IT_IS: Trial = {
  ...{ warmer: 0, night: null, presence: false, airing: 0, dehumidifier: null, electricity: 1 },
};
