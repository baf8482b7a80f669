import { SPECIES } from '../../species/species-table.ts';
import { capital } from '../../units/capital.ts';
import { isoMinute } from '../../units/iso-time.ts';
import { type Log, type LoggedSeries, roomsOf, seriesOf } from '../log.ts';
import { longestGap } from '../longest-gap.ts';
import { meansOverSteps } from '../onto-steps.ts';
import { factsOf } from '../quantities.ts';
import type { LogWarning } from './log-warning.ts';
import { movedSensors } from './moved-sensors.ts';
import { type SeriesFacts, usualDistance } from './series-facts.ts';
import { silentStates } from './silent-states.ts';

/** Whatever the readings themselves say against them. */
export function logChecks(log: Log, facts: ReadonlyMap<LoggedSeries, SeriesFacts>): LogWarning[] {
  const days = (log.end - log.start) / 86_400;
  const warnings: LogWarning[] = [];
  if (days < SHORT_DAYS) {
    const text = `The log spans ${figure(days)} days. Less than three weeks tell little of a home: habits and weather hardly vary.`;
    warnings.push({ id: 'short', text });
  }
  for (const [series, fact] of facts) warnings.push(...ofSeries(series, fact));
  for (const room of roomsOf(log)) {
    warnings.push(...swapped(log, facts, room), ...unseenPeople(log, room));
  }
  return [...warnings, ...movedSensors(log)];
}

function ofSeries(series: LoggedSeries, fact: SeriesFacts): LogWarning[] {
  const what = seriesWords(series);
  const found: LogWarning[] = [];
  const live = series.reading === 'instant' && METERED.has(series.quantity) === false;
  if (live && fact.stuckFor >= STUCK) {
    const at = valueAt(series, fact.stuckFrom);
    const full = series.quantity === 'relative humidity' && at >= SATURATED;
    const why = full ? 'is it wet, or at its end?' : 'a sensor that sticks?';
    const text = `${what} stood at ${figure(at)} for ${hours(fact.stuckFor)} from ${isoMinute(fact.stuckFrom)}: ${why}`;
    found.push({ id: 'stuck', text });
  }
  if (fact.inGaps > 0.05) {
    const share = `${Math.round(100 * fact.inGaps)} % of its span`;
    const longest = hours(fact.longestGap);
    const text = fact.onChange
      ? `${what} is reported on a change only: for ${share} there are spells of more than ${hours(fact.gapsFrom)} without a reading, the longest ${longest}. Up to ${hours(longestGap(series))} they count as a steady room, though the sensor may have been silent.`
      : `${what} is missing for ${share}; the longest gap is ${longest}.`;
    found.push({ id: 'gaps', text });
  }
  found.push(...silentStates(series, what));
  if (series.quantity === 'relative humidity') found.push(...ceiling(series, fact, what));
  if (BREATH !== undefined && series.quantity === BREATH.name)
    found.push(...offOutdoors(series, what));
  return found;
}

/** A humidity sensor that stops at a value below saturation again and again. */
function ceiling({ values }: LoggedSeries, { highest }: SeriesFacts, what: string): LogWarning[] {
  if (highest > 98) return [];
  let [there, below] = [0, 0];
  for (const value of values) {
    if (value >= highest - 0.05) there++;
    else if (value >= highest - 1) below++;
  }
  if (there < Math.max(20, values.length * 0.003, below)) return [];
  const text = `${what} never exceeds ${figure(highest)} % and stands there in ${there} readings: a sensor that reaches no further?`;
  return [{ id: 'humidity-ceiling', text }];
}

/**
 * Temperature and humidity of a room in each other's column: what is called humidity is as warm as a room
 * and hardly moves, what is called temperature moves far more than a room does, read as it stands or
 * taken for Fahrenheit.
 */
function swapped(
  log: Log,
  facts: ReadonlyMap<LoggedSeries, SeriesFacts>,
  room: string,
): LogWarning[] {
  const [warm, humid] = [
    seriesOf(log, 'temperature', room),
    seriesOf(log, 'relative humidity', room),
  ];
  if (warm === undefined || humid === undefined) return [];
  const mean = facts.get(humid)?.mean ?? Number.NaN;
  const [moves, still] = [warm, humid].map(({ values }) => usualDistance(values)) as [
    number,
    number,
  ];
  if (!(mean > ROOM_LOW && mean < ROOM_HIGH) || !(moves > LIVELY * still) || !(moves > LEAST_MOVE))
    return [];
  const text = `In ${room} humidity stays near ${figure(mean)} % while temperature moves by some ${figure(2 * moves)} °C: are their columns swapped?`;
  return [{ id: 'swapped', text }];
}

