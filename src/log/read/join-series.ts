import type { LoggedSeries } from '../log.ts';

/** One series for each thing at each place: what several files hold of it, one after the other. */
export function joinSeries(all: readonly LoggedSeries[]): LoggedSeries[] {
  const joined = new Map<string, LoggedSeries[]>();
  for (const one of all) {
    const key = keyOf(one);
    const known = joined.get(key);
    if (known === undefined) joined.set(key, [one]);
    else known.push(one);
  }
  return [...joined.values()].map((parts) => (parts.length === 1 ? parts[0]! : join(parts)));
}

/** Text that two series share exactly when they tell of one thing at one place. */
export const keyOf = ({
  quantity,
  place,
  room,
  device,
}: Pick<LoggedSeries, 'quantity' | 'place' | 'room' | 'device'>): string =>
  JSON.stringify([quantity, place, room, device]);

/** Parts laid in the order of time; where two have the same time the later part counts. */
function join(parts: readonly LoggedSeries[]): LoggedSeries {
  const times = joined(parts.map((part) => part.times));
  const values = joined(parts.map((part) => part.values));
  const rows = Uint32Array.from(times, (_, k) => k);
  rows.sort((a, b) => times[a]! - times[b]! || a - b);
  const once = rows.filter((row, n) => n + 1 === rows.length || times[row] !== times[rows[n + 1]!]);
  return {
    ...parts[0]!,
    times: Float64Array.from(once, (row) => times[row]!),
    values: Float64Array.from(once, (row) => values[row]!),
    from: parts.map(({ from }) => from).join(' and '),
  };
}

function joined(columns: readonly Float64Array[]): Float64Array {
  const all = new Float64Array(columns.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const column of columns) {
    all.set(column, at);
    at += column.length;
  }
  return all;
}
