import { plainName } from '../../species/plain-name.ts';
import { meaning } from '../../units/unit-words.ts';
import { LOGGED_QUANTITIES } from '../quantities.ts';
import type { LogOptions, NamedReading } from './log-options.ts';

/** What a header or name says by itself, or why it says nothing. */
export type NameMeaning = NamedReading | { readonly leftOut: string };

/**
 * What a column is by its name, such as "Bedroom temperature (°C)" or "sensor.kitchen_rh".
 *
 * @param of    rooms and devices of the home; where no room is known, what is left of the name is the room
 * @param stem  name of the file without its ending: the room where a name holds none
 */
export function nameMeaning(
  name: string,
  { rooms, devices }: Pick<LogOptions, 'rooms' | 'devices'>,
  stem: string,
): NameMeaning {
  const { bare, unit } = withoutUnit(name);
  const words = wordsOf(bare);
  if (ASIDE.test(words)) return { leftOut: `speaks of ${ASIDE.exec(words)![0].trim()}` };
  const facts =
    LOGGED_QUANTITIES.find(({ called }) => called.test(words)) ??
    (unit === null ? undefined : byUnit(unit, words));
  const device =
    POWERS.includes(facts?.name ?? '') || (unit !== null && isPower(unit))
      ? deviceIn(words, devices, rooms)
      : null;
  if (device !== null) {
    return { quantity: 'device power', place: 'home', room: null, device, unit };
  }
  if (facts === undefined) return { leftOut: 'its name says no quantity that is known' };
  const quantity = facts.name;
  const heats = quantity.startsWith('heating');
  const others = words.replace(facts.called, ' ');
  const rest = (heats ? others.replaceAll(HEATING, ' ') : others)
    .replaceAll(FILLER, ' ')
    .replaceAll(/ +/g, ' ')
    .trim();
  const ofHome = { quantity, place: 'home', room: null, device: null, unit } as const;
  if (METERS.includes(quantity)) {
    const plug = quantity === 'electricity' ? rest.replaceAll(WHOLE, ' ').trim() : '';
    return plug === '' ? ofHome : { ...ofHome, quantity: 'device power', device: plug };
  }
  if (!heats && OUTDOORS.test(words)) return { ...ofHome, place: 'outdoors' };
  const room = roomIn(rest, rooms, stem);
  if (heats && room === null && rest.replaceAll(WHOLE, ' ').trim() === '') return ofHome;
  if (room === null) {
    return { leftOut: rest === '' ? 'its name says no room' : `no room is called "${rest}"` };
  }
  return { quantity, place: 'room', room, device: null, unit };
}

/** The unit that a name holds, such as kWh of "Meter 2 (kWh)"; null for none. */
export const unitInName = (name: string): string | null => withoutUnit(name).unit;

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
  const plain = bare.toLowerCase().replaceAll(/[\s._]/g, '');
  if (Object.hasOwn(SPELLINGS, plain)) return SPELLINGS[plain]!;
  if (/^0\.0?1 ?°?C$/i.test(bare)) return bare.startsWith('0.01') ? '0.01 °C' : '0.1 °C';
  return /[\p{L}\p{N}%°-]/u.test(bare) && meaning(bare) !== null ? bare : null;
}

/** Small words with single blanks, split where letters change to capitals. */
function wordsOf(name: string): string {
  return name
    .replaceAll(/([a-z])([A-Z])/g, '$1 $2')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

/** What a name that says no quantity stands for by its unit. */
function byUnit(unit: string, words: string) {
  const named = (name: string) => LOGGED_QUANTITIES.find((q) => q.name === name);
  if (unit === '°C' || unit === '°F') return named('temperature');
  if (unit === '%') return OF_DEVICE.test(words) ? undefined : named('relative humidity');
  if (!isPower(unit)) return undefined;
  if (/\bheat ?pump\b/.test(words)) return named('heating electricity');
  if (words.match(HEATING) !== null) return named('heating power');
  return /\b(plug|socket)\b/.test(words) ? named('electricity') : undefined;
}

const isPower = (unit: string): boolean =>
  ['power', 'energy'].includes(meaning(unit)?.dimension ?? '');

/**
 * The device whose power a name tells: one of the home by its name, or by what it is and its room, or a
 * kind of device that the home has none of, as the column calls it; null where it speaks of none.
 */
function deviceIn(
  words: string,
  devices: LogOptions['devices'],
  rooms: readonly string[],
): string | null {
  const says = (name: string) => ` ${words} `.includes(` ${wordsOf(name)} `);
  const isOther = (name: string) => HOT_WATER.test(words) && !HOT_WATER.test(wordsOf(name));
  const byName = devices
    .filter(({ name }) => says(name) && !isOther(name))
    .sort((a, b) => b.name.length - a.name.length)[0];
  const other = rooms.filter(says);
  const fits = (room: string | null) =>
    other.length === 0 || (room !== null && other.includes(room));
  if (byName !== undefined && fits(byName.room)) return byName.name;
  const alike = devices.filter(({ kind, room }) => says(kind) && fits(room) && !isOther(kind));
  if (alike.length === 1) return alike[0]!.name;
  const kind = APPLIANCE.exec(words);
  if (kind === null) return null;
  return other.length === 0 ? kind[0] : `${other[0]} ${kind[0]}`;
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
  /\b(battery|batt|rssi|signal|link quality|pressure|lux|illuminance|voltage|min(imum)?|max(imum)?|firmware|uptime|set ?point|target|heat index|feels like)\b/;
const OUTDOORS =
  /(?<![^ ])(outdoors?|outside|out|external|exterior|weather|(außen|aussen)(luft)?(temperatur|feucht(e|igkeit))?|extérieure?|estern[ao]|(buiten|ute)(temperatu+r)?|udendørs|utomhus|utendørs)(?![^ ])/;
const FILLER =
  /\bsensors?\b(?! *(\d|$))|\b(aire|aria|interior|interna|innen|in|binary|average|avg|mean|reading|value|air|indoor|inside|state|logger|channel|open|current|level|concentration|count|number)\b/g;
/** What is left of a name that says what heats. */
const HEATING = /\b(heat ?pump|heating|heater|radiator|(outdoor|indoor) unit)s?\b/g;
/** What is left of a name of the meter of the whole home. */
const WHOLE =
  /\b(house|household|home|flat|whole|total|all|main|mains|grid|import|supply|smart|net|day|night|tariff|plug|socket|power|energy|meter|electric(ity|al)?|usage|used|use|consumption|\d+)\b/g;
/** What draws power and heats no home. */
const APPLIANCE = /\b(dehumidifier|humidifier|purifier|extract(or)? fan|fan)\b/;
/** What tells percentages of a device, such as how fast it runs. */
const OF_DEVICE = /\b(dehumidifier|humidifier|purifier|fan|speed|filter|tank)\b/;
/** What heats water is no heater of a room. */
const HOT_WATER = /\b(water|immersion)\b/;
/** Quantities that devices may be told by. */
const POWERS: readonly string[] = [
  'electricity',
  'heating power',
  'heating electricity',
  'device power',
];
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
