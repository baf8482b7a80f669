import { dampBeyond } from './damp-limits.ts';
import type { Effect } from './effect.ts';
import { CLEARLY_WET, GROWTH, WET } from './mould-marks.ts';
import { pct } from './percent.ts';
import type { PlanFigures } from './plan-figures.ts';
import { wasInRoom } from './was-in-room.ts';

/**
 * What a plan changes of damp air or wet corners: in the mean of the rooms, or in the room worst off where
 * that tells more, or where it counts in one room only. One room asks for four times the points of all.
 *
 * @returns null where nobody would notice
 */
export function dampEffect(
  kind: 'damp' | 'spots',
  from: PlanFigures,
  to: PlanFigures,
): Effect | null {
  const home = inHome(kind, from, to);
  const room = inWorstRoom(kind, from, to);
  if (home === null || room === null) return home ?? room;
  if (room.weight > home.weight) return room;
  const counts = Math.max(dampBeyond(kind, from).mean, dampBeyond(kind, to).mean) >= 0;
  return counts || room.better !== home.better ? home : { ...room, weight: home.weight };
}

function inHome(of: 'damp' | 'spots', from: PlanFigures, to: PlanFigures): Effect | null {
  const { points, least, rooms, bad, worse, better } = KINDS[of];
  const [was, is] = [from[of], to[of]];
  const more = Math.abs(is - was);
  if (more < 1 || (more < least && !growthTurns(from, to, is > was))) return null;
  const weight = more / points;
  return is < was
    ? {
        ...{ of, better: true, weight, word: better },
        words: `${rooms} are dry enough ${pct(100 - is)} of the time (was ${pct(100 - was)})`,
      }
    : {
        ...{ of, better: false, weight, word: worse },
        words: `${rooms} are ${bad} ${pct(is)} of the time (was ${pct(was)})`,
      };
}

/** Only where it counts in that room with the one plan or the other. */
function inWorstRoom(of: 'damp' | 'spots', from: PlanFigures, to: PlanFigures): Effect | null {
  const { points, worst, room, bad, worse, better } = KINDS[of];
  const [was, is] = [from[worst], to[worst]];
  const weight = Math.abs(is.value - was.value) / (OF_ONE_ROOM * points);
  const counts = Math.max(dampBeyond(of, from).room, dampBeyond(of, to).room) >= 0;
  if (!counts || weight < CLEAR_ENOUGH) return null;
  return is.value < was.value
    ? {
        ...{ of, better: true, weight, word: better },
        words: `${room} is dry enough ${pct(100 - is.value)} of the time (${wasInRoom(was, is, pct(100 - was.value))})`,
      }
    : {
        ...{ of, better: false, weight, word: worse },
        words: `${room} is ${bad} ${pct(is.value)} of the time (${wasInRoom(was, is, pct(was.value))})`,
      };
}

/**
 * Whether mould begins to grow from one plan to another, or ends: its index passes 1, or cold corners come
 * to be wet for as long as counts.
 */
function growthTurns(from: PlanFigures, to: PlanFigures, begins: boolean): boolean {
  const [before, after] = begins ? [from, to] : [to, from];
  return (
    (before.mould.value < GROWTH && after.mould.value >= GROWTH) ||
    (before.spots < WET && after.spots >= WET)
  );
}

const KINDS = {
  damp: {
    /** So many percentage points of the mean are clear to anybody. */
    points: 5,
    /** Fewer are told only where mould begins to grow with them, or ends. */
    least: 2.5,
    ...{ worst: 'dampest' as const, rooms: 'rooms', room: 'the dampest room' },
    ...{ bad: 'too damp', worse: 'damper', better: 'drier' },
  },
  spots: {
    ...{ points: CLEARLY_WET, least: 1 },
    ...{ worst: 'wettest' as const, rooms: 'cold corners', room: 'the wettest corner' },
    ...{ bad: 'wet', worse: 'wetter corners', better: 'drier corners' },
  },
};
/** So many times the points of all rooms are as clear in one. [-] */
const OF_ONE_ROOM = 4;
/** Half of what is clear to anybody: one room is told of for no less. [-] */
const CLEAR_ENOUGH = 0.5;
