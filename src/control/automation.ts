import type { Tariff } from '../physics/economics/tariff.ts';
import type { SpeciesName } from '../species/species-table.ts';
import type { WeekSchedule } from './household.ts';

/**
 * Control of a home: sensors, thermostats, device controls, people who act on readings, and rules.
 * Plain data; `control/controller.ts` carries it out.
 *
 * Rooms, openings, devices and species are given by their index in Home; -1 stands for outdoors or
 * for the home as a whole, where that makes sense.
 */
export interface Automation {
  /** Random seed of all draws, so that a run can be repeated. */
  readonly seed: number;
  /** One per room, or null where nobody looks. */
  readonly presenceSensors: readonly (PresenceSensor | null)[];
  /** One per room. */
  readonly thermostats: readonly Thermostat[];
  /**
   * Room whose thermostat alone calls for heat, for all rooms; the others have plain valves, which get
   * heat only while it calls. Absent: every room calls for itself.
   */
  readonly callRoom?: number;
  /** Days on which thermostats heat at all; absent is every day. */
  readonly heatingSeason?: HeatingSeason;
  /** What thermostats keep on holidays; absent is what they keep on other days. */
  readonly holidaySetback?: HolidaySetback;
  /** One per room: when its cooling may run; absent is at all times. */
  readonly coolingGates?: readonly Gate[];
  /** One per blind of `Home.blinds`; absent is by the clock alone. */
  readonly blinds?: readonly BlindControl[];
  /** Price of a kWh that conditions go by; absent where none does. */
  readonly electricityTariff?: Tariff;
  readonly airings: readonly AiringHabit[];
  readonly deviceControls: readonly DeviceControl[];
  readonly rules: readonly Rule[];
}

export interface PresenceSensor {
  /** Hold-on time: how long it still reports presence after the last sign of life. [s] */
  readonly holdOn: number;
  /** Delay from the first sign of life until it reports presence. [s] */
  readonly delay: number;
  /** Probability of missing somebody awake, and somebody asleep, through ten minutes. [-] */
  readonly missesAwake: number;
  readonly missesAsleep: number;
}

/** A condition under which something may act. Both parts must hold. */
export interface Gate {
  /** Whose presence it needs, by the presence sensors: in the room, anywhere at home, or nobody's. */
  readonly present: 'no matter' | 'in the room' | 'at home';
  /** All windows of the room shut. */
  readonly windowsShut: boolean;
}

export interface Thermostat {
  /** When the gate is shut the room is held at `otherwise` instead of the programme; -Infinity is off. [°C] */
  readonly gate: Gate;
  readonly otherwise: number;
  /** How long the programme goes on after the gate closes. [s] */
  readonly holdOff: number;
  /** How early heating starts before the programme rises or somebody usually comes. */
  readonly lead:
    | { readonly by: 'none' }
    | { readonly by: 'fixed'; readonly seconds: number }
    | { readonly by: 'learned'; readonly most: number };
  /** Lowest setpoint, which overrides everything else. [°C] */
  readonly frostGuard: number;
  /** Heating stops so long after a window of the room was opened, until it is shut; null for never. [s] */
  readonly windowDelay: number | null;
  /** What the sensor reads above the room's air: always, and in addition at full output (a sensor on the valve). [K] */
  readonly bias: number;
  readonly valveBias: number;
  /** How much the sensor feels the surfaces around it rather than the air. [-] */
  readonly radiantShare: number;
  /** Distance below the setpoint at which emitters are fully open; 0 holds it exactly. [K] */
  readonly proportionalBand: number;
  /** Deadband: switches on half of it below the setpoint, off half of it above; 0 for none. [K] */
  readonly deadband: number;
}

/**
 * When the home is heated: in the months, while the days are cold or people are. Otherwise thermostats
 * keep the frost guard.
 */