/** Breath that falls below the level outdoors, or in weeks never comes near it. */
function offOutdoors({ times, values, place }: LoggedSeries, what: string): LogWarning[] {
  if (place === 'outdoors' || BREATH === undefined) return [];
  const sorted = values.slice().sort();
  const low = sorted[Math.floor(sorted.length / 100)]!;
  const days = (times.at(-1)! - times[0]!) / 86_400;
  if (low > BREATH.outdoors.high + NEVER_AIRED && days >= SHORT_DAYS) {
    const text = `${what} never comes near the level outdoors, but stays above ${figure(low)} ${BREATH.unit} in 99 readings of a hundred: either the room is never aired or empty for long, or the sensor reads high; then decays seem slower than they are.`;
    return [{ id: 'above-outdoors', text }];
  }
  if (low >= BREATH.outdoors.low - LEEWAY) return [];
  const text = `${what} falls to ${figure(low)} ${BREATH.unit} and below in one reading of a hundred, under the level outdoors: the sensor reads low, so decays seem faster than they are.`;
  return [{ id: 'below-outdoors', text }];
}

/** Hours in which breath gathers though nobody is said to be there: counts and air do not agree. */
function unseenPeople(log: Log, room: string): LogWarning[] {
  const presence = seriesOf(log, 'presence', room);
  const breath = BREATH === undefined ? undefined : seriesOf(log, BREATH.name, room);
  if (presence === undefined || breath === undefined) return [];
  const start = Math.ceil(log.start / 3600) * 3600;
  const steps = { start, step: 3600, count: Math.max(0, Math.floor((log.end - start) / 3600)) };
  const there = meansOverSteps(presence, steps, Number.POSITIVE_INFINITY);
  const level = meansOverSteps(breath, steps, 3600);
  let [empty, rising] = [0, 0];
  for (let k = 1; k < steps.count; k++) {
    if (there[k] !== 0 || there[k - 1] !== 0 || Number.isNaN(level[k]! - level[k - 1]!)) continue;
    empty++;
    if (level[k]! - level[k - 1]! > RISE) rising++;
  }
  if (rising < 5 || rising < empty * 0.02) return [];
  const text = `${capital(room)}: breath gathers in ${rising} of ${empty} hours in which nobody is logged there: presence misses people, or air comes from other rooms.`;
  return [{ id: 'unseen-people', text }];
}

/** A series as the beginning of a sentence, such as "Relative humidity of bath". */
function seriesWords({ quantity, room, place, device }: LoggedSeries): string {
  const words = capital(factsOf(quantity)?.words ?? quantity);
  if (device !== null) return `${words} ${device}`;
  return place === 'outdoors' ? `${words} outdoors` : room === null ? words : `${words} of ${room}`;
}

function valueAt({ times, values }: LoggedSeries, instant: number): number {
  return values[times.indexOf(instant)]!;
}

const figure = (value: number): string => String(Math.round(value * 10) / 10);
const hours = (seconds: number): string =>
  seconds < 2 * 86_400 ? `${figure(seconds / 3600)} hours` : `${figure(seconds / 86_400)} days`;

const BREATH = SPECIES.find(({ sources }) => sources.body?.breathed === true);
/** Power may be the same for a day. */
const METERED: ReadonlySet<string> = new Set([
  'electricity',
  'gas',
  'heating power',
  'heating electricity',
  'device power',
  'valve opening',
]);
/** As warm as a room is; air of a room this dry is rare. [°C] */
const ROOM_LOW = 14;
const ROOM_HIGH = 28;
/** Relative humidity moves by more points than a room does by kelvins; the other way round is no room. */
const LIVELY = 1.5;
/** [K] */
const LEAST_MOVE = 1.5;
const SHORT_DAYS = 21;
const STUCK = 24 * 3600;
/** Of air that can hold no more; sensors seldom tell more finely. [%] */
const SATURATED = 99;
const LEEWAY = 20;
/** A room that is empty or aired now and then comes nearer to outdoors within weeks; own judgement. [ppm] */
const NEVER_AIRED = 80;
const RISE = 150;
