import { highKey } from '../../measures/band-hours.ts';
import { coldSpotHours, roomHours } from '../../measures/comfort/room-hours.ts';
import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures, RoomMeasures } from '../../measures/plan-measures.ts';
import { isWholeYears, yearsIn } from '../../measures/years-in.ts';
import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';

/** The few figures of a plan by which plans are told apart, as means and shares that a person can picture. */
export interface PlanFigures {
  readonly plan: string;
  /** Purchase cost included. [currency/year] */
  readonly money: number;
  /** All that is bought for heat, cooling, devices and appliances. [kWh/year] */
  readonly energy: number;
  /** More than half a kelvin too cold with somebody in, in the room worst off: of winter days, or of all days where there are none. [h/day] */
  readonly cold: InRoom;
  /** How long each room is more than half a kelvin too cold with somebody in, of the days of `cold`. [h/day] */
  readonly coldOf: Readonly<Record<string, number>>;
  /** Too warm, of the time that somebody is in a room. [%] */
  readonly warm: number;
  /** How much too warm rooms are on average where they are, day and night. [K] */
  readonly warmBy: number;
  /** Above and below the humidity band, mean of the rooms. [%] */
  readonly damp: number;
  readonly dry: number;
  /** Above the humidity band in the room where that is most often so. [%] */
  readonly dampest: InRoom;
  /** Cold spots above 80 % relative humidity, mean of the rooms. [%] */
  readonly spots: number;
  /** Cold spot above 80 % in the room where that is most often so. [%] */
  readonly wettest: InRoom;
  /** Highest mould index. [0 to 6] */
  readonly mould: InRoom;
  readonly air: readonly AirFigure[];
  /** [1/week] */
  readonly alerts: number;
  /** What was run where that is no whole year, of which a year's money tells nothing; else null. */
  readonly part: PartOfYear | null;
}

/** Some days, and what they cost. */
interface PartOfYear {
  /** "78 days" */
  readonly length: string;
  /** Of energy in these days; what is bought is not in it. [currency] */
  readonly money: number;
  /** As `energy`, in these days. [kWh] */
  readonly energy: number;
}

/** Money by which plans are told apart: a year's with purchases, or of a part of a year its energy. [currency] */
export const toldMoney = ({ money, part }: Pick<PlanFigures, 'money' | 'part'>): number =>
  part?.money ?? money;
/** Energy of a year, or of the part of one that was run. [kWh] */
export const toldEnergy = ({ energy, part }: Pick<PlanFigures, 'energy' | 'part'>): number =>
  part?.energy ?? energy;

/** "a year", or "in these 78 days" of a part of one. */
export const spanWords = ({ part }: Pick<PlanFigures, 'part'>): string =>
  part === null ? 'a year' : `in these ${part.length}`;

/** A figure with the room that has it; no room where it is 0. */
export interface InRoom {
  readonly value: number;
  readonly room: string;
}

/** How much of a species people live in. */
export interface AirFigure {
  readonly name: string;
  readonly label: string;
  readonly unit: string;
  /** Of what only tells that air is stale, the night in the room worst off; otherwise the mean of the rooms. */
  readonly kind: 'worst night' | 'mean';
  readonly value: number;
  /** Time above its limit, mean of the rooms. [%] */
  readonly over: number;
  /**
   * Carried because the scenario asks for it, as pollen is for who is allergic, and often above a
   * tenth of its usual limit: who minds it notices that.
   */
  readonly minded: boolean;
}

/** Figures of a plan in both shapes: as they are measured, and the few by which plans are told apart. */
export interface Judged {
  readonly measures: PlanMeasures;
  readonly figures: PlanFigures;
}

export const judged = (measures: PlanMeasures): Judged => ({
  measures,
  figures: planFigures(measures),
});

