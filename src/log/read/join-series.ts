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
const join = (parts: readonly LoggedSeries[]): LoggedSeries => parts.reduce(merged);

/** Two series, each in the order of time, as one. Loops and no lists: exports have millions of rows. */
function merged(first: LoggedSeries, second: LoggedSeries): LoggedSeries {
  const most = first.times.length + second.times.length;
  const times = new Float64Array(most);
  const values = new Float64Array(most);
  let [a, b, n] = [0, 0, 0];
  while (a < first.times.length || b < second.times.length) {
    const [x, y] = [first.times[a] ?? NEVER, second.times[b] ?? NEVER];
    const later = y <= x;
    times[n] = later ? y : x;
    values[n++] = later ? second.values[b]! : first.values[a]!;
    if (x === y || !later) a++;
    if (later) b++;
  }
  return {
    ...first,
    times: times.slice(0, n),
    values: values.slice(0, n),
    from: `${first.from} and ${second.from}`,
  };
}

const NEVER = Number.POSITIVE_INFINITY;