export interface HeatingSeason {
  /** Bit m is set for the months that belong to it, January = bit 0. */
  readonly months: number;
  /** Limit under which the mean outdoor temperature of the days before must lie; Infinity for any. [°C] */
  readonly outdoorBelow: number;
  /** Whole local days that the mean is taken over. [d] */
  readonly days: number;
  /** Who is cold on other days of the months; absent is nobody who does something about it. */
  readonly ifCold?: ColdHousehold;
}

/** People who switch the heating on, for the rest of the day and as many days more as the mean is taken over. */
interface ColdHousehold {
  /** How far a room is under its programme before who is awake in it is cold. [K] */
  readonly under: number;
  /** How much of a day somebody is cold before somebody gets up and does it. [s] */
  readonly after: number;
}

export interface HolidaySetback {
  /** Highest setting on these days. [°C] */
  readonly setpoint: number;
  /** First and last local days, every year, month * 100 + day; null for the days on which all who live here are away. */
  readonly dates: readonly { readonly from: number; readonly to: number }[] | null;
}

/** Levels above which a blind is closed in its hours: all of them at once. */
export interface BlindControl {
  /** Irradiance on the plane of its pane, outside; -Infinity for any. [W/m2] */
  readonly sunAbove: number;
  /** Air temperature of the room behind it; -Infinity for any. [°C] */
  readonly roomAbove: number;
}

/** What can be read. Outdoors has temperature, humidities and species; `hour` and `electricity price` have no room. */
export type Quantity =
  | 'temperature' // °C
  | 'relative humidity' // %
  | 'absolute humidity' // g/m3
  | 'humidity above outdoors' // absolute humidity less that outdoors, g/m3
  | 'dew point' // °C
  | SpeciesName // in the species' unit
  | 'window' // 1 open, 0 shut
  | 'presence' // 1 there, 0 not, by the sensor
  | 'hour' // local, 0 to 24
  | 'hour since noon' // local, 0 to 24, for spans past midnight
  | 'electricity price'; // currency/kWh, mean over the step

/** Errors of a sensor: bias, noise, rounding, lag, reporting interval. */
export interface Sensor {
  /** Bias added to every reading. [unit of the quantity] */
  readonly bias: number;
  /** Standard deviation of the noise drawn at each report. [unit of the quantity] */
  readonly noise: number;
  /** Resolution to which readings are rounded; 0 for none. [unit of the quantity] */
  readonly step: number;
  /** Time constant of the first-order lag behind the room. [s] */
  readonly lag: number;
  /** Least interval between two reports. [s] */
  readonly every: number;
}

export interface Condition {
  readonly quantity: Quantity;
  /** Index of the room; -1 for outdoors, or for quantities without a room. */
  readonly room: number;
  readonly is: 'above' | 'below';
  readonly value: number;
  /** Level at which the condition returns to normal; that of `value` where there is no hysteresis. */
  readonly clear: number;
  readonly sensor: Sensor;
}

/** Habit of opening windows after readings, activities or waking. */
export interface AiringHabit {
  readonly name: string;
  readonly openings: readonly number[];
  /** Open share. [-] */
  readonly openShare: number;
  readonly after:
    | { readonly by: 'readings'; readonly all: readonly Condition[] }
    /** When an activity of the household ends (index), a given time later. [s] */
    | { readonly by: 'activity'; readonly activity: number; readonly later: number }
    /** When the first of the sleepers in a room gets up. */
    | { readonly by: 'waking'; readonly room: number };
  /** Shut again after this long [s], or as soon as all of these hold, whichever comes first. */
  readonly lasts: number;
  readonly until: readonly Condition[];
  /** Chance that somebody who could do it does, each time it comes up. [-] */
  readonly probability: number;
  /** Delay from the occasion to opening the window. [s] */
  readonly delay: number;
  /** Only if outdoor air holds at least so much less water than the room's [g/m3]; null for no matter. */
  readonly drierBy: number | null;
  /** Lowest outdoor temperature at which it is done. [°C] */
  readonly notBelow: number;
  /** A habit that is usual and that nobody described. */
  readonly usual?: true;
}

