import { figureText } from '../../units/figure-text.ts';
import { type AirPair, airPairs } from '../air-pairs.ts';
import { FRESH_AIR } from '../own-section.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { list, type Section } from './section.ts';

/** Where outdoor air comes in and how it goes from room to room, of doing nothing. */
export function freshAirSection({ study }: ReportInput): Section {
  const { measures } = study.options[0]!;
  const sentences = measures.notices.filter(({ id }) => id.startsWith(FRESH_AIR));
  const { told, leftOut } = airPairs(measures);
  return {
    id: 'fresh-air',
    title: 'Fresh air',
    body: html`
<p>Where outdoor air comes in with ${measures.plan}, who gets it, and what fans change, as far as one plan can tell.</p>
${list(sentences.map(({ text }) => text))}
${told.length === 0 ? null : pairsTable(told, leftOut)}`,
  };
}

function pairsTable(told: readonly AirPair[], leftOut: string): Html {
  return html`
${figureTable({
  caption: 'Air from room to room, mean of the heating season',
  heads: ['from', 'to', 'there [L/s]', 'back [L/s]'],
  rows: told.map(({ ends, forth, back }) => [
    ends[0],
    ends[1],
    figureText(forth, 1),
    figureText(back, 1),
  ]),
  words: [1],
})}
<p>Where nothing was heated, of the whole period. What a doorway exchanges both ways at once is in both columns. ${leftOut}</p>`;
}