export function planFigures(plan: PlanMeasures): PlanFigures {
  const { money, heating, cooling, devices, alerts, period } = plan;
  const rooms = Object.values(plan.rooms);
  const roomTime = rooms.length * period.hours;
  const inUse = rooms.reduce((sum, room) => sum + room.occupied_hours, 0);
  const years = yearsIn(period.hours);
  const bought = [...Object.values(heating.delivered_kwh), ...Object.values(cooling.delivered_kwh)];
  const kwh = bought.reduce((sum, each) => sum + each, devices.electricity_kwh + devices.gas_kwh);
  return {
    plan: plan.plan,
    money: money.total_per_year,
    energy: kwh / years,
    cold: worst(plan, (room) => coldPerDay(room, period.hours)),
    coldOf: Object.fromEntries(
      Object.entries(plan.rooms).map(([name, room]) => [name, coldPerDay(room, period.hours)]),
    ),
    warm: share(roomHours(plan, 'outside_band_occupied_hours', 'temperature_high'), inUse),
    warmBy: excessOf(plan),
    damp: share(roomHours(plan, 'outside_band_hours', 'humidity_high'), roomTime),
    dry: share(roomHours(plan, 'outside_band_hours', 'humidity_low'), roomTime),
    dampest: worst(plan, (room) => share(room.outside_band_hours.humidity_high, period.hours)),
    spots: share(coldSpotHours(plan), roomTime),
    wettest: worst(plan, (room) => share(room.cold_spot_hours_above_80_pct, period.hours)),
    mould: worst(plan, (room) => room.mould_index_peak),
    air: airFigures(plan, rooms, roomTime),
    alerts: alerts.per_week,
    part: isWholeYears(period.hours)
      ? null
      : { length: lengthOf(period.hours), money: money.energy, energy: kwh },
  };
}

function airFigures(
  plan: PlanMeasures,
  rooms: readonly RoomMeasures[],
  roomTime: number,
): AirFigure[] {
  return countedSpecies([plan])
    .filter(({ name }) => Object.hasOwn(plan.species, name))
    .map(({ name, symbol: label, role }) => {
      const levels = rooms.flatMap(({ species }) => species[name] ?? []);
      const kind = role === 'indicator' ? 'worst night' : 'mean';
      const value =
        kind === 'mean'
          ? levels.reduce((sum, { mean }) => sum + mean, 0) / Math.max(1, levels.length)
          : Math.max(0, ...levels.map(({ night }) => night));
      const over = share(roomHours(plan, 'outside_band_hours', highKey(name)), roomTime);
      const often = levels.reduce((sum, { p95 }) => sum + p95, 0) / Math.max(1, levels.length);
      const minded = often >= MINDED_SHARE * (ON_REQUEST.get(name) ?? Number.POSITIVE_INFINITY);
      return { name, label, unit: plan.species[name]!.unit, kind, value, over, minded };
    });
}

/** Usual limits of what is carried only where a scenario asks for it. [species unit] */
const ON_REQUEST: ReadonlyMap<string, number> = new Map(
  SPECIES.filter(({ onRequest }) => onRequest).map(({ name, band }) => [name, band.high]),
);
/** [-] */
const MINDED_SHARE = 0.1;

function excessOf(plan: PlanMeasures): number {
  const hours = roomHours(plan, 'outside_band_hours', 'temperature_high');
  const sum = Object.values(plan.rooms).reduce((all, room) => all + room.degree_hours_above, 0);
  return hours > 0 ? sum / hours : 0;
}

const coldPerDay = (room: RoomMeasures, hours: number): number =>
  room.winter_cold_hours_per_day ?? (24 * room.felt_cold_hours) / Math.max(1, hours);

function worst({ rooms }: PlanMeasures, of: (room: RoomMeasures) => number): InRoom {
  let found: InRoom = { value: 0, room: '' };
  for (const [room, measures] of Object.entries(rooms)) {
    const value = of(measures);
    if (value > found.value) found = { value, room };
  }
  return found;
}

const lengthOf = (hours: number): string =>
  hours < 48 ? `${figureText(hours, 0)}\u00a0hours` : `${figureText(hours / 24, 0)}\u00a0days`;

const share = (part: number, whole: number): number =>
  whole > 0 && Number.isFinite(part) ? (100 * part) / whole : 0;
