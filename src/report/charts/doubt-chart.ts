import { figureText } from '../../units/figure-text.ts';
import type { Chart } from './chart.ts';
import { chartFrame } from './chart-frame.ts';
import type { DoubtData } from './doubt-data.ts';
import { ABOVE, BELOW, doubtLayers } from './doubt-layers.ts';
import { doubtRows, labelOf } from './doubt-rows.ts';
import { doubtTitle } from './doubt-title.ts';

/** A bar for each input from the figure at its low to the figure at its high, largest on top. */
export function doubtChart(data: DoubtData, width: number): Chart {
  const { figure, unit, asIs, inputs } = data;
  const decimals = decimalsOf(data);
  const print = (value: number): string => figureText(value, decimals);
  // What is no number has no place on an axis; the table has it.
  const known = Number.isFinite(asIs)
    ? inputs.filter(({ atLow, atHigh }) => Number.isFinite(atLow) && Number.isFinite(atHigh))
    : [];
  const title = doubtTitle({ ...data, inputs: known }, print);
  const drawn = known.slice(0, MOST);
  const middle = Number.isFinite(asIs) ? asIs : 0;
  const some = drawn.length < inputs.length ? `${drawn.length} of ${inputs.length} inputs` : '';
  const rows = doubtRows(drawn, middle, width);
  const frame = chartFrame({
    ...{ width: rows.width, height: rows.height },
    description: title,
    layer: doubtLayers(rows, {
      ...{ figure, unit },
      asIs: middle,
      told: `as it is: ${print(asIs)} ${unit}`,
      some,
    }),
  });
  const right = width - rows.left - rows.width;
  return {
    title,
    description:
      `One bar an input, largest on top: from ${figure} as it is, ${print(asIs)} ${unit}, an outlined ` +
      `part goes to what it is with the input at its low and a filled part to what it is at its ` +
      `high${some === '' ? '' : `; drawn are ${some}, the table has all`}.` +
      drawn.map((one) => ` ${endsOf(one, print)}.`).join(''),
    spec: {
      ...frame,
      autosize: { type: 'none' },
      padding: { left: rows.left, top: ABOVE, right, bottom: BELOW },
    },
    table: {
      headers: [
        ...['input', 'low', 'high'],
        ...['low', 'high'].map((end) => `${figure} at ${end} [${unit}]`),
      ],
      rows: inputs.map((input) => [
        ...[labelOf(input), input.low, input.high, print(input.atLow), print(input.atHigh)],
      ]),
    },
  };
}

const endsOf = (input: DoubtData['inputs'][number], print: (value: number) => string): string =>
  `${labelOf(input)}: ${print(input.atLow)} at ${input.low}, ${print(input.atHigh)} at ${input.high}`;

/** As many digits behind the point for all as leave about three to the largest of them. */
function decimalsOf({ asIs, inputs }: DoubtData): number {
  const sizes = [asIs, ...inputs.flatMap(({ atLow, atHigh }) => [atLow, atHigh])]
    .filter(Number.isFinite)
    .map(Math.abs);
  const largest = Math.max(0, ...sizes);
  return largest === 0 ? 0 : Math.min(6, Math.max(0, 2 - Math.floor(Math.log10(largest))));
}

/** Bars that a picture has room for. */
const MOST = 12;
