import { roomHours } from '../../measures/comfort/room-hours.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { isYearOrMore, yearsIn } from '../../measures/years-in.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { GROWTH } from '../effects/mould-marks.ts';
import type { Judged } from '../effects/plan-figures.ts';
import { dampness } from '../purchase/dampness.ts';
import { GUARDS, type Guard } from './guards.ts';

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
 * than nothing at all, cheapest first. Wet corners count in the plan's room, and so do damp air and mould
 * where the plan makes them less; none may become more in the whole home, wet corners but for a day of one room in a
 * year. Nobody may be left in the cold longer than with the plan.
 */
export function asGood({ baseline, plan, rivals, room, helped }: Rivalry): PlanMeasures[] {
  const notWorse = (rival: Judged): boolean =>
    GUARDS.every((guard) => {
      const least = amountsOf(guard, plan, null);
      const had = amountsOf(guard, baseline, null);
      return amountsOf(guard, rival, null).every(({ value, near, besides }, k) => {
        const most = guard === 'cold' ? least[k]!.value : Math.max(had[k]!.value, least[k]!.value);
        const more = guard === 'damp' && besides !== true ? near(0) : near(least[k]!.value);
        return value <= most + more;
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
      return amountsOf(guard, rival, room).every(({ value, near, besides }, k) => {
        const least = own[k]!.value;
        const most = near(least);
        const taken = had[k]!.value - least;
        if (besides) return taken <= most || value <= least + Math.max(most, LEFT * taken);
        // Of what the air carries, and of dry air, much stays anyway: as much takes nine tenths of it away.
        const stays = (guard === 'air' || guard === 'dry') && taken > most;
        return value <= least + (stays ? Math.min(most, LEFT * taken) : most);
      });
    });
}

/** How much there is of something that is guarded against. */
interface Amount {
  /** Room-hours a year, % of the time, a level, an index. */
  readonly value: number;
  /** What may be more than some amount and is still as good. */
  readonly near: (amount: number) => number;
  /** Counts only where the plan makes it less: it is not what the plan is judged by first. */
  readonly besides?: true;
}

function amountsOf(guard: Guard, { measures, figures }: Judged, room: string | null): Amount[] {
  if (guard === 'cold') return [{ value: dampness(measures).coldHours, near: aDay }];
  if (guard === 'heat') return [{ value: tooWarm(measures), near: aDay }];
  if (guard === 'dry')
    return [{ value: figures.dry, near: (amount) => Math.max(2, aShare(amount)) }];
  if (guard === 'air') return figures.air.map(({ value }) => ({ value, near: aShare }));
  const { coldSpotHours, dampHours } = dampness(measures, room);
  return [
    { value: coldSpotHours, near: aDay },
    { value: dampHours, near: aDay, besides: true },
    { value: growth(measures, room), near: () => SAME_MOULD, besides: true },
  ];
}

/** A day a year, or a share of what there is. [h] */
const aDay = (hours: number): number => Math.max(24, aShare(hours));
const aShare = (amount: number): number => 0.05 * amount;

const tooWarm = (plan: PlanMeasures): number =>
  roomHours(plan, 'outside_band_occupied_hours', 'temperature_high') / yearsIn(plan.period.hours);

/** Highest mould index, from which it grows on; nothing of less than a year, in which it tells little. */
function growth({ rooms, period }: PlanMeasures, room: string | null): number {
  if (!isYearOrMore(period.hours)) return GROWTH;
  const all = Object.entries(rooms).flatMap(([name, one]) =>
    room === null || name === room ? [one] : [],
  );
  return Math.max(GROWTH, ...all.map(({ mould_index_peak: peak }) => peak));
}

/** Share of what a plan takes away that may be left. [-] */
const LEFT = 0.1;
/** Mould indices that nobody would call apart. */
const SAME_MOULD = 0.3;
