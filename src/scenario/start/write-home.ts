import { isBritishOrIrish } from '../presets/heating-season.ts';
import { useInName } from '../presets/rooms.ts';
import { isFlat } from './home-questions.ts';
import { nearestPlace } from './known-places.ts';
import { placeOf } from './place-answer.ts';
import { type Answers, said } from './question.ts';
import { type AnsweredRoom, roomFor, roomsOf } from './rooms-answer.ts';
import { indented, inline, keyLine } from './yaml-text.ts';

/** Lines of `site` and `home`. */
export function homeLines(answers: Answers): string[] {
  const { latitude, longitude } = placeOf(answers);
  const rooms = roomsOf(answers);
  const storeys = 1 + Math.max(...rooms.map(({ storey }) => storey));
  const near = nearestPlace({ latitude, longitude }).timezone;
  const zone = said(answers, 'timezone');
  return [
    'site:',
    ...indented([
      keyLine('latitude', latitude),
      keyLine('longitude', longitude),
      keyLine('timezone', zone, zone === near ? '' : `${near} is nearer`),
      keyLine('storeys', Math.min(3, storeys)),
    ]),
    '',
    'home:',
    ...indented([
      `build: # what is not said here is filled in from age and kind${isBritishOrIrish(zone) ? '' : ', walls, windows and leaks as in Britain; put in your own'}; roombalance check lists it`,
      ...indented(buildLines(answers)),
      'rooms: # floor areas in m2',
      ...indented(roomLines(rooms, said(answers, 'kind'))),
      ...doorwayLines(rooms),
    ]),
  ];
}

function buildLines(answers: Answers): string[] {
  const known = (key: string) =>
    said(answers, key) === 'unknown'
      ? [`# ${key}: not known; see docs/scenario.md for the words`]
      : [keyLine(key, said(answers, key))];
  return [
    keyLine('age', said(answers, 'built')),
    keyLine('shape', isFlat(answers) ? 'flat' : said(answers, 'kind')),
    ...known('glazing'),
    ...known('draughts'),
  ];
}

/**
 * Rooms by line, each upstairs over the room below that has most of its ceiling left: halls over
 * halls where they fit, and other rooms over other rooms.
 *
 * @param kind  of the home, which tells what lies above and below a flat
 */
function roomLines(rooms: readonly AnsweredRoom[], kind: string): string[] {
  const top = Math.max(...rooms.map(({ storey }) => storey));
  const left = new Map(rooms.map((room) => [room, room.area]));
  return rooms.map(({ name, area, use, storey }) => {
    const below = rooms.filter((room) => room.storey === storey - 1);
    const like = below.filter((room) => (room.use === 'hall') === (use === 'hall'));
    const roomiest = (some: readonly AnsweredRoom[]) =>
      some.toSorted((a, b) => left.get(b)! - left.get(a)!)[0];
    const fits = like.filter((room) => left.get(room)! >= area);
    const under = roomiest(fits) ?? roomiest(below);
    if (under !== undefined) left.set(under, left.get(under)! - area);
    const room = {
      ...{ use, 'floor area': area },
      ...(storey > 0 && { storey, over: under!.name }),
      ...(storey === top && kind.includes('roof') && { above: 'roof' }),
      ...(storey === 0 && kind.includes('ground') && { below: 'ground' }),
    };
    return keyLine(name, room, useInName(name) === null ? GUESSED : '');
  });
}

/**
 * A doorway from every room to the hall of its storey, and the stairs between halls; where a storey upstairs
 * has none, its rooms open to the hall of the one below. None where there is one room.
 */
function doorwayLines(rooms: readonly AnsweredRoom[]): string[] {
  const storeys = [...new Set(rooms.map(({ storey }) => storey))];
  const ground = rooms.filter((room) => room.storey === storeys[0]);
  const hubs: AnsweredRoom[] = [];
  for (const storey of storeys) {
    const own = rooms.find((room) => room.storey === storey && room.use === 'hall');
    hubs.push(own ?? hubs.at(-1) ?? roomFor(ground, 'living'));
  }
  const stairs = hubs.slice(1).flatMap((hub, k) => {
    const below = hubs[k]!;
    const between = [below.name, hub.name];
    return hub === below ? [] : [{ between, width: 0.9, height: 2.4, open: 'always' }];
  });
  const doors = rooms
    .filter((room) => !hubs.includes(room))
    .map((room) => ({
      between: [room.name, hubs[storeys.indexOf(room.storey)]!.name],
      open: OPEN[room.use] ?? 'always',
    }));
  const lines = [...stairs, ...doors].map((doorway) => `- ${inline(doorway)}`);
  return lines.length === 0
    ? []
    : ['doorways: # when doors stand open: assumed', ...indented(lines)];
}

const GUESSED = 'its name does not tell its use; put in what it is';

const OPEN: Readonly<Record<string, string | readonly string[]>> = {
  bedroom: '07:00-22:00',
  bathroom: ['08:00-18:30', '22:00-06:30'],
};
