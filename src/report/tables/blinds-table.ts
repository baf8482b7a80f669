import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { type FigureColumn, figureTable } from './figure-columns.ts';
import { WIDTH } from './text-table.ts';

/** How long each blind was closed; nothing where there are none. */
export function blindsTable(blinds: PlanMeasures['blinds'], width = WIDTH): string {
  return figureTable('blind', blinds, FIGURES, width);
}

const FIGURES: readonly FigureColumn<PlanMeasures['blinds'][string]>[] = [
  { head: 'closed\n[h]', decimals: 0, of: ({ closed_hours }) => closed_hours },
];
