import { figureText } from '../../units/figure-text.ts';
import { SECONDS_PER_DAY } from '../../units/time-units.ts';
import { bandText, type ClimateQuantity, climateDomain } from '../charts/climate.ts';
import { dateText } from '../charts/in-words.ts';
import { daysOf, lineLength } from './hour-groups.ts';
import { type BarScale, barRuler, rangeBar } from './range-bar.ts';
import { roomFinding } from './room-finding.ts';
import { type RoomDays, type RoomLine, roomLines, stretchOf } from './room-lines.ts';
import { type Column, columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Some days of one room, and whose they are. */
export interface RoomPictureData extends RoomDays {
  readonly scenario: string;
  readonly plan: string;
  /** Why these days, such as "the coldest week"; empty where somebody asked for them. */
  readonly chosen: string;
}

/** Some days of one room as a picture of plain characters, with what they come to in a sentence. */
export function roomPicture(data: RoomPictureData, width: number): string {
  const lines = roomLines(data);
  const { figures, words } = columnsOf(lines);
  const figure = (head: string, decimals: number, of: (line: RoomLine) => number): Column =>
    figures(head, (line) => figureText(of(line), decimals));
  const block = (quantity: ClimateQuantity, beside: readonly Column[]): string => {
    const scale = scaleOf(quantity, data, lines, width);
    const bars = words(barRuler(scale), (line) => rangeBar(line[quantity], scale));
    return textTable([words('', ({ label }) => label), bars, ...beside], width);
  };
  return [
    heading(data, width),
    `Operative temperature [°C]\n${block('temperature', [
      figure('mean\n[°C]', 1, (line) => line.temperature.mean),
      figure('too\ncold\n[h]', 0, (line) => line.cold),
      figure('too\nwarm\n[h]', 0, (line) => line.warm),
      figure('somebody\nin [h]', 1, (line) => line.occupied),
    ])}`,
    `Relative humidity [%]\n${block('humidity', [
      figure('mean\n[%]', 0, (line) => line.humidity.mean),
      figure('too\ndamp\n[h]', 0, (line) => line.damp),
      figure('too\ndry\n[h]', 0, (line) => line.dry),
      figure('cold spot\nmean [%]', 0, (line) => line.coldSpot),
    ])}`,
    wrapText(roomFinding(data), '', width),
  ].join('\n\n');
}

/** Which plan, room, days and bands, and how to read the picture. */
function heading(data: RoomPictureData, width: number): string {
  const { first, last } = daysOf(stretchOf(data));
  const count = last - first + 1;
  const [from, to] = [dateText(first * SECONDS_PER_DAY), dateText(last * SECONDS_PER_DAY)];
  const length = `${count} ${count === 1 ? 'day' : 'days'}`;
  const { temperature, humidity } = data.bands;
  return [
    `${data.scenario}: ${data.plan}`,
    `${data.room}, ${count === 1 ? from : `${from} to ${to}`} ` +
      `(${length}${data.chosen === '' ? '' : `, ${data.chosen}`})`,
    `Bands: ${bandText(temperature, 'temperature')} operative, ` +
      `${bandText(humidity, 'humidity')} relative humidity.`,
    `A line ${lineLength(stretchOf(data)) === '3 hours' ? 'every 3 hours' : `a ${lineLength(stretchOf(data))}`}, of the ` +
      'hourly means: = from least to most, o mean, | edge of the band.',
  ]
    .map((sentence) => wrapText(sentence, '', width))
    .join('\n');
}

/** One scale for all lines; the bar takes what the width leaves it. */
function scaleOf(
  quantity: ClimateQuantity,
  { bands }: RoomPictureData,
  lines: readonly RoomLine[],
  width: number,
): BarScale {
  const band = bands[quantity];
  const ends = lines.flatMap((line) => [line[quantity].least, line[quantity].most]);
  const [low, top] = climateDomain(quantity, band, ends);
  const most = Math.max(...ends);
  const high = most > top ? 10 * Math.ceil(most / 10) : top; // air may stand above 100 %
  const label = Math.max(...lines.map((line) => line.label.length));
  const length = Math.max(LEAST_BAR, Math.min(MOST_BAR, width - label - BESIDE_BAR));
  return { low, high, length, band };
}

/** Figures to the right of the bar at their widest, and the blanks between columns. */
const BESIDE_BAR = 33;
const LEAST_BAR = 16;
const MOST_BAR = 72;
