import { withMinus } from '../../units/minus-sign.ts';
import { andList } from '../../units/word-list.ts';
import type { DoubtData } from './doubt-data.ts';

/**
 * Which input moves the figure most and from what to what, and which turn its sign.
 *
 * @param print  a value of the figure as text
 */
export const doubtTitle = (data: DoubtData, print: (value: number) => string): string =>
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
  const range = `from ${print(first.atLow)} to ${print(first.atHigh)} ${unit}`;
  const alike = inputs.filter((one) => effectOf(one) === effectOf(first));
  const most = inputs.length > 1 ? ' most' : '';
  const moved =
    alike.length === 1
      ? `${first.name} moves ${figure}${most}, ${range}`
      : `${named(alike)} move ${figure}${most}, by up to ${effectOf(first)} ${unit}`;
  const turning = inputs.filter(({ atLow, atHigh }) =>
    [atLow, atHigh].some((value) => Math.sign(value) !== Math.sign(asIs)),
  );
  const turned =
    turning.length === 0
      ? 'no input turns its sign'
      : `${named(turning)} ${turning.length === 1 ? 'turns' : 'turn'} its sign`;
  return still && turning.length === 0
    ? `No input moves ${figure} from ${now}`
    : `${moved}; ${turned}`;
}

type Input = DoubtData['inputs'][number];

const named = (list: readonly Input[]): string =>
  list.length > 3 ? `${list.length} inputs` : andList(list.map(({ name }) => name));
