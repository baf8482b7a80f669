import type { Flip } from '../../studies/doubts/flip.ts';
import { figureText } from '../../units/figure-text.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { type Html, html } from './html.ts';
import { details, list } from './section.ts';

/** A line for each input that was tried: solid while the answer holds, broken from where it turns. */
export function turningPoints(flips: readonly Flip[]): Html {
  return html`
<h3>What would turn it round</h3>
<p class="note">One thing at a time, all else as it is. Solid: the answer holds. Broken: it turns round.</p>
<ul class="turns">${flips.map((flip) => html`<li>${turn(flip)}</li>`)}</ul>
${details('How each was tried', list(flips.map(({ input, note }) => `${input}: ${note}.`)))}`;
}

function turn(flip: Flip): Html {
  const { input, unit, today, value, low, high, tried, becomes } = flip;
  // Zeros behind the point tell nothing where the scale has a beginning, a middle and an end.
  const print = (x: number): string => withMinus(String(Number(figureText(x))));
  const where =
    value === null
      ? tried
        ? 'nowhere'
        : 'not tried'
      : `${value > today ? 'above' : 'below'} ${print(value)} ${unit}${becomes === null ? '' : `: ${becomes}`}`;
  return html`<span class="of">${input}</span> <b class="${value === null ? 'holds' : 'turns'}">${where}${
    value === null || flip.likely ? null : ' (far off)'
  }</b>${drawn(flip)}<small><span>${print(low)}</span> <span>today ${print(today)} ${unit}</span> <span>${print(high)}</span></small>`;
}

/** Today's value is in the middle, so that every line is read alike: each half has its own scale. */
function drawn({ today, value, low, high, tried }: Flip): Html {
  const at = (x: number): string => {
    const half = x < today ? today - low || 1 : high - today || 1;
    return (MIDDLE + ((x - today) / half) * (MIDDLE - EDGE)).toFixed(1);
  };
  const turns = value === null ? null : at(value);
  const [from, to] = [`${EDGE}`, `${2 * MIDDLE - EDGE}`];
  const holds = turns === null ? [from, to] : value! > today ? [from, turns] : [turns, to];
  const lost = turns === null ? null : value! > today ? [turns, to] : [from, turns];
  return html`<svg class="turn" viewBox="0 0 ${2 * MIDDLE} 16" aria-hidden="true" focusable="false" preserveAspectRatio="none"><path class="${tried ? 'holds' : 'untried'}" d="M${holds[0]!} 8H${holds[1]!}"/>${
    lost === null
      ? null
      : html`<path class="lost" d="M${lost[0]!} 8H${lost[1]!}"/><path class="at" d="M${turns!} 1V15"/>`
  }<circle cx="${MIDDLE}" cy="8" r="4.5"/></svg>`;
}

const MIDDLE = 180; // px
const EDGE = 4;
