import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { wrapText } from './wrap-text.ts';

/** Cautions or notices as a list, each with the id that stays when words change. */
export function remarkList(remarks: PlanMeasures['cautions'], width: number): string {
  return remarks.map(({ id, text }) => wrapText(`${text} [${id}]`, '- ', width)).join('\n');
}
