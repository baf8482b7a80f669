import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { dateText } from '../charts/in-words.ts';
import { localAt } from './hour-groups.ts';
import type { RoomDays } from './room-lines.ts';

/** What some days of a room come to, in one sentence made from their hours. */
export function roomFinding(days: RoomDays): string {
  const { room, bands, series } = days;
  const { operativeTemperature: warmth, relativeHumidity: damp, coldSpotHumidity: spot } = series;
  const outside = [
    { values: warmth, side: -1, edge: bands.temperature.low, unit: '°C' },
    { values: warmth, side: 1, edge: bands.temperature.high, unit: '°C' },
    { values: damp, side: 1, edge: bands.humidity.high, unit: '%' },
    { values: damp, side: -1, edge: bands.humidity.low, unit: '%' },
  ].map(({ values, side, edge, unit }) => {
    const hours = hoursWhere(values, (value) => side * value > side * edge);
    const felt = hours.reduce((sum, h) => sum + series.occupied[h]!, 0);
    const words =
      `${side < 0 ? 'below' : 'above'} ${edge} ${unit} for ${hours.length} h ` +
      `(${figureText(felt, 1)} h with somebody in)`;
    return { hours: hours.length, words };
  });
  const told = outside.filter(({ hours }) => hours > 0).map(({ words }) => words);
  const air = told.length === 0 ? 'stays within both bands' : `is ${andList(told)}`;
  const wet = hoursWhere(spot, (value) => value > MOULD_LEVEL).length;
  const coldSpot = `is ${wet === 0 ? 'never ' : ''}above ${MOULD_LEVEL} %${wet === 0 ? '' : ` for ${wet} h`}`;
  const warmest = outside[1]!.hours > outside[0]!.hours;
  return (
    `Of these ${warmth.length} hours, ${room} ${air}, and its cold spot ${coldSpot}; ` +
    `${warmest ? 'warmest' : 'coldest'} ${extreme(days, warmest ? 1 : -1)}.`
  );
}

/** "with 14.2 °C on 10 January at 06:00": the first hour of the highest (1) or lowest (-1) mean. */
function extreme(days: RoomDays, side: -1 | 1): string {
  const values = days.series.operativeTemperature;
  const at = values.reduce((best, value, h) => (side * value > side * values[best]! ? h : best), 0);
  const local = localAt(days, at);
  const clock = new Date(local * 1000).toISOString().slice(11, 16);
  return `with ${figureText(values[at], 1)} °C on ${dateText(local, false)} at ${clock}`;
}

function hoursWhere(values: Float32Array, holds: (value: number) => boolean): number[] {
  return [...values.keys()].filter((h) => holds(values[h]!));
}

/** Relative humidity at a surface above which mould has what it needs. [%] */
const MOULD_LEVEL = 80;
