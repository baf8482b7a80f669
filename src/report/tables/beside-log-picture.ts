import type { HoursBesideLog } from '../../studies/against/against-log.ts';
import { capital } from '../../units/capital.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { SECONDS_PER_DAY, SECONDS_PER_HOUR } from '../../units/time-units.ts';
import { dateText } from '../charts/in-words.ts';
import { roundDomain } from '../charts/round-domain.ts';
import { quantityWords, unitOfValues } from '../quantity-words.ts';
import { daysOf, type HourGroup, hourGroups, lineLength } from './hour-groups.ts';
import { barRuler, besideBar, type Range } from './range-bar.ts';
import { columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Some hours of one room, logged and simulated. */
export interface BesideLogPicture {
  readonly scenario: string;
  readonly plan: string;
  readonly room: string;
  readonly clock: LocalClock;
  readonly hours: HoursBesideLog;
  /** First hour that is drawn, and the one behind the last. */
  readonly from: number;
  readonly to: number;
}

/** A room as a picture of plain characters: what was logged of it, and what a run gives for the very hours. */
export function besideLogPicture(data: BesideLogPicture, width: number): string {
  const { hours, room, from, to } = data;
  const index = hours.rooms.indexOf(room);
  const logged = hours.logged.rooms[index]!.columns;
  const stretch = {
    start: hours.start + from * SECONDS_PER_HOUR,
    clock: data.clock,
    count: to - from,
  };
  const groups = hourGroups(stretch);
  const blocks = [...logged].flatMap(([quantity, { unit, values }]) => {
    const run = hours.simulated.rooms[index]!.columns.get(quantity);
    if (run === undefined) return [];
    const lines = groups.map((group) =>
      lineOf(group, values.subarray(from, to), run.values.subarray(from, to)),
    );
    const head = `${capital(quantityWords(quantity))} [${unitOfValues(unit)}]`;
    return [`${head}\n${block(lines, width)}`];
  });
  const { first, last } = daysOf(stretch);
  const span = `${dateText(first * SECONDS_PER_DAY)} to ${dateText(last * SECONDS_PER_DAY)}`;
  const length = lineLength(stretch);
  const heading = [
    `${data.scenario}: ${data.plan}`,
    `${room}, ${span}`,
    `A line ${length === '3 hours' ? 'every 3 hours' : `a ${length}`}: = from least to most logged, o mean ` +
      'logged, x mean simulated, * where both fall on one character. Hours in gaps of the log count nowhere.',
  ];
  return [heading.map((line) => wrapText(line, '', width)).join('\n'), ...blocks].join('\n\n');
}

/** What a line says of the hours that were logged; null where none was. */
interface BesideLine {
  readonly label: string;
  readonly logged: Range | null;
  readonly simulated: number;
}

function lineOf(group: HourGroup, logged: Float64Array, simulated: Float64Array): BesideLine {
  const known = group.hours.filter((h) => !Number.isNaN(logged[h]! + simulated[h]!));
  const mean = (of: Float64Array) => known.reduce((sum, h) => sum + of[h]!, 0) / known.length;
  const values = known.map((h) => logged[h]!);
  const range = { least: Math.min(...values), mean: mean(logged), most: Math.max(...values) };
  return {
    label: group.label,
    logged: known.length === 0 ? null : range,
    simulated: mean(simulated),
  };
}

function block(lines: readonly BesideLine[], width: number): string {
  const ends = lines.flatMap(({ logged, simulated }) =>
    logged === null ? [] : [logged.least, logged.most, simulated],
  );
  const [low, high] = roundDomain(ends);
  const label = Math.max(...lines.map((line) => line.label.length));
  const length = Math.max(LEAST_BAR, Math.min(MOST_BAR, width - label - BESIDE_BAR));
  const none = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
  const scale = { low, high, length, band: none };
  const { figures, words } = columnsOf(lines);
  return textTable(
    [
      words('', ({ label }) => label),
      words(barRuler(scale), ({ logged, simulated }) =>
        logged === null ? ' '.repeat(length) : besideBar(logged, simulated, scale),
      ),
      figures('logged', ({ logged }) => figureText(logged?.mean)),
      figures('simu-\nlated', ({ simulated }) => figureText(simulated)),
      figures('off', ({ logged, simulated }) =>
        logged === null ? '-' : signedText(simulated - logged.mean),
      ),
    ],
    width,
  );
}

/** Figures to the right of the bar at their widest, and the blanks between columns. */
const BESIDE_BAR = 29;
const LEAST_BAR = 16;
const MOST_BAR = 72;
