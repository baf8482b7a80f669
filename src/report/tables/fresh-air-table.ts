import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { type AirPair, airPairs } from '../air-pairs.ts';
import { FRESH_AIR } from '../own-section.ts';
import { type Column, textTable, WIDTH } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Where fresh air comes in, in words, and the flows between rooms as a table; nothing where no air moved. */
export function freshAirTable(
  measures: Pick<PlanMeasures, 'air_flows' | 'outdoor_air' | 'notices'>,
  width = WIDTH,
): string {
  const { told, leftOut } = airPairs(measures);
  if (told.length === 0) return '';
  const sentences = measures.notices
    .filter(({ id }) => id.startsWith(FRESH_AIR))
    .map(({ text }) => wrapText(text, '- ', width));
  const column = (head: string, of: (pair: AirPair) => number): Column => ({
    head,
    cells: told.map((pair) => figureText(of(pair), 1)),
  });
  const named = (head: string, end: 0 | 1): Column => ({
    head,
    cells: told.map(({ ends }) => ends[end]),
    align: 'left',
  });
  const table = textTable(
    [
      named('from', 0),
      named('to', 1),
      column('there\n[L/s]', ({ forth }) => forth),
      column('back\n[L/s]', ({ back }) => back),
    ],
    width,
  );
  const note = wrapText(`${MEANS} ${leftOut}`.trim(), '', width);
  return [...(sentences.length > 0 ? [`${sentences.join('\n')}\n`] : []), table, note].join('\n');
}

const MEANS =
  'Means of the heating season, of the whole period where no month is cold; what a doorway ' +
  'exchanges both ways at once is in both.';
