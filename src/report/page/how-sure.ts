import { type Html, html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { list } from './section.ts';
import { writtenValues } from './written-values.ts';

/** How much of the answer rests on what was stated, what was assumed, and what nobody knows. */
export function howSure({ study, weather }: ReportInput): Html {
  const [baseline] = study.options;
  const { purchase, quicklyTried, untried } = study;
  const stated = writtenValues(study.scenario.yaml.value);
  const assumed = baseline?.prepared.assumed.length ?? 0;
  const tried = purchase?.doubt.effects.length ?? 0;
  return html`
<h3>How sure is this?</h3>
${bar(stated, assumed)}
${list([
  ...(tried === 0
    ? []
    : [
        html`<b>Tried:</b> ${tried + quicklyTried.length} values that nobody knows exactly were tried low and high, one at a time${quicklyTried.length === 0 ? null : `: ${tried} over the whole period, the ${quicklyTried.length} that matter less in three weeks of it`}.${untried.length === 0 ? null : ` ${untried.length} were not.`}`,
      ]),
  measured(study.scenario.fitted),
  html`<b>Weather:</b> ${weather.title}${weather.periodic ? ', which is no forecast' : ', which is past'}.`,
  html`<b>Unknown:</b> leaks, rising damp and driving rain. Where they wet a wall, nothing here helps before they are mended.`,
])}`;
}

/** What readings of the home told. */
function measured(fitted: ReportInput['study']['scenario']['fitted']): Html {
  const better = 'Differences between plans are better known than any figure alone.';
  if (fitted.length === 0) {
    return html`<b>Measured:</b> nothing. No reading of this home stands behind this. ${better}`;
  }
  const logs = [...new Set(fitted.map(({ log }) => log))].join('; ');
  return html`<b>Measured:</b> ${fitted.length} values were fitted to what sensors logged in this home (${logs}); their ranges are tried like doubts. ${better}`;
}

/** The shares of values that were stated and assumed. */
function bar(stated: number, assumed: number): Html {
  const split = ((WIDTH * stated) / Math.max(1, stated + assumed)).toFixed(1);
  return html`<svg class="sure" viewBox="0 0 ${WIDTH} 14" aria-hidden="true" focusable="false" preserveAspectRatio="none"><path class="frame" d="M.5 .5H${WIDTH - 0.5}V13.5H.5z"/><path class="stated" d="M0 0H${split}V14H0z"/></svg>
<p class="ends"><span>${stated} values stated</span> <span>${assumed} assumed</span></p>`;
}

const WIDTH = 360; // px
