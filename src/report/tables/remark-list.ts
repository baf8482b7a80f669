import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { WIDTH } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Cautions or notices as a list, each with the id that stays when words change. */
export function remarkList(remarks: PlanMeasures['cautions'], width = WIDTH): string {
  return remarks.map(({ id, text }) => wrapText(`${text} [${id}]`, '- ', width)).join('\n');
}