export interface DeviceControl {
  readonly device: number;
  readonly by:
    | { readonly kind: 'always' }
    /** Share of full output by the clock. */
    | { readonly kind: 'clock'; readonly schedule: WeekSchedule }
    /** Between on and off levels of a reading, e.g. a humidistat. */
    | { readonly kind: 'reading'; readonly on: Condition }
    /** With an activity (a fan with the shower), and so long after it. [s] */
    | { readonly kind: 'activity'; readonly activities: readonly number[]; readonly runOn: number }
    /** Only when a rule says so. */
    | { readonly kind: 'rule' };
  readonly gate: Gate;
  /** 1 where it may run by the clock, 0 where not. */
  readonly permitted: WeekSchedule;
  /** Least time of a run, and of a rest. [s] */
  readonly leastRun: number;
  readonly leastRest: number;
  /** Runs only if outdoor air holds at least so much less water than the room's [g/m3]; null for no matter. */
  readonly drierBy: number | null;
  /** Longest run without a rest; Infinity for any. [s] */
  readonly mostRun: number;
  /** A full tank is emptied only while somebody is home and awake. */
  readonly emptiedByPeople: boolean;
}

/** A rule that stands for several rooms, as one of them knows it. */
export interface RuleSeries {
  /** What rules of the same series share. */
  readonly number: number;
  /** Without a room. */
  readonly name: string;
  readonly room: string;
}

/** Fires when all its conditions have held for the on delay and its gate is open, and then does its actions. */
export interface Rule {
  readonly name: string;
  readonly all: readonly Condition[];
  /** How long all conditions must have held before the rule fires. [s] */
  readonly onDelay: number;
  readonly gate: Gate;
  /** Room of the gate; absent is that of the first condition that has one. */
  readonly room?: number;
  /** When it tells nobody; absent is never. */
  readonly limits?: MessageLimits;
  /** The rule that stands for several rooms, one of which this one is for; absent for a rule by itself. */
  readonly series?: RuleSeries;
  readonly actions: readonly RuleAction[];
}

/** What keeps a rule from telling people; devices and thermostats follow it all the same. */
export interface MessageLimits {
  /** 1 in quiet hours: what is still so at their end is told then. */
  readonly quiet?: WeekSchedule;
  /** Messages in a local day, of all rules of its series together; what is still so after is told then. */
  readonly mostPerDay?: number;
  /** Tells again so long after, while it stays active. [s] */
  readonly repeatAfter?: number;
}

export type RuleAction =
  /** Tells people something; does not open a window. */
  | { readonly do: 'tell'; readonly what: string }
  | { readonly do: 'lamp'; readonly what: string }
  /** While the rule holds. */
  | { readonly do: 'device'; readonly device: number; readonly on: boolean }
  /** Somebody home and awake may do it, after a delay. */
  | {
      readonly do: 'window';
      readonly openings: readonly number[];
      /** Open share; 0 shuts it, whatever the clock says. [-] */
      readonly openShare: number;
      readonly lasts: number;
      readonly probability: number;
      readonly delay: number;
    }
  /** While the rule holds. [°C] */
  | { readonly do: 'setpoint'; readonly room: number; readonly setpoint: number };

/** Whether an action is a message to people or asks something of them; devices and settings follow a rule without a word. */
export const reachesPeople = ({ do: what }: RuleAction): boolean =>
  what !== 'device' && what !== 'setpoint';

export const OPEN_GATE: Gate = { present: 'no matter', windowsShut: false };

export const PLAIN_THERMOSTAT: Thermostat = {
  gate: OPEN_GATE,
  otherwise: Number.NEGATIVE_INFINITY,
  holdOff: 0,
  lead: { by: 'none' },
  frostGuard: Number.NEGATIVE_INFINITY,
  windowDelay: null,
  bias: 0,
  valveBias: 0,
  radiantShare: 0,
  proportionalBand: 0,
  deadband: 0,
};

/** Sensor without bias, noise, rounding, lag or interval. */
export const PERFECT_SENSOR: Sensor = { bias: 0, noise: 0, step: 0, lag: 0, every: 0 };
