import type { TraceView } from '../../engine/trace.ts';
import type { Home } from '../../home/home.ts';
import { monthEnds } from '../month-ends.ts';

/** What came into the home while an extract fan ran, and while it stood still. */
export interface FanEffect {
  readonly name: string;
  /** What it blows out. [L/s] */
  readonly flow: number;
  /** How long it ran. [h] */
  readonly hours: number;
  /** Mean outdoor air of the home in steps in which it ran throughout, null where there were none. [L/s] */
  readonly running: number | null;
  /** And in steps in which it did not run at all. [L/s] */
  readonly still: number | null;
}

/** Sets the outdoor air of the home in the steps of each extract fan beside that in all others. */
export function createFanEffects(
  { rooms, devices }: Pick<Home, 'rooms' | 'devices'>,
  period: { readonly start: number; readonly hours: number },
): { observe(trace: TraceView): void; result(rows: readonly number[]): FanEffect[] } {
  const fans = devices.flatMap(({ name, does }, device) =>
    does.kind === 'extract fan' ? [{ name, device, flow: 1000 * does.flow }] : [],
  );
  const ends = monthEnds(period);
  const sums = new Float64Array(ends.length * fans.length * FIELDS);
  let row = 0;

  function observe(trace: TraceView): void {
    if (fans.length === 0) return;
    for (let s = 0; s < trace.steps; s++) {
      while (row < ends.length - 1 && trace.start + s * trace.dt >= ends[row]!) row++;
      const into = intoHome(trace, s);
      for (let f = 0; f < fans.length; f++) {
        const share = trace.home.devices[fans[f]!.device]!.share[s]!;
        add((row * fans.length + f) * FIELDS, share, into, trace.dt);
      }
    }
  }

  function intoHome({ room }: TraceView, s: number): number {
    let sum = 0;
    for (let i = 0; i < rooms.length; i++) sum += room.outdoorAir[s * rooms.length + i]!;
    return sum;
  }

  function add(at: number, share: number, into: number, dt: number): void {
    sums[at] = sums[at]! + share * dt;
    const kind = share >= WHOLE ? 1 : share === 0 ? 3 : -1;
    if (kind < 0) return;
    sums[at + kind] = sums[at + kind]! + dt;
    sums[at + kind + 1] = sums[at + kind + 1]! + into * dt;
  }

  const result = (rows: readonly number[]): FanEffect[] =>
    fans.map(({ name, flow }, f) => {
      const sum = (field: number): number =>
        rows.reduce((all, q) => all + (sums[(q * fans.length + f) * FIELDS + field] ?? 0), 0);
      const mean = (field: number): number | null =>
        sum(field) > 0 ? (1000 * sum(field + 1)) / sum(field) : null;
      return { name, flow, hours: sum(0) / 3600, running: mean(1), still: mean(3) };
    });

  return { observe, result };
}

/** By month and fan: time it ran; then time and air of steps that it ran through; then of those without it. */
const FIELDS = 5;
/** All but rounding. [-] */
const WHOLE = 1 - 1e-9;
