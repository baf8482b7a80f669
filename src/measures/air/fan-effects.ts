import type { TraceView } from '../../engine/record/trace.ts';
import type { Home } from '../../home/home.ts';

/** What an extract fan changed in the air that comes into the home. */
export interface FanEffect {
  readonly name: string;
  /** What it blows out. [L/s] */
  readonly flow: number;
  /** How long it ran. [h] */
  readonly hours: number;
  /** Times it started or stopped from which `still` and `running` are known. */
  readonly times: number;
  /** Mean outdoor air of the home without it, just before it started or after it stopped. [L/s] */
  readonly still: number;
  /** And with it, just after it started or before it stopped. [L/s] */
  readonly running: number;
}

/**
 * Sets a step in which each extract fan runs throughout beside the nearest one without it, at most one
 * other step between them: weather has hardly changed then. Where windows were opened or shut in
 * between, the pair is left out.
 *
 * @param ends  of the period's months, see monthEnds [s UTC]
 */
export function createFanEffects(
  { rooms, devices }: Pick<Home, 'rooms' | 'devices'>,
  ends: readonly number[],
): { observe(trace: TraceView): void; result(rows: readonly number[]): FanEffect[] } {
  const fans = devices.flatMap(({ name, does }, device) =>
    does.kind === 'extract fan' ? [{ name, device, flow: 1000 * does.flow }] : [],
  );
  const sums = new Float64Array(ends.length * fans.length * FIELDS);
  const last = fans.map(() => ({ share: Number.NaN, into: 0, open: 0, age: 0 }));
  let row = 0;

  function observe(trace: TraceView): void {
    if (fans.length === 0) return;
    for (let s = 0; s < trace.steps; s++) {
      while (row < ends.length - 1 && trace.start + s * trace.dt >= ends[row]!) row++;
      const into = overRooms(trace.room.outdoorAir, s);
      const open = overRooms(trace.room.windowOpen, s);
      for (let f = 0; f < fans.length; f++) {
        const share = trace.home.devices[fans[f]!.device]!.share[s]!;
        const at = (row * fans.length + f) * FIELDS;
        sums[at] = sums[at]! + share * trace.dt;
        note(f, at, share >= WHOLE ? 1 : share, into, open);
      }
    }
  }

  function overRooms(column: Float64Array, s: number): number {
    let sum = 0;
    for (let i = 0; i < rooms.length; i++) sum += column[s * rooms.length + i]!;
    return sum;
  }

  /** Pair a step with the last one of the other kind, and remember it. */
  function note(f: number, at: number, share: number, into: number, open: number): void {
    const before = last[f]!;
    before.age++;
    if (share > 0 && share < 1) return;
    if (before.share === 1 - share && before.age <= NEAR && before.open === open) {
      sums[at + 1] = sums[at + 1]! + 1;
      sums[at + 2] = sums[at + 2]! + (share === 0 ? into : before.into);
      sums[at + 3] = sums[at + 3]! + (share === 0 ? before.into : into);
    }
    last[f] = { share, into, open, age: 0 };
  }

  const result = (rows: readonly number[]): FanEffect[] =>
    fans.map(({ name, flow }, f) => {
      const sum = (field: number): number =>
        rows.reduce((all, q) => all + (sums[(q * fans.length + f) * FIELDS + field] ?? 0), 0);
      const times = sum(1);
      const mean = (field: number): number => (times > 0 ? (1000 * sum(field)) / times : 0);
      return { name, flow, hours: sum(0) / 3600, times, still: mean(2), running: mean(3) };
    });

  return { observe, result };
}

/** By month and fan: time it ran; pairs of steps; air without it and with it, added up over them. */
const FIELDS = 4;
/** Steps from one of a pair to the other, at most: a fan may start in the middle of one. */
const NEAR = 2;
/** All but rounding. [-] */
const WHOLE = 1 - 1e-9;
