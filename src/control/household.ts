import type { LocalClock } from '../units/local-clock.ts';

/**
 * What people set, do and are, by the wall clock. All of it is plain data; `control/day-inputs.ts` lays it
 * out on the control step, one day at a time.
 */
export interface Household {
  readonly clock: LocalClock;
  /** Decides which days are irregular; absent means 1. */
  readonly seed?: number;
  readonly people: readonly Person[];
  readonly activities: readonly Activity[];
  /** One per room, in the order of `Home.rooms`: thermostat setting [°C]; -Infinity is off. */
  readonly setpoints: readonly WeekSchedule[];
  /** One per room: setpoint of cooling [°C]; Infinity is off. Absent is off everywhere. */
  readonly cooling?: readonly WeekSchedule[];
  /** One per opening: share of its full area that stands open. [-] */
  readonly openings: readonly OpeningSchedule[];
  /** Share of every opening that stands open on average at 20 °C outdoors; absent means none. [-] */
  readonly openWhenMild?: number;
  /** One per blind of `Home.blinds`: 1 where it may be closed, 0 where it is open. Absent is open everywhere. [-] */
  readonly blinds?: readonly WeekSchedule[];
  /** One per doorway: 1 open, 0 shut. [-] */
  readonly doorways: readonly WeekSchedule[];
  /** Things that dry out, such as fresh paint; absent means none. */
  readonly decaying?: readonly DecayingSource[];
}

/** Something that gives off less and less from one day of the year on; each year anew. */
export interface DecayingSource {
  readonly name: string;
  readonly room: number;
  /** Local date at whose midnight it begins; month * 100 + day. */
  readonly from: number;
  /** At the beginning, by species, in the order of `Home.species`. [species unit m3/s] */
  readonly species: readonly number[];
  /** Time constant: the rate falls to 1/e in this time. [s] */
  readonly timeConstant: number;
}

/** Weekly schedule: `base`, except during spells; where spells overlap the later in the list wins. */
export interface WeekSchedule {
  readonly base: number;
  readonly spells: readonly (Spell & { readonly value: number })[];
}

/** When a window stands open by the clock, which somebody has to be there for. */
export interface OpeningSchedule extends WeekSchedule {
  readonly spells: readonly OpeningSpell[];
}

export interface OpeningSpell extends Spell {
  readonly value: number;
  /** Opened by a motor, whoever is at home. */
  readonly byMotor?: boolean;
  /** Of a habit that is usual and that nobody described. */
  readonly usual?: true;
}

/** Span of local time that recurs on certain days of the week. */
export interface Spell {
  /** Bit d is set for the days on which it starts, Monday = bit 0. */
  readonly days: number;
  /** Bit m is set for the months in which it starts, January = bit 0; absent means all. */
  readonly months?: number;
  /** Start, minutes after local midnight. [min] */
  readonly from: number;
  /** End, minutes after the midnight before its start; beyond 1440 it runs into the next day. [min] */
  readonly to: number;
}

export interface Person {
  readonly name: string;
  /** What the draws of irregular days go by; absent is the name. */
  readonly drawnBy?: string;
  /** Lives elsewhere; absent means here. */
  readonly guest?: boolean;
  /** Where this person is; nowhere listed means out. Spells of one person do not overlap. */
  readonly schedule: readonly (Spell & {
    readonly room: number;
    readonly asleep: boolean;
  })[];
  readonly awake: BodyOutput;
  readonly asleep: BodyOutput;
  /** How days differ from the pattern; absent means never. */
  readonly irregular?: IrregularDays;
  /** Away from home through these local dates, both included, every year; month * 100 + day. */
  readonly holidays?: readonly { readonly from: number; readonly to: number }[];
}

export interface IrregularDays {
  /** Standard deviation by which a whole day's comings and goings shift. [min] */
  readonly minutes: number;
  /** Chance that a day is spent like the Sunday of the pattern (off work, ill, snow). [-] */
  readonly asSunday: number;
  /** Chance that a day is spent out altogether, from morning until the night's sleep. [-] */
  readonly out: number;
}

/** What one body gives to a room. */
export interface BodyOutput {
  /** Sensible heat. [W] */
  readonly sensible: number;
  /** Vapour from breath and skin. [kg/s] */
  readonly vapour: number;
  /** By species, in the order of `Home.species`. [species unit m3/s] */
  readonly species: readonly number[];
}

/** Cooking, showers, drying laundry, a fridge: anything that gives heat, water or a species by the clock. */
export interface Activity {
  readonly name: string;
  readonly room: number;
  readonly when: readonly Spell[];
  /**
   * What keeps it from happening: that nobody is at home (cooking, a shower), or only that everybody
   * is away on holiday (laundry hung up to dry); absent means that it goes on regardless (a fridge).
   */
  readonly stopsFor?: 'an empty home' | 'holidays';
  /** Sensible heat to the room while the activity lasts. [W] */
  readonly heat: number;
  /** Electricity drawn for the activity's heat. [W] */
  readonly electricity: number;
  /** Gas burnt in an open flame, by gross calorific value, its heat included in `heat`; absent is none. [W] */
  readonly gas?: number;
  /** Vapour that arrives as vapour (steam, breath of a pan). [kg/s] */
  readonly vapour: number;
  /** Water that evaporates in the room and takes its heat from it (laundry, plants, wet towels). [kg/s] */
  readonly drying: number;
  /** By species, in the order of `Home.species`. [species unit m3/s] */
  readonly species: readonly number[];
}
