/**
 * What is known of one room and takes the place of what the model would work out: one value for each
 * control step of the reported period. What is absent is the model's own; the spin-up is, too, but
 * for temperature and humidity, which it holds at their first values.
 */
export interface ImposedSeries {
  /**
   * Air temperature at the end of each step, as a sensor reads it. Emitters of the room are off;
   * coolers that are set to keep it at about that temperature take out of it what they can. The heat
   * that the air would need besides is in the ledger and the trace. [°C]
   */
  readonly airTemperature?: Series;
  /** Humidity of the air at the end of each step; the vapour it would need is a result. [kg/kg] */
  readonly humidityRatio?: Series;
  /** Humidity of the air at the end of each step, over saturation at its temperature then. [%] */
  readonly relativeHumidity?: Series;
  /** People in the room, each as the mean of the household's people when awake. [-] */
  readonly people?: Series;
  /**
   * Whether somebody is in the room, as the share of each step; NaN is the model's own. There are as many as
   * the household has there, one who is awake where it has nobody, and those who sleep there in any
   * case, because motion sensors miss them.
   */
  readonly presence?: Series;
  /** Sensible heat of people. [W] */
  readonly peopleHeat?: Series;
  /** Vapour of people. [kg/s] */
  readonly peopleVapour?: Series;
  /** What people add to the air, by name of the species. [species unit m3/s] */
  readonly peopleSpecies?: Readonly<Record<string, Series>>;
  /** Heat given to the air besides everything else; negative is taken. [W] */
  readonly heat?: Series;
  /** Vapour given to the air besides everything else; negative is taken. [kg/s] */
  readonly vapour?: Series;
  /** Share by which all windows of the room stand open, whatever people and rules do; NaN is the model's own. [-] */
  readonly windows?: Series;
  /** Outdoor air over the room's volume, in place of its leaks and windows. [1/h] */
  readonly airChange?: Series;
  /** Outdoor air, in place of its leaks and windows. [m3/s] */
  readonly outdoorAir?: Series;
}

/** A start at which rooms are held until an instant and then let go. */
export interface HeldStart {
  /** Instant of release, at the end of a step of the reported period. [s UTC] */
  readonly until: number;
  /** By name of the room; one value a step until the release, or one for all of them. */
  readonly rooms: Readonly<Record<string, HeldSeries>>;
}

/** What a room is held at: readings at the end of each step, as in `ImposedSeries`. */
export interface HeldSeries {
  /** [°C] */
  readonly airTemperature?: Series | number;
  /** [kg/kg] */
  readonly humidityRatio?: Series | number;
  /** [%] */
  readonly relativeHumidity?: Series | number;
}

export type Series = ArrayLike<number>;
