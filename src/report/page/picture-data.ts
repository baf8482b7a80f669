import type { LocalClock } from '../../units/local-clock.ts';
import type { Edges } from '../charts/climate.ts';
import type { MonthlyHeat } from '../charts/monthly-heat.ts';
import type { WaterBalance } from '../charts/water-balance.ts';

/** The hours that pictures are drawn from, of all rooms under a few plans. */
export interface PictureData {
  /** Instant at which the first hour begins [s UTC], and how many there are. */
  readonly start: number;
  readonly hours: number;
  readonly clock: LocalClock;
  /** Weeks that stand out, by the number of the hour at which they begin. */
  readonly weeks: readonly { readonly word: WeekWord; readonly hour: number }[];
  /** 1 for hours of mild weather, in which the upper edge of a temperature may be another, 0 for others. */
  readonly mild: Uint8Array;
  readonly rooms: readonly RoomPictureData[];
  readonly plans: readonly PlanPictureData[];
}

/** Coldest and hottest outdoors; dampest in the room asked about, as it is. */
export type WeekWord = 'coldest' | 'hottest' | 'dampest';

interface RoomPictureData {
  readonly name: string;
  /** Edges of the baseline's temperature band. [°C] */
  readonly temperature: Edges;
  /** Edges of the baseline's humidity band. [%] */
  readonly humidity: Edges;
  /** Share of each hour with somebody in the room, 0 or 1. */
  readonly occupied: Float32Array;
}

interface PlanPictureData {
  readonly name: string;
  readonly heat: MonthlyHeat;
  readonly water: WaterBalance;
  /** In the order of the rooms. */
  readonly rooms: readonly RoomHours[];
}

/** One value an hour, of the mould index one a day. */
export interface RoomHours {
  /** Operative temperature, hour by hour. [°C] */
  readonly temperature: Float32Array;
  /** Relative humidity of the air, and at the surface of the coldest spot. [%] */
  readonly humidity: Float32Array;
  readonly coldSpot: Float32Array;
  /** [-] */
  readonly mouldIndex: Float32Array;
  /** Hours of the cold spot above 80 %, as the figures count them. [h] */
  readonly coldSpotHours: number;
}
