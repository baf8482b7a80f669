import type { PlanMeasures, RoomMeasures } from '../../measures/plan-measures.ts';
import { type FigureColumn, figureTable } from './figure-columns.ts';
import { WIDTH } from './text-table.ts';

/** What people find who come into a room; nothing where nobody ever does. */
export function arrivalsTable(rooms: PlanMeasures['rooms'], width = WIDTH): string {
  const used = Object.entries(rooms).filter(([, { arrivals }]) => arrivals > 0);
  return figureTable('room', Object.fromEntries(used), FIGURES, width);
}

const FIGURES: readonly FigureColumn<RoomMeasures>[] = [
  { head: 'somebody\nin\n[h]', decimals: 0, of: (r) => r.occupied_hours },
  { head: 'arrivals', decimals: 0, of: (r) => r.arrivals },
  { head: 'too cold\nthen', decimals: 0, of: (r) => r.cold_arrivals },
  { head: 'and in\n2 h after\n[h]', decimals: 0, of: (r) => r.cold_arrival_hours },
  { head: 'until\nwarm, mean\n[min]', decimals: 0, of: (r) => r.recovery_minutes_mean },
  { head: 'longest\n[min]', decimals: 0, of: (r) => r.recovery_minutes_most },
];
