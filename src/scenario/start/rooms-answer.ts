import { readQuantity } from '../../units/quantity.ts';
import { firstUsedAs, type Use, useOfName } from '../presets/rooms.ts';
import { type Answers, said } from './question.ts';

/** A room as it was answered. */
export interface AnsweredRoom {
  readonly name: string;
  /** [m2] */
  readonly area: number;
  readonly use: Use;
  /** 0 is the ground floor. */
  readonly storey: number;
}

/** The rooms that were answered. */
export const roomsOf = (answers: Answers): readonly AnsweredRoom[] =>
  roomsIn(said(answers, 'rooms')).rooms;

/** Why a line is no list of rooms, in words; null where it is one. */
export const roomsTrouble = (line: string): string | null => roomsIn(line).trouble;

/** The room used so, or the first of these uses that there is; the first room where there is none. */
export function roomFor(rooms: readonly AnsweredRoom[], ...uses: readonly Use[]): AnsweredRoom {
  for (const use of uses) {
    const found = rooms[firstUsedAs(rooms, use)];
    if (found !== undefined) return found;
  }
  return rooms[0]!;
}

/** Usual rooms of a flat or a house, by how many rooms it has to live and sleep in. */
export function usualRooms(flat: boolean, size: string): string {
  const count = Number(size);
  if (count === 1) return 'living 24, bathroom 4';
  const named = (beds: number) =>
    BEDROOMS.slice(0, beds).map((area, k) => `${ORDINALS[k]} bedroom ${area}`);
  if (flat || count === 2) {
    return ['living 18', 'kitchen 9', 'hall 6', ...named(count - 1), 'bathroom 5'].join(', ');
  }
  const down = DOWNSTAIRS[count - 3]!;
  const beds = count - 1 - (down.includes('dining') ? 1 : 0);
  const up = [...named(beds), 'landing 5', 'bathroom 5'].join(', ');
  return `${down} / ${up}`;
}

/** Rooms of "living 18, kitchen 9 / bedroom 14", a slash before those of the next storey. */
export function roomsIn(line: string): { rooms: AnsweredRoom[]; trouble: string | null } {
  const rooms: AnsweredRoom[] = [];
  const refuse = (why: string) => ({ rooms: [], trouble: `${WORDS} (${why})` });
  for (const [storey, part] of line.split('/').entries()) {
    for (const text of part.split(',').map((piece) => piece.trim())) {
      const found = /^(.*\S)\s+([\d.]+\s*(?:sq\.?\s*(?:ft|m)|[a-z²2]*))$/i.exec(text);
      const area = readQuantity(found?.[2] ?? '', 'm2');
      if (found === null || !('value' in area)) return refuse(`"${text}" is none`);
      const name = found[1]!;
      if (RESERVED.includes(name)) return refuse(`no room can be called ${name}`);
      if (rooms.some((room) => room.name === name)) return refuse(`two are called ${name}`);
      if (!(area.value >= 1 && area.value <= 120)) return refuse(`${name} has 1 to 120 m2`);
      rooms.push({ name, area: Number(area.value.toFixed(2)), use: useOfName(name), storey });
    }
  }
  return { rooms, trouble: null };
}

const WORDS =
  'rooms with their square metres, such as living 18, kitchen 9 / bedroom 14, bathroom 5';
const BEDROOMS = [14, 11, 9, 8, 8];
/** Of houses with three to six rooms to live and sleep in: each room upstairs lies over one of these. */
const DOWNSTAIRS = [
  'living 20, kitchen 12, hall 7',
  'living 24, kitchen 16, hall 7',
  'living 20, dining 12, kitchen 12, hall 7',
  'living 24, dining 14, kitchen 14, hall 7',
] as const;
const ORDINALS = ['main', 'second', 'third', 'fourth', 'fifth'];
const RESERVED = ['all', 'outdoors', 'here'];
