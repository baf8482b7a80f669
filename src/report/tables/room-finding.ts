import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { edgesWhen } from '../charts/climate.ts';
import { dateText } from '../charts/in-words.ts';
import { localAt } from './hour-groups.ts';
import type { RoomDays } from './room-lines.ts';

/** What some days of a room come to, in one sentence made from their hours. */
export function roomFinding(days: RoomDays): string {
  const { room, bands, series, mild = new Uint8Array(0) } = days;
  const { operativeTemperature: warmth, relativeHumidity: damp, coldSpotHumidity: spot } = series;
  const { low, high, mild: whenMild } = bands.temperature;
  const mildHours = mild.reduce((sum, is) => sum + is, 0);
  const upper = mildHours === warmth.length ? edgesWhen(bands.temperature, true).high : high;
  const mixed = whenMild !== undefined && mildHours > 0 && upper === high;
  const also = mixed ? ` (${whenMild.high} °C when mild)` : '';
  const tooWarm = (h: number) => warmth[h]! > edgesWhen(bands.temperature, mild[h] === 1).high;
  const outside = [
    { holds: (h: number) => warmth[h]! < low, side: 'below', edge: `${low} °C` },
    { holds: tooWarm, side: 'above', edge: `${upper} °C${also}` },
    {
      holds: (h: number) => damp[h]! > bands.humidity.high,
      side: 'above',
      edge: `${bands.humidity.high} %`,
    },
    {
      holds: (h: number) => damp[h]! < bands.humidity.low,
      side: 'below',
      edge: `${bands.humidity.low} %`,
    },
  ].map(({ holds, side, edge }) => {
    const hours = [...warmth.keys()].filter(holds);
    const felt = hours.reduce((sum, h) => sum + series.occupied[h]!, 0);
    const words = `${side} ${edge} for ${hours.length} h (${figureText(felt, 1)} h with somebody in)`;
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
