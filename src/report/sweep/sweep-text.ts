import { figureText } from '../../units/figure-text.ts';
import { sumText } from '../../units/sum-text.ts';
import { columnsOf, textTable } from '../tables/text-table.ts';
import { wrapText } from '../tables/wrap-text.ts';

/** A run that no other beats, as it is printed. */
interface FrontierRun {
  readonly run: number;
  readonly plan: string;
  readonly values: Readonly<Record<string, number>>;
  readonly money: number;
  readonly hours: number;
}

/** What a sweep came to. */
export interface SweepOutcome {
  /** File that was written. */
  readonly file: string;
  readonly runs: number;
  /** Runs among them that could not be made. */
  readonly failed: number;
  readonly shard: readonly [part: number, parts: number];
  readonly currency: string;
  /** Empty where the runs are not to be set against each other. */
  readonly frontier: readonly FrontierRun[];
  readonly knee: {
    readonly at: FrontierRun;
    readonly before: number;
    readonly after: number;
  } | null;
}

/** What a sweep came to, in words: how many runs, the frontier of money against hours, its bend. */
export function sweepText(outcome: SweepOutcome, width: number): string {
  const { file, runs, failed, shard, frontier } = outcome;
  const of = shard[1] === 1 ? '' : `, shard ${shard.join(' of ')},`;
  const without = failed === 0 ? '' : `, ${failed} of them without figures`;
  const parts = [`${runs} ${runs === 1 ? 'run' : 'runs'}${of} in ${file}${without}`];
  if (frontier.length > 0) parts.push(...frontierParts(outcome, width));
  return parts.join('\n\n');
}

function frontierParts(outcome: SweepOutcome, width: number): string[] {
  const { currency, runs, failed, frontier, knee } = outcome;
  const head =
    `Money against hours outside the bands, all rooms: for ${frontier.length} of ${runs - failed} runs ` +
    'no other is cheaper with no more hours, or has fewer hours for no more money.';
  const shown = frontier.length <= MOST ? frontier : thinned(frontier, knee?.at.run);
  const { figures, words } = columnsOf(shown);
  const pointers = Object.keys(frontier[0]!.values);
  const plans = new Set(frontier.map(({ plan }) => plan));
  const table = textTable(
    [
      figures(`${currency}\na year`, ({ money }) => sumText(money, 0)),
      figures('room h\noutside', ({ hours }) => figureText(hours, 0)),
      figures('run', ({ run }) => String(run)),
      ...(plans.size > 1 ? [words('plan', ({ plan }) => plan)] : []),
      ...pointers.map((pointer) => figures(pointer, ({ values }) => valueText(values[pointer]!))),
    ],
    width,
  );
  const left = frontier.length - shown.length;
  const rest = left === 0 ? [] : [`and ${left} between these`];
  return [
    wrapText(head, '', width),
    [table, ...rest].join('\n'),
    wrapText(kneeWords(outcome), '', width),
  ];
}

function kneeWords({ frontier, knee, currency }: SweepOutcome): string {
  const [first] = frontier;
  if (first !== undefined && frontier.length === 1) {
    return `Run ${first.run} (${runWords(first)}) is the cheapest and has the fewest hours.${coldWords(first)}`;
  }
  if (knee === null)
    return 'Between its ends the frontier has no bend at which money and hours are both low.';
  const { at, before, after } = knee;
  return (
    `The bend is at run ${at.run} (${runWords(at)}). Up to it, from the cheapest, 100 room-hours ` +
    `less cost ${sumText(100 * before)} ${currency} a year; beyond it, to the one with fewest ` +
    `hours, ${sumText(100 * after)}.${coldWords(at)}`
  );
}

/** What must stand beside a setting that is cold for whoever sits or sleeps there. */
function coldWords({ values }: FrontierRun): string {
  const low = Object.entries(values).filter(
    ([pointer, value]) => SETTING.test(pointer) && value < LEAST_WARM,
  );
  if (low.length === 0) return '';
  return (
    ` That sets a thermostat below ${LEAST_WARM} °C: the WHO guidance asks for ${LEAST_WARM} °C or more where ` +
    'people are, and for warmer rooms for infants and for frail, old and ill people, who come before any saving.'
  );
}

const runWords = ({ plan, values }: FrontierRun): string =>
  [
    plan,
    ...Object.entries(values).map(([pointer, value]) => `${pointer} ${valueText(value)}`),
  ].join(', ');

/** A value as people would set it. */
export const valueText = (value: number): string => String(Number(value.toPrecision(4)));

/** So many rows evenly from a longer frontier, its ends and its bend among them. */
function thinned(frontier: readonly FrontierRun[], bend: number | undefined): FrontierRun[] {
  const last = frontier.length - 1;
  const kept = new Set(Array.from({ length: MOST }, (_, k) => Math.round((k * last) / (MOST - 1))));
  return frontier.filter(({ run }, k) => kept.has(k) || run === bend);
}

const MOST = 20;
/** Of heating, at one time of day or at all. */
const SETTING = /^\/heating\/(?:.*\/)?setpoint$|^\/heating\/rooms\/[^/]+$/;
const LEAST_WARM = 18; // °C
