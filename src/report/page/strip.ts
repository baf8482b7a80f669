import { type Html, html } from './html.ts';

/** Figures of two plans on one scale. */
export interface Strip {
  /** Ends of the scale. */
  readonly from: number;
  readonly to: number;
  readonly baseline: number;
  readonly plan: number;
  /** How the plan's mark is drawn: what is worse is a square, all else a disc. */
  readonly look: 'better' | 'worse' | 'same';
  /** Where else the plan may lie, from low to high; null or absent where that is not known. */
  readonly reach?: readonly [number, number] | null;
}

/**
 * An upright stroke where the baseline is, a line from there and a mark where the plan is. Nobody
 * needs it who reads the figure that it stands beside.
 */
export function strip({ from, to, baseline, plan, look, reach = null }: Strip, width = 56): Html {
  const scale = (value: number): string => {
    const share = to > from ? (value - from) / (to - from) : 0;
    return (EDGE + share * (width - 2 * EDGE)).toFixed(1);
  };
  const [base, at] = [scale(baseline), scale(plan)];
  const mark =
    look === 'worse'
      ? html`<rect x="${(Number(at) - 3.5).toFixed(1)}" y="4.5" width="7" height="7"/>`
      : html`<circle cx="${at}" cy="8" r="4"/>`;
  return html`<svg class="strip ${look}" viewBox="0 0 ${width} 16" width="${width}" height="16" aria-hidden="true" focusable="false"><path class="rail" d="M${EDGE} 8H${width - EDGE}"/>${reach === null ? null : html`<path class="reach" d="M${scale(reach[0])} 8H${scale(reach[1])}"/>`}<path class="way" d="M${base} 8H${at}"/><path class="base" d="M${base} 2V14"/>${mark}</svg>`;
}

/** A scale on which nothing is known yet. */
export const emptyStrip = (width: number): Html =>
  html`<svg class="strip" viewBox="0 0 ${width} 16" width="${width}" height="16" aria-hidden="true" focusable="false"><path class="rail" d="M${EDGE} 8H${width - EDGE}"/></svg>`;

/** Room for half a mark. [px] */
const EDGE = 5;
