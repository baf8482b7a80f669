import { airLevel } from '../../measures/air/air-level.ts';
import { isYearOrMore } from '../../measures/years-in.ts';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import { dampBeyond } from '../effects/damp-limits.ts';
import type { Effect } from '../effects/effect.ts';
import { GROWTH, WET } from '../effects/mould-marks.ts';
import { type Change, changesBetween, planParts } from '../effects/plan-changes.ts';
import type { AirFigure, PlanFigures } from '../effects/plan-figures.ts';

/** What a plan may guard people against: rooms that are too cold, damp and mould, heat, dry air, what the air carries. */
export type Guard = 'cold' | 'damp' | 'heat' | 'dry' | 'air';

/** What a plan is for, by what it has otherwise than the baseline; everything where that tells nothing. */
export function guardsOf(baseline: PreparedPlan, plan: PreparedPlan): Guard[] {
  const changes = changesBetween(planParts(baseline), planParts(plan));
  const found = new Set([...changes].flatMap((change) => guardsOfChange(change, baseline, plan)));
  return found.size === 0 ? [...GUARDS] : GUARDS.filter((guard) => found.has(guard));
}

function guardsOfChange(
  change: Change,
  baseline: PreparedPlan,
  plan: PreparedPlan,
): readonly Guard[] {
  if (change === 'devices') return guardsOfDevices(baseline, plan);
  if (change === 'rules') return guardsOfRules(plan);
  return OF_CHANGE[change] ?? [];
}

function guardsOfDevices({ home: had }: PreparedPlan, { home }: PreparedPlan): Guard[] {
  const news = home.devices.filter(({ name }) => had.devices.every((other) => other.name !== name));
  const devices = news.length > 0 ? news : home.devices;
  const recovers = moistureRecovery(home) > moistureRecovery(had);
  return [...devices.flatMap(({ does }) => OF_DEVICE[does.kind]), ...(recovers ? DRYNESS : [])];
}

/** Of all ventilation together; what it brings back keeps air from getting dry. [-] */
const moistureRecovery = ({ devices }: PreparedPlan['home']): number =>
  devices.reduce(
    (sum, { does }) => sum + (does.kind === 'balanced ventilation' ? does.moistureRecovery : 0),
    0,
  );
const DRYNESS: readonly Guard[] = ['dry'];

/** What rules watch for. */
function guardsOfRules({ automation }: PreparedPlan): Guard[] {
  return automation.rules.flatMap(({ all }) =>
    all.flatMap(({ quantity, is }): readonly Guard[] => {
      if (quantity === 'temperature') return is === 'above' ? ['heat'] : ['cold'];
      if (OF_DAMP.has(quantity)) return ['damp'];
      return OF_NOTHING.has(quantity) ? [] : ['air'];
    }),
  );
}

/**
 * How far something is beyond what people would notice: 0 or more where it happens, below 0 where it
 * does not. [share of the least that is noticed]
 *
 * Mould needs weeks, so that less than a year tells of it by wet corners alone. Of what the air carries,
 * only what the plan changes counts.
 *
 * @param of       what an effect of the plan is about
 * @param figures  under the one plan
 * @param other    under the other
 * @param hours    length of the period [h]
 */
export function happening(
  of: Effect['of'],
  figures: PlanFigures,
  other: PlanFigures,
  hours: number,
): number {
  const year = isYearOrMore(hours);
  if (of === 'cold') return figures.cold.value / COLD - 1;
  if (of === 'warm') return figures.warm / WARM - 1;
  if (of === 'dry') return figures.dry / DRY - 1;
  if (of === 'mould') return year ? figures.mould.value / GROWTH - 1 : figures.spots / WET - 1;
  // Damp air and wet corners count by themselves, and as what mould comes from.
  if (of === 'damp' || of === 'spots') {
    const { mean, room } = dampBeyond(of, figures);
    return Math.max(mean, room, happening('mould', figures, other, hours));
  }
  const carried = moved(figures, other).map(({ over, minded }) =>
    minded ? Math.max(over, MINDED) : over,
  );
  return Math.max(0, ...carried) / OVER - 1;
}

/** By what a guard is judged: damp by mould, wet corners and damp air, each by itself. */
export const effectsGuarded = (guard: Guard): readonly Effect['of'][] => GUARDED[guard];

/** What an effect that makes something worse is a harm by: damp air alone, without mould, is none. */
export const harmOf = ({ of }: Pick<Effect, 'of'>): Effect['of'] =>
  of === 'damp' || of === 'spots' ? 'mould' : of;

/** Species whose level differs between two plans; all where none does. */
function moved({ air }: PlanFigures, other: PlanFigures): readonly AirFigure[] {
  const differ = air.filter(({ name, value }) => {
    const level = airLevel(other, name) ?? 0;
    return Math.abs(value - level) > MOVED * Math.max(value, level);
  });
  return differ.length > 0 ? differ : air;
}

/** What an effect of a plan is about. */
export const guardOf = ({ of }: Pick<Effect, 'of'>): Guard => OF_EFFECT[of];

export const GUARDS: readonly Guard[] = ['damp', 'cold', 'heat', 'dry', 'air'];

const OF_EFFECT: Readonly<Record<Effect['of'], Guard>> = {
  ...{ cold: 'cold', warm: 'heat', dry: 'dry', air: 'air' },
  ...{ damp: 'damp', spots: 'damp', mould: 'damp' },
};
const GUARDED: Readonly<Record<Guard, readonly Effect['of'][]>> = {
  ...{ cold: ['cold'], heat: ['warm'], dry: ['dry'], air: ['air'] },
  damp: ['mould', 'spots', 'damp'],
};
const OF_CHANGE: Readonly<Partial<Record<Change, readonly Guard[]>>> = {
  ...{ setting: ['damp', 'cold'], hours: ['damp', 'cold'], presence: ['damp', 'cold'] },
  ...{ sensing: ['damp', 'cold'], source: ['damp', 'cold'], building: ['damp', 'cold'] },
  ...{ cooling: ['heat'], blinds: ['heat'], airing: ['damp', 'air'] },
};
const OF_DEVICE: Readonly<
  Record<PreparedPlan['home']['devices'][number]['does']['kind'], readonly Guard[]>
> = {
  ...{ dehumidifier: ['damp'], humidifier: ['dry'], purifier: ['air'] },
  ...{ 'extract fan': ['damp', 'air'], 'balanced ventilation': ['damp', 'air'] },
  ...{ heater: ['damp', 'cold'], stove: ['damp', 'cold'] },
};
const OF_DAMP: ReadonlySet<string> = new Set([
  ...['relative humidity', 'absolute humidity', 'humidity above outdoors', 'dew point'],
]);
const OF_NOTHING: ReadonlySet<string> = new Set([
  ...['window', 'presence', 'hour', 'hour since noon', 'electricity price'],
]);
/** What is guarded against, in words. */
export const HARM: Readonly<Record<Guard, string>> = {
  ...{ damp: 'damp', cold: 'the cold', heat: 'heat', dry: 'dry air' },
  air: 'stale or dirty air',
};
/** Too cold with somebody in. [h/day] */
const COLD = 0.25;
/** Too warm with somebody in, above a limit of the air, too dry. [% of the time] */
const WARM = 1;
const OVER = 1;
/** As much as what some people mind long before its limit counts. [% of the time] */
const MINDED = 2;
const DRY = 5;
/** Share by which a level must differ for a plan to have changed it. [-] */
const MOVED = 0.02;
