import type { EnergyTerm, Ledger } from '../../engine/ledger/ledger.ts';
import { JOULES_PER_KWH } from '../../units/joules-per-kwh.ts';
import { MONTHS } from './in-words.ts';

/** Heat of a home by month and by where it came from or went; positive into the rooms. [kWh] */
export interface MonthlyHeat {
  /** Names of the months, such as "January"; a name that recurs has its number behind it. */
  readonly months: readonly string[];
  /** Heat by group, one value a month. [kWh] */
  readonly groups: Readonly<Record<HeatGroup, readonly number[]>>;
}

export type HeatGroup = (typeof HEAT_GROUPS)[number];

/** Gains first, then ways out; what drying, condensing and walls between rooms shift, and cooling, come last. */
const HEAT_GROUPS = [
  'heating',
  'sun',
  'people',
  'devices',
  'walls, floor, roof',
  'panes',
  'air',
  'drying, other',
  'cooling',
] as const;

/** The ledger's heat, all rooms together, in the groups of the picture. */
export function monthlyHeat({ months, rooms, energy }: Ledger): MonthlyHeat {
  const groups = Object.fromEntries(
    HEAT_GROUPS.map((group) => [group, months.map(() => 0)]),
  ) as Record<HeatGroup, number[]>;
  for (const [term, values] of Object.entries(energy) as [EnergyTerm, Float64Array][]) {
    const sums = groups[GROUP_OF[term]];
    values.forEach((joules, at) => {
      sums[Math.floor(at / rooms)]! += joules / JOULES_PER_KWH;
    });
  }
  return { months: monthNames(months), groups };
}

/** The groups that a picture shows: cooling only where something cools. */
export const shownGroups = ({ groups }: MonthlyHeat): readonly HeatGroup[] =>
  HEAT_GROUPS.filter((group) => group !== 'cooling' || groups.cooling.some((kwh) => kwh !== 0));

function monthNames(months: readonly number[]): string[] {
  const seen = new Map<number, number>();
  return months.map((month) => {
    const times = (seen.get(month) ?? 0) + 1;
    seen.set(month, times);
    return times === 1 ? MONTHS[month]! : `${MONTHS[month]} ${times}`;
  });
}

const GROUP_OF: Readonly<Record<EnergyTerm, HeatGroup>> = {
  heating: 'heating',
  cooling: 'cooling',
  sun: 'sun',
  people: 'people',
  appliances: 'devices',
  devices: 'devices',
  walls: 'walls, floor, roof',
  floors: 'walls, floor, roof',
  roofs: 'walls, floor, roof',
  panes: 'panes',
  leakage: 'air',
  openings: 'air',
  extracts: 'air',
  draught: 'air',
  fans: 'air',
  doorways: 'air',
  partitions: 'drying, other',
  phaseChange: 'drying, other',
  held: 'heating',
  extra: 'devices',
};
