import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { highKey } from '../band-hours.ts';
import type { RoomMeasures } from '../plan-measures.ts';
import type { FanEffect } from './fan-effects.ts';
import type { FreshAir } from './fresh-air.ts';

/**
 * Where the fresh air comes in, whether those asleep get enough and what extract fans change, as far as
 * one plan can tell.
 */
export function freshAirNotices(
  home: Home,
  air: FreshAir,
  rooms: Readonly<Record<string, RoomMeasures>>,
): Notice[] {
  const asleep = asleepSentence(home, air, rooms);
  const fans = air.fans
    .filter(({ hours }) => hours > 0)
    .sort((a, b) => b.flow * b.hours - a.flow * a.hours);
  return [
    { id: 'fresh-air-in', text: inSentence(home, air) },
    ...(asleep === null ? [] : [{ id: 'fresh-air-asleep', text: asleep }]),
    ...fans
      .slice(0, MOST_FANS)
      .map((fan) => ({ id: 'fresh-air-fan', text: fanSentence(fan, air) })),
  ];
}

/** How much comes in, by which way, into which rooms and on which storey. */
function inSentence({ rooms }: Home, air: FreshAir): string {
  const { home, intoRooms, shareByStorey } = air.flows;
  const when = seasonWords(air);
  if (!(home.l_per_s > 0)) return `Fresh air: none came in ${when}.`;
  const volume = rooms.reduce((sum, room) => sum + room.volume, 0);
  const changes = (home.l_per_s * 3.6) / volume;
  const percent = (flow: number): string => `${figureText((100 * flow) / home.l_per_s, 0)} %`;
  const ways = [
    [home.leaks_l_per_s, 'by cracks and vents'],
    [home.windows_l_per_s, 'by windows'],
    [home.fans_l_per_s, 'by supply fans'],
  ] as const;
  const told = ways.filter(([flow]) => flow > 0).map(([flow, by]) => `${percent(flow)} ${by}`);
  const order = rooms.map((_, i) => i).sort((a, b) => intoRooms[b]! - intoRooms[a]!);
  const named = order.slice(0, MOST_ROOMS).filter((i) => rounded(intoRooms[i]!) > 0);
  const into = named.map((i) => `${rooms[i]!.name} (${litres(intoRooms[i]!)})`);
  const storeys = Object.entries(shareByStorey);
  const by = storeys.map(
    ([storey, share], k) =>
      `${percent(share * home.l_per_s)} ${k === 0 ? 'comes in ' : ''}${storeyWords(storey)}`,
  );
  return [
    `Fresh air: ${litres(home.l_per_s)} on average ${when}, ${figureText(changes, 2)} air changes an hour,`,
    `${andList(told)}.`,
    rooms.length > 1 ? `Most comes into ${andList(into)}.` : '',
    storeys.length > 1 ? `Of it all, ${andList(by)}.` : '',
  ]
    .join(' ')
    .trim();
}

/** The room whose sleepers get least straight from outdoors, beside what handbooks ask for. */
function asleepSentence(
  home: Home,
  air: FreshAir,
  figures: Readonly<Record<string, RoomMeasures>>,
): string | null {
  const slept = home.rooms
    .map(({ name }, i) => ({ name, each: air.rooms[i]!.perPersonAsleep }))
    .filter((room): room is { name: string; each: number } => room.each !== null)
    .sort((a, b) => a.each - b.each);
  const [least] = slept;
  if (least === undefined) return null;
  const { name, each } = least;
  const first = slept.length === 1 ? `${name} gets` : `${name} gets least:`;
  return [
    `For those asleep, ${first} ${litres(each)} a person straight from outdoors ${seasonWords(air)},`,
    `${judged(each)} (EN 16798-1 has ${ASKED} for category II and ${BARELY} for III).`,
    'What comes through doors from other rooms is extra, and fresh only in part.',
    ...stale(home, figures[name]!),
  ].join(' ');
}

function judged(each: number): string {
  const told = rounded(each);
  if (told >= ASKED) return `no less than the ${ASKED} L/s that handbooks ask for`;
  if (told >= BARELY) return `less than the ${ASKED} L/s that handbooks ask for`;
  return `less than even the ${BARELY} L/s that handbooks call the least`;
}

/** What tells whether all that is enough: hours of stale air with somebody in. */
function stale({ species }: Home, figures: RoomMeasures): string[] {
  return SPECIES.filter(
    ({ role, name }) => role === 'indicator' && species.some((own) => own.name === name),
  ).map(({ name, symbol }) => {
    const hours = figures.outside_band_occupied_hours[highKey(name)];
    return `Over the whole period ${symbol} there was above its band for ${figureText(hours, 0)} h with somebody in.`;
  });
}

/** How much more air comes in with a fan than just before or after. */
function fanSentence({ name, flow, hours, times, still, running }: FanEffect, air: FreshAir) {
  const ran = `The fan "${name}" blew out ${litres(flow)} for ${figureText(hours, 0)} h ${seasonWords(air)}.`;
  if (times === 0) {
    return `${ran} It never started or stopped with the windows as they were, so that only a plan without it tells what it changes.`;
  }
  const rest = rounded(flow) - (rounded(running) - rounded(still));
  const instead =
    rounded(rest) > 0 && rest <= flow
      ? ` The other ${litres(rest)} would have left the home without it, by cracks and windows.`
      : '';
  return (
    `${ran} As it started or stopped, the outdoor air that comes into the home was ` +
    `${litres(still)} without it and ${litres(running)} with it.${instead}`
  );
}

/** As it is printed. */
const rounded = (flow: number): number => Number(figureText(flow, 1));
const litres = (flow: number): string => `${figureText(flow, 1)} L/s`;
const seasonWords = ({ cold }: FreshAir): string =>
  cold ? 'in the heating season' : 'over the period';
const storeyWords = (storey: string): string => STOREYS[storey] ?? `on storey ${storey}`;

const STOREYS: Readonly<Record<string, string>> = {
  ...{ '-1': 'below the ground floor', '0': 'on the ground floor' },
  ...{ '1': 'one floor up', '2': 'two floors up' },
};
const MOST_ROOMS = 3;
const MOST_FANS = 3;
/**
 * Outdoor air for each person in a bedroom, categories II and III. [L/s]
 *
 * Source: EN 16798-1:2019, annex B, default supply air flows of dwellings, from memory.
 */
const [ASKED, BARELY] = [7, 4];
