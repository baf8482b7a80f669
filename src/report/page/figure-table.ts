import { withMinus } from '../../units/minus-sign.ts';
import { type Html, type HtmlPart, html } from './html.ts';

/** A table of figures with a name at the head of each row. */
export interface FigureTable {
  readonly caption: string;
  /** One per column, units in brackets; the first is of the rows' names. */
  readonly heads: readonly HtmlPart[];
  /** First the row's name. */
  readonly rows: readonly (readonly HtmlPart[])[];
  /** Columns of words, which are not set to the right; the first is one without being named. */
  readonly words?: readonly number[];
  /** Number of the row that is asked about. */
  readonly marked?: number;
  /** What this one table looks like, by its class. */
  readonly named?: string;
  /** What stands before a figure of each column, and its unit, where a phone has no room for columns. */
  readonly briefly?: readonly (readonly [head: string, unit: string])[];
}

/**
 * A table that may be wider than the page: it scrolls within itself, by keyboard too, and the names
 * of its rows stay in sight.
 */
export function figureTable({
  caption,
  heads,
  rows,
  words = [],
  marked = -1,
  named,
  briefly = [],
}: FigureTable): Html {
  const kind = (k: number, text: HtmlPart) =>
    (k === 0 || words.includes(k) ? 'word' : 'figure') + (isLong(text) ? ' long' : '');
  const brief = (k: number) =>
    briefly[k] === undefined
      ? null
      : html` data-head="${briefly[k][0]}" data-unit="${briefly[k][1]}"`;
  return html`<div class="wide" role="region" aria-label="${caption}" tabindex="0">
<table${named === undefined ? null : html` class="${named}"`}><caption><span>${caption}</span></caption>
<thead><tr>${heads.map((head, k) => html`<th scope="col" class="${kind(k, head)}">${head}</th>`)}</tr></thead>
<tbody>${rows.map(
    (
      [name = '', ...cells],
      k,
    ) => html`<tr${k === marked ? html` class="marked"` : null}><th scope="row">${name}</th>${cells.map(
      (cell, n) =>
        html`<td class="${kind(n + 1, cell)}"${brief(n + 1)}>${typeof cell === 'string' || typeof cell === 'number' ? withMinus(`${cell}`) : cell}</td>`,
    )}</tr>
`,
  )}</tbody></table></div>`;
}

/** Whether a word of it is longer than those of this program, so that paper may have to break it. */
const isLong = (text: HtmlPart): boolean => typeof text === 'string' && /\S{17}/.test(text);
