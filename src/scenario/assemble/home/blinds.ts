import type { BlindControl } from '../../../control/automation.ts';
import type { WeekSchedule } from '../../../control/household.ts';
import type { Blind, Pane } from '../../../home/home.ts';
import { COMMON } from '../../../units/preset.ts';
import type { ScenarioData } from '../../model/scenario-model.ts';
import { BLINDS, uShareOf } from '../../presets/blinds.ts';
import type { Defaults } from '../defaults.ts';
import { during, level } from '../level-schedule.ts';
import type { RoomPlan } from '../room-plans.ts';

export type BlindsEntry = NonNullable<ScenarioData['blinds']>[number];

/** A blind over one pane: what it is, when it may be closed, and the levels that close it then. */
export interface BlindPlan {
  readonly blind: Blind;
  /** 1 where it may be closed, 0 where not. */
  readonly hours: WeekSchedule;
  readonly control: BlindControl;
}

/** One blind for each pane that has one, in the order of the scenario's list. */
export function blindPlans(
  data: Pick<ScenarioData, 'blinds'>,
  plans: readonly RoomPlan[],
  panes: readonly Pane[],
  defaults: Defaults,
): BlindPlan[] {
  const called = new Map<string, number>();
  return (data.blinds ?? []).flatMap((entry, k) => {
    const behind = panesOf(entry, plans, panes);
    const is = kindOf(
      entry,
      k,
      behind.map((index) => panes[index]!),
      defaults,
    );
    return behind.map((pane): BlindPlan => {
      const name = `${panes[pane]!.name} ${is.kind}`;
      const times = (called.get(name) ?? 0) + 1;
      called.set(name, times);
      return {
        blind: {
          ...{ name: times === 1 ? name : `${name} ${times}`, pane },
          ...{ inside: is.inside, gShare: is.gShare, uShare: is.uShare },
        },
        hours: hoursOf(entry),
        control: {
          sunAbove: entry['sun over'] ?? Number.NEGATIVE_INFINITY,
          roomAbove: entry['temperature over'] ?? Number.NEGATIVE_INFINITY,
        },
      };
    });
  });
}

/** Numbers of the panes that an entry is over. */
export function panesOf(
  { pane, room, rooms }: BlindsEntry,
  plans: readonly RoomPlan[],
  panes: readonly Pane[],
): number[] {
  const named = rooms === undefined || rooms === 'all' ? [room] : rooms;
  return panes.flatMap((each, index) => {
    const here = plans[each.room]!.name;
    const meant = pane !== undefined ? each.name === pane : rooms === 'all' || named.includes(here);
    return meant ? [index] : [];
  });
}

/** The share of the U-value goes by the panes of the entry together. */
function kindOf(entry: BlindsEntry, k: number, panes: readonly Pane[], defaults: Defaults) {
  const at = (key: string) => ['blinds', k, key];
  const kind = defaults.word(at('kind'), entry.kind, 'inside blind', COMMON);
  const { inside, gShare, resistance } = BLINDS[kind];
  const area = panes.reduce((sum, pane) => sum + pane.area, 0);
  const loss = panes.reduce((sum, pane) => sum + pane.area * pane.uValue, 0);
  return {
    ...{ kind, inside },
    gShare: defaults.number(at('g share'), entry['g share'], gShare),
    uShare: defaults.number(at('u share'), entry['u share'], uShareOf(resistance, loss / area)),
  };
}

const hoursOf = ({ hours }: BlindsEntry): WeekSchedule =>
  hours === undefined ? level(1) : during(hours);
