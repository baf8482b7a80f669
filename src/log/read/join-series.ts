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
  const rows = parts.flatMap(({ times }, part) => Array.from(times, (_, k) => ({ part, k })));
  const timeOf = ({ part, k }: { part: number; k: number }) => parts[part]!.times[k]!;
  rows.sort((a, b) => timeOf(a) - timeOf(b) || a.part - b.part);
  const once = rows.filter(
    (row, n) => n + 1 === rows.length || timeOf(row) !== timeOf(rows[n + 1]!),
  );
  return {
    ...parts[0]!,
    times: Float64Array.from(once, timeOf),
    values: Float64Array.from(once, ({ part, k }) => parts[part]!.values[k]!),
    from: parts.map(({ from }) => from).join(' and '),
  };
}
