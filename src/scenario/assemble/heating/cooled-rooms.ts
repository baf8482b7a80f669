import type { Emitter } from '../../../home/home.ts';
import { COMMON } from '../../../units/preset.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import type { Use } from '../../presets/rooms.ts';
import type { Defaults } from '../defaults.ts';
import { spellOfSetpoint } from '../programme.ts';
import type { RoomPlan } from '../room-plans.ts';

type Cooling = NonNullable<ScenarioData['cooling']>;
export type CoolingSource = Exclude<Cooling['source'], 'none' | undefined>;
export type CoolingProgramme = Pick<Cooling, 'setpoint' | 'hours' | 'gate' | 'power'>;

/** A room that something cools, with its own programme laid on the home's. */
export interface CooledRoom {
  readonly plan: RoomPlan;
  readonly programme: CoolingProgramme;
}

/** What cools the home; null where nothing does. */
export function coolingSource(
  { cooling }: Pick<ScenarioData, 'cooling'>,
  defaults: Defaults,
): CoolingSource | null {
  if (cooling === undefined) return null;
  const kind = defaults.word(['cooling', 'source'], cooling.source, 'split', COMMON);
  return kind === 'none' ? null : kind;
}

/** Rooms that are cooled, in the order of the home; none where nothing cools. */
export function cooledRooms(
  data: Pick<ScenarioData, 'cooling'>,
  plans: readonly RoomPlan[],
  emitters: readonly Emitter[],
  defaults: Defaults,
): CooledRoom[] {
  const source = coolingSource(data, defaults);
  if (source === null) return [];
  const { rooms, ...common } = data.cooling!;
  const usual = ({ use, index }: RoomPlan): boolean =>
    source === 'reversible heat pump'
      ? emitters.some(({ room }) => room === index)
      : LIVED_IN.has(use);
  if (rooms === undefined) {
    const names = plans.filter(usual).map(({ name }) => JSON.stringify(name));
    defaults.word(['cooling', 'rooms'], undefined, `[${names.join(', ')}]`, LIVED_WORDS);
  }
  return plans.flatMap((plan): CooledRoom[] => {
    if (rooms === undefined) return usual(plan) ? [{ plan, programme: common }] : [];
    if (rooms === 'all') return [{ plan, programme: common }];
    if (Array.isArray(rooms)) {
      return rooms.includes(plan.name) ? [{ plan, programme: common }] : [];
    }
    const own = Object.hasOwn(rooms, plan.name) ? rooms[plan.name] : undefined;
    if (own === 'off' || (own === undefined && !usual(plan))) return [];
    return [{ plan, programme: withOwn(common, own ?? {}) }];
  });
}

/** A room with one setpoint of its own keeps to the home's hours, be they in a list of setpoints. */
function withOwn(common: CoolingProgramme, own: number | CoolingProgramme): CoolingProgramme {
  const given = typeof own === 'number' ? { setpoint: own } : own;
  const { setpoint } = common;
  const listed = Array.isArray(setpoint) && typeof given.setpoint === 'number';
  if (!listed || given.hours !== undefined) return { ...common, ...given };
  return { ...common, hours: setpoint.map(spellOfSetpoint), ...given };
}

/** Uses of rooms that are cooled where nobody says which, and count where windows are shut against heat. */
export const LIVED_IN: ReadonlySet<Use> = new Set(['living', 'dining', 'bedroom', 'study']);
const LIVED_WORDS =
  'common practice: rooms that are lived or slept in; of a heat pump, those with an emitter';
