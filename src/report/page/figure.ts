import type { Chart } from '../charts/chart.ts';
import type { Drawn } from '../charts/to-svg.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html, raw } from './html.ts';
import type { PictureId } from './picture-ids.ts';
import { details } from './section.ts';

/** A picture drawn for a wide page and for a phone; without marks where it could not be drawn. */
export interface DrawnTwice {
  readonly id: PictureId;
  readonly chart: Chart;
  readonly wide: Drawn;
  readonly narrow: Drawn;
}

/**
 * A picture with its finding above it and its figures below, to be opened. Where its rows can be
 * pointed at, the places are left for the script: number of the first row, place, distance [px].
 */
export function figure({ id, chart, wide, narrow }: DrawnTwice): Html {
  return html`
<figure class="picture" id="${id}">
<figcaption><h3 id="${id}-finding">${chart.title}</h3></figcaption>
${wide.svg === '' || narrow.svg === '' ? UNDRAWN : [drawing('wide-only', wide), drawing('narrow-only', narrow)]}
<p class="reading" hidden></p>
${details(
  'Figures of this picture',
  figureTable({
    caption: chart.title,
    heads: chart.table.headers,
    rows: chart.table.rows,
  }),
)}
</figure>`;
}

const UNDRAWN = html`<p class="note">This picture could not be drawn. Its figures can be opened below.</p>`;

const drawing = (kind: string, { svg, along }: Drawn): Html =>
  along === null
    ? html`<div class="drawing ${kind}">${raw(svg)}</div>`
    : html`<div class="drawing ${kind}" data-row="${along.row}" data-from="${along.from}" data-step="${along.step}">${raw(svg)}</div>`;
