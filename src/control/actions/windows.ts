import type { Home } from '../../home/home.ts';
import type { Moment, WindowStates } from '../control-context.ts';
import { fillArray } from '../fill-array.ts';
import type { Commands } from '../observations.ts';

/** What people hold open besides what stands open by the clock. */
export interface Windows extends WindowStates {
  /** When the first of a room's open windows was opened; NaN while all are shut. [s UTC] */
  readonly openSince: Float64Array;
  /** Open so wide until then [s UTC]; `who` may shut it earlier. */
  readonly hold: (opening: number, wide: number, until: number, who: number) => void;
  /** Shut until then, whatever clock and habits say; whoever opens it next ends that. [s UTC] */
  readonly shut: (opening: number, until: number) => void;
  /** Shut what this one holds open. */
  readonly letGo: (who: number) => void;
  readonly holds: (who: number) => boolean;
  /** See which windows stand open in the step at hand. */
  readonly observe: () => void;
  /** Write what people hold open or shut into the step's commands, and observe anew. */
  readonly apply: (commands: Commands) => void;
}

/**
 * What people do to a window is read from the step after on, for as long as it lasts to the nearest
 * step: an airing of a single step is read as one.
 *
 * A window that somebody holds open for part of a step counts for its share. Where clock and person
 * both want it open, the wider and the longer of the two holds.
 */
export function createWindows(home: Home, moment: Moment, dt: number): Windows {
  const { openings } = home;
  const count = openings.length;
  const columns = {
    roomOf: Int32Array.from(openings, ({ room }) => room),
    open: new Uint8Array(home.rooms.length),
    readOpen: new Uint8Array(home.rooms.length),
    openSince: new Float64Array(home.rooms.length).fill(Number.NaN),
    until: new Float64Array(count).fill(Number.NEGATIVE_INFINITY),
    shutUntil: new Float64Array(count).fill(Number.NEGATIVE_INFINITY),
  };
  const { open, readOpen, openSince, until, shutUntil } = columns;
  const wide = new Float64Array(count);
  const holder = new Int32Array(count).fill(-1);
  // Until when somebody holds any of them open or shut; before that nothing has to be written.
  const heldUntil = Float64Array.of(Number.NEGATIVE_INFINITY);

  const hold = (o: number, width: number, end: number, who: number): void => {
    const goesOn = until[o]! > moment.utc;
    wide[o] = goesOn ? Math.max(wide[o]!, width) : width;
    until[o] = goesOn ? Math.max(until[o]!, end) : end;
    holder[o] = who;
    shutUntil[o] = Number.NEGATIVE_INFINITY;
    heldUntil[0] = Math.max(heldUntil[0]!, until[o]!);
  };

  const shut = (o: number, end: number): void => {
    until[o] = Number.NEGATIVE_INFINITY;
    shutUntil[o] = end;
    heldUntil[0] = Math.max(heldUntil[0]!, end);
  };

  const letGo = (who: number): void => {
    for (let o = 0; o < count; o++) if (holder[o] === who) until[o] = Number.NEGATIVE_INFINITY;
  };

  const holds = (who: number): boolean => {
    for (let o = 0; o < count; o++) {
      if (holder[o] === who && until[o]! > moment.utc) return true;
    }
    return false;
  };

  const observe = (): void => {
    const { day, s, utc } = moment;
    const { openTimes } = day;
    const { open, readOpen, openSince, until, shutUntil, roomOf } = columns;
    const before = utc - dt / 2;
    const at = s * roomOf.length;
    fillArray(open, 0);
    fillArray(readOpen, 0);
    for (let o = 0; o < roomOf.length; o++) {
      const byClock = openTimes[at + o]! > 0;
      if (until[o]! > utc || (byClock && shutUntil[o]! <= utc)) open[roomOf[o]!] = 1;
      if (until[o]! > before || (byClock && shutUntil[o]! <= before)) readOpen[roomOf[o]!] = 1;
    }
    for (let i = 0; i < open.length; i++) {
      if (open[i] === 0) openSince[i] = Number.NaN;
      else if (Number.isNaN(openSince[i]!)) openSince[i] = utc;
    }
  };

  const apply = ({ openings: shares, openTimes }: Commands): void => {
    const { utc } = moment;
    if (utc >= heldUntil[0]!) return;
    observe();
    for (let o = 0; o < count; o++) {
      if (shutUntil[o]! > utc) {
        const rest = Math.max(0, 1 - (shutUntil[o]! - utc) / dt);
        shares[o] = rest * shares[o]!;
        openTimes[o] = rest * openTimes[o]!;
      }
      const share = Math.min(1, (until[o]! - utc) / dt);
      if (!(share > 0)) continue;
      shares[o] = Math.max(shares[o]!, wide[o]! * share);
      openTimes[o] = Math.max(openTimes[o]!, share);
    }
  };

  return { open, readOpen, openSince, hold, shut, letGo, holds, observe, apply };
}
