import { capital } from '../../units/capital.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { sumText } from '../../units/sum-text.ts';
import { andList } from '../../units/word-list.ts';
import type { Chart } from './chart.ts';
import { chartFrame } from './chart-frame.ts';
import type { DoubtData } from './doubt-data.ts';
import { ABOVE, BELOW, doubtLayers } from './doubt-layers.ts';
import { doubtRows, labelOf } from './doubt-rows.ts';

/** A bar for each input from the figure at its low to the figure at its high, largest on top. */
export function doubtChart(data: DoubtData, width: number): Chart {
  const { figure, unit, asIs, inputs } = data;
  const decimals = decimalsOf(data);
  const print = (value: number): string => sumText(value, decimals);
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

/**
 * On which input the figure hangs most, from what to what, and which turn a cost into a saving or back.
 *
 * @param print  a value of the figure as text
 */
const doubtTitle = (data: DoubtData, print: (value: number) => string): string =>
  withMinus(titleOf(data, print));

function titleOf(data: DoubtData, print: (value: number) => string): string {
  const { figure, unit, asIs, inputs } = data;
  const [first] = inputs;
  const now = `${print(asIs)} ${unit}`;
  if (!Number.isFinite(asIs)) return `It is not known what ${figure} comes to`;
  if (first === undefined) return `No input was tried low and high: ${figure} is ${now}`;
  const effectOf = (one: Input): string =>
    print(Math.max(...[one.atLow, one.atHigh].map((value) => Math.abs(value - asIs))));
  const still = [first.atLow, first.atHigh].every((value) => print(value) === print(asIs));
  const range = `${print(first.atLow)} to ${print(first.atHigh)} ${unit}`;
  const alike = inputs.filter((one) => effectOf(one) === effectOf(first));
  const hangs = `${capital(figure)} hangs ${inputs.length > 1 ? 'most ' : ''}on`;
  const moved =
    alike.length === 1
      ? `${hangs} ${first.name}: ${range}`
      : `${hangs} ${named(alike)}: up to ${effectOf(first)} ${unit} either way`;
  const turning = inputs.filter(({ atLow, atHigh }) =>
    [atLow, atHigh].some((value) => Math.sign(value) !== Math.sign(asIs)),
  );
  const none = inputs.length > 1 ? 'none turns it round by itself' : 'that does not turn it round';
  const turned =
    turning.length === 0
      ? none
      : `${named(turning)} ${turning.length === 1 ? 'turns' : 'turn'} it round`;
  return still && turning.length === 0
    ? `No input moves ${figure} from ${now}`
    : `${moved}; ${turned}`;
}

type Input = DoubtData['inputs'][number];

const named = (list: readonly Input[]): string =>
  list.length > 3 ? `${list.length} inputs` : andList(list.map(({ name }) => name));

/** Bars that a picture has room for. */
const MOST = 12;
