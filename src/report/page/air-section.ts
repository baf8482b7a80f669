import { weeksIn } from '../../measures/years-in.ts';
import { figureText } from '../../units/figure-text.ts';
import { type AirPair, airPairs } from '../air-pairs.ts';
import { FRESH_AIR } from '../own-section.ts';
import { shareOfAlerts, shareOfTime } from '../rule-words.ts';
import { type DrawnTwice, figure } from './figure.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { details, list, type Section } from './section.ts';

/** Where outdoor air comes in, what the air carries, and when rules ring about it. */
export function airSection({ study }: ReportInput, drawn: readonly DrawnTwice[]): Section {
  const { measures } = study.options[0]!;
  const sentences = measures.notices.filter(({ id }) => id.startsWith(FRESH_AIR));
  const { told, leftOut } = airPairs(measures);
  return {
    id: 'air',
    title: 'Air and alerts',
    body: html`
<h3>Where outdoor air comes in, with ${measures.plan}</h3>
<div class="halves">${list(sentences.map(({ text }) => text))}</div>
<div class="grid">${drawn.map(figure)}</div>
${told.length === 0 ? null : details('Air from room to room', pairsTable(told, leftOut))}
${ruleTables(study)}`,
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
<p>Where no month is cold, of the whole period. What a doorway exchanges both ways at once is in both columns. ${leftOut}</p>`;
}

/** What came of each rule, plan by plan. */
function ruleTables({ options }: ReportInput['study']): (Html | null)[] {
  return options.map(({ name, measures: { alerts, period } }) => {
    const rules = Object.entries(alerts.by_rule);
    if (rules.length === 0) return null;
    const weeks = weeksIn(period.hours);
    return details(
      `Rules of ${name}: ${figureText(alerts.per_week, 1)} alerts a week`,
      figureTable({
        caption: `Rules of ${name}; in brackets what only switches something`,
        heads: [
          ...[
            'rule',
            'a week',
            'heard [%]',
            'done [%]',
            'again within the hour [%]',
            'active [% of the time]',
          ],
          ...['missed a week', 'held back a week'],
        ],
        rows: rules.map(([rule, each]) => [
          rule,
          each.tells ? figureText(each.per_week, 1) : `(${figureText(each.per_week, 1)})`,
          each.tells ? shareOfAlerts(each.could_act, each) : '-',
          each.tells ? shareOfAlerts(each.acted_on, each) : '-',
          shareOfAlerts(each.duplicates, each),
          shareOfTime(each, period.hours),
          figureText(each.missed / weeks, 1),
          figureText(each.held_back / weeks, 1),
        ]),
      }),
    );
  });
}
