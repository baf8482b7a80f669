import type { LivingReport } from '../../living/living-report.ts';
import type { LivingFigures } from '../../living/messages.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { figureText } from '../../units/figure-text.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { theRoom } from '../../units/the-room.ts';
import { type Html, html } from './html.ts';
import { DAYS_BOX } from './try-days.ts';
import { spanId, type TriedFigure, triedFigures } from './try-figures.ts';
import { tryStrip } from './try-strip.ts';

/**
 * Knobs with the figures that follow them, those of the baseline at first; hidden until a script makes
 * them do something. Everything has the size that it will have, so that nothing below is moved.
 *
 * @param spans  names of the parts of the period that are run before the whole
 */
export function tryMarkup(
  { offer, file }: LivingReport,
  { lines, options, room }: ReportStudy,
  spans: readonly string[],
): Html {
  const { money, heating } = options[0]!.measures;
  const { currency } = money;
  const asItIs: LivingFigures = {
    ...{ figures: lines[0]!.figures, heat: heating.useful_kwh, electricity: 0 },
    ...{ coldSpot: [], temperature: [], settings: [], plan: '' },
  };
  const { heats, setpoint, night, presence, airing, electricity } = offer;
  return html`
<div id="try" class="try rest stale" hidden>
<form class="panel" id="try-form" aria-labelledby="try-title">
<h3 id="try-title">Try it</h3>
<p class="note">The home is run again in this page, without any network.</p>
${heats ? slider('warmer', 'All thermostats', -4, 4, 0.5, 0, setpoint === null ? '+0 °C' : `${setpoint} °C`) : null}
${night === null ? null : slider('night', 'At night', 5, 24, 0.5, night, `${night} °C`)}
${airing ? slider('airing', 'All windows wide open, twice a day', 0, 30, 5, 0, 'not besides today’s habits') : null}
${electricity === null ? null : slider('electricity', 'Price of electricity', 0.25, 3, 0.05, 1, `${figureText(electricity, 3)} ${currency}/kWh`)}
${presence ? box('presence', 'A smart valve in every room, heat only while somebody is there') : null}
${
  offer.room === null
    ? null
    : html`${box('dehumidifier', `A dehumidifier in ${theRoom(offer.room)}, 12 L/day by its label`)}
${slider('target', 'which keeps it at', 40, 65, 1, 55, '55 %')}`
}
<p><button type="button" id="try-reset">As it is</button></p>
</form>
<div>
<p class="told" id="try-told" role="status">${AT_REST}</p>
<div class="wide" role="region" aria-label="Figures of what is tried" tabindex="0"><table id="try-figures"><caption>As it is and as tried</caption>${HEADS}<tbody>${rows(triedFigures(asItIs, asItIs, currency, true))}</tbody></table></div>
<div class="pair of-tried">${spans.map((name) => html`<div class="wide" role="region" aria-label="${name}" tabindex="0"><table id="${spanId(name)}"><caption>${name}</caption>${HEADS}<tbody>${rows(triedFigures(asItIs, asItIs, currency, false).map(unknown))}</tbody></table></div>`)}</div>
<p class="note of-tried"><b>${room}</b>, daily means: the coldest surface [%], with the line of 80 % above which mould can grow, and the temperature [°C]. Dashed: as it is; solid: tried.</p>
<div id="try-lines" class="of-tried">${[0, 1].map(() => html`<svg class="days" viewBox="${DAYS_BOX}" aria-hidden="true"></svg>`)}</div>
<details class="of-tried"><summary>Copy as a plan</summary><p>Put this under <code>plans</code> of the scenario, or run <code id="try-command">roombalance run ${file}</code>. What would have to be bought for it is not counted in the money.</p><pre tabindex="0" aria-label="The plan"><code id="try-plan"></code></pre><p><button type="button" id="try-copy">Copy</button></p></details>
</div>
</div>`;
}

/** Said while nothing is tried, when only what things are now is shown. */
export const AT_REST = 'Try something: what it changes is shown here.';

const HEADS = html`<thead><tr><th scope="col" class="word">figure</th><th scope="col">as it is</th><th scope="col">tried</th><th scope="col">change</th></tr></thead>`;

const rows = (figures: readonly TriedFigure[]): Html[] =>
  figures.map((figure) => {
    const { name, before, after, change, unit } = figure;
    return html`<tr><th scope="row">${name} <span class="unit">[${unit}]</span>${tryStrip(figure)}</th><td>${before}</td><td><b>${after}</b></td><td>${withMinus(change)}</td></tr>`;
  });

const unknown = (figure: TriedFigure): TriedFigure => ({
  ...figure,
  ...{ before: '…', after: '…', change: '…' },
});

function slider(
  id: string,
  label: string,
  min: number,
  max: number,
  step: number,
  value: number,
  told: string,
): Html {
  return html`<p class="knob"><label for="try-${id}">${label}</label> <output for="try-${id}" id="try-${id}-told">${told}</output><input type="range" id="try-${id}" min="${min}" max="${max}" step="${step}" value="${value}"></p>`;
}

const box = (id: string, label: string): Html =>
  html`<p><label><input type="checkbox" id="try-${id}"> ${label}</label></p>`;
