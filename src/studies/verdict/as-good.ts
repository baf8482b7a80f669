import { roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { yearsIn } from '../../measures/years-in.ts';
import { extraPerYear } from '../compare/other-prices.ts';
import type { PlanFigures } from '../effects/plan-figures.ts';
import { dampness } from '../purchase/dampness.ts';
import { GUARDS, type Guard } from './guards.ts';

/** Figures of a plan in both shapes. */
export interface Judged {
  readonly measures: PlanMeasures;
  readonly figures: PlanFigures;
}

export interface Rivalry {
  readonly baseline: Judged;
  readonly plan: Judged;
  readonly rivals: readonly Judged[];
  /** Where the plan works; null for the whole home. */
  readonly room: string | null;
  /** What the plan helps against. */
  readonly helped: readonly Guard[];
}

/**
 * Rivals that do as much as the plan against whatever it helps against, and nothing worse than it or
 * than nothing at all, cheapest first. Wet corners count in the plan's room, and must not become
 * more in the whole home, but for a day of one room in a year; nobody may be left in the cold longer than with the plan.
 */
export function asGood({ baseline, plan, rivals, room, helped }: Rivalry): PlanMeasures[] {
  const notWorse = (rival: Judged): boolean =>
    GUARDS.every((guard) => {
      const least = amountsOf(guard, plan, null);
      const had = amountsOf(guard, baseline, null);
      return amountsOf(guard, rival, null).every((amount, k) => {
        if (guard === 'damp') return amount <= Math.max(had[k]!, least[k]!) + DAY;
        const most = guard === 'cold' ? least[k]! : Math.max(had[k]!, least[k]!);
        return amount <= most + near(guard, least[k]!);
      });
    });
  const much = asMuch({ baseline, plan, room, helped });
  return rivals
    .filter((rival) => notWorse(rival) && much(rival))
    .map(({ measures }) => measures)
    .sort((a, b) => extraPerYear(b, a));
}

/** Whether a rival does as much as the plan against what that helps against, whatever else it does. */
export function asMuch({
  baseline,
  plan,
  room,
  helped,
}: Omit<Rivalry, 'rivals'>): (rival: Judged) => boolean {
  return (rival) =>
    helped.every((guard) => {
      const own = amountsOf(guard, plan, room);
      const had = amountsOf(guard, baseline, room);
      return amountsOf(guard, rival, room).every((amount, k) => {
        const most = near(guard, own[k]!);
        // Of what the air carries much stays anyway: as much takes nine tenths of it away.
        const taken = guard === 'air' ? had[k]! - own[k]! : 0;
        return amount <= own[k]! + (taken > most ? Math.min(most, 0.1 * taken) : most);
      });
    });
}

/** How much there is of what is guarded against: room-hours a year, % of the time, levels. */
function amountsOf(guard: Guard, { measures, figures }: Judged, room: string | null): number[] {
  if (guard === 'cold') return [dampness(measures).coldHours];
  if (guard === 'heat') return [tooWarm(measures)];
  if (guard === 'dry') return [figures.dry];
  if (guard === 'air') return figures.air.map(({ value }) => value);
  return [room === null ? dampness(measures).coldSpotHours : spotHours(measures, room)];
}

/** What may be more and is still as good: a day a year, or a share of what there is. */
const near = (guard: Guard, amount: number): number =>
  Math.max(guard === 'air' ? 0 : guard === 'dry' ? 2 : DAY, 0.05 * amount);
/** [h] */
const DAY = 24;

const tooWarm = (plan: PlanMeasures): number =>
  roomHours(plan, 'outside_band_occupied_hours', 'temperature_high') / yearsIn(plan.period.hours);

/** A year's hours of a room's cold spot above 80 %. */
const spotHours = ({ rooms, period }: PlanMeasures, room: string): number =>
  (rooms[room]?.cold_spot_hours_above_80_pct ?? 0) / yearsIn(period.hours);
