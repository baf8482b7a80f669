import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { list } from './section.ts';

/** How much of the answer rests on what was stated, what was assumed, and what nobody knows. */
export function howSure({ study, weather }: ReportInput): Html {
  const [baseline] = study.options;
  const { purchase } = study;
  const stated = writtenValues(study.scenario.yaml.value);
  const assumed = baseline?.prepared.assumed.length ?? 0;
  const drawn = purchase?.draws?.doubt ?? null;
  return html`
<h3>How sure is this?</h3>
${bar(stated, assumed)}
${list([
  ...(drawn === null ? [] : [triedWords(drawn)]),
  measured(study.scenario.fitted),
  html`<b>Weather:</b> ${weather.title}${weather.periodic ? ', which is no forecast' : ', which is past'}.`,
  html`<b>Unknown:</b> leaks, rising damp and driving rain. Where they wet a wall, nothing here helps before they are mended.`,
])}`;
}

/** What was drawn, and how often. */
function triedWords({ inputs, samples, impossible, years }: Drawn): Html {
  const weather = years > 1 ? ` and ${years} years of weather` : '';
  return html`<b>Tried:</b> ${inputs.length} values that nobody knows exactly${weather}, all of them varied at once, ${samples + impossible} times, with and without the plan${
    impossible === 0 ? null : `; ${impossible} of these draws were no home and are left out`
  }.`;
}

type Drawn = NonNullable<NonNullable<ReportInput['study']['purchase']>['draws']>['doubt'];

/** What readings of the home told. */
function measured(fitted: ReportInput['study']['scenario']['fitted']): Html {
  const better = 'Differences between plans are better known than any figure alone.';
  if (fitted.length === 0) {
    return html`<b>Measured:</b> nothing. No reading of this home stands behind this. ${better}`;
  }
  const told = fitted.filter((one) => one.told && one.by === null).length;
  const factors = new Set(fitted.filter((one) => one.told).flatMap(({ by }) => by ?? [])).size;
  const logs = [...new Set(fitted.map(({ log }) => log))].join('; ');
  return html`<b>Measured:</b> ${told + factors} values were fitted to what sensors logged in this home (${logs}); their ranges are tried like doubts. ${better}`;
}

/** The shares of values that were stated and assumed. */
function bar(stated: number, assumed: number): Html {
  const split = ((WIDTH * stated) / Math.max(1, stated + assumed)).toFixed(1);
  return html`<svg class="sure" viewBox="0 0 ${WIDTH} 14" aria-hidden="true" focusable="false" preserveAspectRatio="none"><path class="frame" d="M.5 .5H${WIDTH - 0.5}V13.5H.5z"/><path class="stated" d="M0 0H${split}V14H0z"/></svg>
<p class="ends"><span>${stated} values stated</span> <span>${assumed} assumed</span></p>`;
}

/** How many values a scenario states, its plans, names and files left aside. */
export function writtenValues(raw: unknown): number {
  if (typeof raw !== 'object' || raw === null) return 0;
  const { plans, title, weather, invented, doubts, ...home } = raw as Record<string, unknown>;
  return leaves(home);
}

function leaves(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce<number>((sum, inner) => sum + leaves(inner), 0);
}

const WIDTH = 360; // px
