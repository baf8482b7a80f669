import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { airPairs } from '../air-pairs.ts';
import { FRESH_AIR } from '../own-section.ts';
import { columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Where fresh air comes in, in words, and the flows between rooms as a table; nothing where no air moved. */
export function freshAirTable(
  measures: Pick<PlanMeasures, 'air_flows' | 'outdoor_air' | 'notices'>,
  width: number,
): string {
  const { told, leftOut } = airPairs(measures);
  if (told.length === 0) return '';
  const sentences = measures.notices
    .filter(({ id }) => id.startsWith(FRESH_AIR))
    .map(({ text }) => wrapText(text, '- ', width));
  const { figures, words } = columnsOf(told);
  const table = textTable(
    [
      words('from', ({ ends: [from] }) => from),
      words('to', ({ ends: [, to] }) => to),
      figures('there\n[L/s]', ({ forth }) => figureText(forth, 1)),
      figures('back\n[L/s]', ({ back }) => figureText(back, 1)),
    ],
    width,
  );
  const note = wrapText(`${MEANS} ${leftOut}`.trim(), '', width);
  return [...(sentences.length > 0 ? [`${sentences.join('\n')}\n`] : []), table, note].join('\n');
}

const MEANS =
  'Means of the heating season, of the whole period where no month is cold; what a doorway ' +
  'exchanges both ways at once is in both.';
