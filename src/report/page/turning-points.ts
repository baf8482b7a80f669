import type { Flip } from '../../studies/doubts/flip.ts';
import { figureText } from '../../units/figure-text.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { grouped } from '../../units/sum-text.ts';
import { type Html, html } from './html.ts';
import { details, list } from './section.ts';

/**
 * A line for each input that turns the answer round: solid while it holds, broken from where it turns;
 * the others in words.
 */
export function turningPoints(flips: readonly Flip[]): Html {
  const turning = flips.filter((flip): flip is Turning => flip.value !== null);
  const others = flips.filter(({ value }) => value === null);
  return html`
<h3>${turning.length === 0 ? 'No single thing turns it round' : 'What would turn it round'}</h3>
<p class="note">One thing at a time, all else as it is${turning.length === 0 ? ', as far as was tried:' : '. Solid: the answer holds. Broken: it turns round.'}</p>
${turning.length === 0 ? null : html`<ul class="turns">${turning.map((flip) => html`<li>${turn(flip)}</li>`)}</ul>`}
${turning.length === 0 || others.length === 0 ? null : html`<p class="note">Nowhere, as far as was tried:</p>`}
${others.length === 0 ? null : list(others.map(span))}
${details('How each was tried', list(flips.map(({ input, note }) => `${input}: ${note}.`)))}`;
}

/** Between which values the answer stays as it is. */
const span = ({ input, unit, today, low, high, tried }: Flip): Html =>
  html`${input}: ${tried ? `${print(low)} to ${print(high)} ${unit}, today ${print(today)}` : `not tried, today ${print(today)} ${unit}`}`;

function turn(flip: Turning): Html {
  const { input, unit, today, value, low, high, becomes, likely } = flip;
  return html`<span class="of">${input}</span> <b class="turns">${value > today ? 'above' : 'below'} ${print(value)} ${unit}${becomes === null ? '' : `: ${becomes}`}${
    likely ? null : ' (far off)'
  }</b>${drawn(flip)}<small><span>${print(low)}</span> <span>today ${print(today)} ${unit}</span> <span>${print(high)}</span></small>`;
}

/** Zeros behind the point tell nothing where a scale has a beginning, a middle and an end. */
const print = (x: number): string => withMinus(grouped(String(Number(figureText(x)))));

/** Today's value is in the middle, so that every line is read alike: each half has its own scale. */
function drawn({ today, value, low, high }: Turning): Html {
  const at = (x: number): string => {
    const half = x < today ? today - low || 1 : high - today || 1;
    return (MIDDLE + ((x - today) / half) * (MIDDLE - EDGE)).toFixed(1);
  };
  const turns = at(value);
  const [from, to] = [`${EDGE}`, `${2 * MIDDLE - EDGE}`];
  const [holds, lost] =
    value > today
      ? [`${from} 8H${turns}`, `${turns} 8H${to}`]
      : [`${turns} 8H${to}`, `${from} 8H${turns}`];
  return html`<svg class="turn" viewBox="0 0 ${2 * MIDDLE} 16" aria-hidden="true" focusable="false" preserveAspectRatio="none"><path class="holds" d="M${holds}"/><path class="lost" d="M${lost}"/><path class="at" d="M${turns} 1V15"/><circle cx="${MIDDLE}" cy="8" r="4.5"/></svg>`;
}

type Turning = Flip & { readonly value: number };

const MIDDLE = 180; // px
const EDGE = 4;
