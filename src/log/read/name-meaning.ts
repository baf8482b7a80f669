import { plainName } from '../../species/plain-name.ts';
import { meaning } from '../../units/unit-words.ts';
import { LOGGED_QUANTITIES } from '../quantities.ts';
import type { NamedReading } from './log-options.ts';

/** What a header or name says by itself, or why it says nothing. */
export type NameMeaning = NamedReading | { readonly leftOut: string };

/**
 * What a column is by its name, such as "Bedroom temperature (°C)" or "sensor.kitchen_rh".
 *
 * @param rooms  rooms of the home; empty where none is known, then what is left of the name is the room
 * @param stem   name of the file without its ending: the room where a name holds none
 */
export function nameMeaning(name: string, rooms: readonly string[], stem: string): NameMeaning {
  const { bare, unit } = withoutUnit(name);
  const words = wordsOf(bare);
  if (ASIDE.test(words)) return { leftOut: `speaks of ${ASIDE.exec(words)![0].trim()}` };
  const facts =
    LOGGED_QUANTITIES.find(({ called }) => called.test(words)) ??
    (unit === null ? undefined : byUnit(unit));
  if (facts === undefined) return { leftOut: 'its name says no quantity that is known' };
  const rest = words
    .replace(facts.called, ' ')
    .replaceAll(FILLER, ' ')
    .replaceAll(/ +/g, ' ')
    .trim();
  const quantity = facts.name;
  if (OUTDOORS.test(words)) return { quantity, place: 'outdoors', room: null, device: null, unit };
  if (METERS.includes(quantity)) return { quantity, place: 'home', room: null, device: null, unit };
  const room = roomIn(rest, rooms, stem);
  if (room === null) {
    return { leftOut: rest === '' ? 'its name says no room' : `no room is called "${rest}"` };
  }
  return { quantity, place: 'room', room, device: null, unit };
}

/** A name without the unit in it, and that unit. */
function withoutUnit(name: string): { bare: string; unit: string | null } {
  const inBrackets = /[[(]([^\])]*)[\])]/.exec(name);
  if (inBrackets !== null) {
    const unit = knownUnit(inBrackets[1]!);
    if (unit !== null) return { bare: name.replace(inBrackets[0], ' '), unit };
  }
  const [, before = '', last = ''] = /^(.*[\s_,/-])(\S+)$/.exec(name) ?? [];
  const unit = last === '' ? null : knownUnit(last);
  return unit === null || /^[tTh]$/.test(last)
    ? { bare: name, unit: null }
    : { bare: before, unit };
}

/** A unit as the table of units knows it, from the ways in which loggers write it. */
export function knownUnit(text: string): string | null {
  const bare = text.trim().replace(/^in /i, '').replaceAll('º', '°');
  const spelled = SPELLINGS[bare.toLowerCase().replaceAll(/[\s._]/g, '')];
  if (spelled !== undefined) return spelled;
  if (/^0\.0?1 ?°?C$/i.test(bare)) return bare.startsWith('0.01') ? '0.01 °C' : '0.1 °C';
  return bare !== '' && meaning(bare) !== null ? bare : null;
}

/** Small words with single blanks, split where letters change to capitals. */
function wordsOf(name: string): string {
  return name
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function byUnit(unit: string) {
  if (unit === '°C' || unit === '°F')
    return LOGGED_QUANTITIES.find((q) => q.name === 'temperature');
  if (unit === '%') return LOGGED_QUANTITIES.find((q) => q.name === 'relative humidity');
  return undefined;
}

/** The room that a name holds: the longest that is known, else what is left of the name. */
function roomIn(rest: string, rooms: readonly string[], stem: string): string | null {
  if (rooms.length === 0) return rest === '' ? stem : rest;
  const held = (text: string) =>
    rooms
      .filter((room) => plainName(text).includes(plainName(room)))
      .sort((a, b) => b.length - a.length)[0];
  const found = held(rest) ?? (rest === '' ? held(stem) : undefined);
  if (found !== undefined) return found;
  return rest === '' && rooms.length === 1 ? rooms[0]! : null;
}

const ASIDE =
  /\b(battery|batt|rssi|signal|link quality|pressure|lux|illuminance|voltage|min(imum)?|max(imum)?|firmware|uptime|set ?point|target)\b/;
const OUTDOORS = /\b(outdoors?|outside|out|external|exterior|aussen|weather)\b/;
const FILLER =
  /\b(sensor|binary|average|avg|mean|reading|value|air|indoor|inside|state|logger|channel|open|current|level|concentration|count|number)\b/g;
const METERS: readonly string[] = ['electricity', 'gas'];
const SPELLINGS: Readonly<Record<string, string>> = {
  c: '°C',
  degc: '°C',
  '°c': '°C',
  celsius: '°C',
  celcius: '°C',
  f: '°F',
  degf: '°F',
  '°f': '°F',
  fahrenheit: '°F',
  '%': '%',
  pct: '%',
  percent: '%',
  '%rh': '%',
  'rh%': '%',
  share: '-',
  ppm: 'ppm',
  'ug/m3': 'µg/m3',
  'µg/m³': 'µg/m3',
  'μg/m³': 'µg/m3',
  'μg/m3': 'µg/m3',
  w: 'W',
  watt: 'W',
  watts: 'W',
  kw: 'kW',
  wh: 'Wh',
  kwh: 'kWh',
  m3: 'm3',
  'm³': 'm3',
};
