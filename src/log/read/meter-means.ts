import { intervalsOf } from '../intervals.ts';

/**
 * Mean powers between readings of a meter: differences of a counter, or amounts of each interval.
 *
 * A counter goes up but where it begins again at 0; that interval is unknown. Single readings of it that are
 * above what follows or below what came before were read wrongly and are left out. An amount that stands
 * behind a gap in even readings is of its own interval, and the mean since the reading before is unknown. The
 * first mean is NaN.
 *
 * @param energies  counts, or amounts since the reading before [J]
 */
export function meterMeans(times: Float64Array, energies: Float64Array): MeterMeans {
  const counts = isCounter(energies);
  const wrong = counts ? wrongReadings(energies) : [];
  if (wrong.length > 0) {
    const right = (_: number, k: number) => !wrong.includes(k);
    const rest = meterMeans(times.filter(right), energies.filter(right));
    return { ...rest, wrong: wrong.length + rest.wrong, firstWrong: energies[wrong[0]!]! };
  }
  const values = new Float64Array(times.length).fill(Number.NaN);
  const longest = counts ? Number.POSITIVE_INFINITY : longestOfAmount(times);
  for (let k = 1; k < times.length; k++) {
    const used = counts ? energies[k]! - energies[k - 1]! : energies[k]!;
    const time = times[k]! - times[k - 1]!;
    if (used >= 0 && time <= longest) values[k] = used / time;
  }
  return { times, values, wrong: 0, firstWrong: Number.NaN };
}

/** What a meter tells. */
export interface MeterMeans {
  readonly times: Float64Array;
  /** Means, each over the time before its stamp. [W] */
  readonly values: Float64Array;
  /** Readings that were left out, and the first of them. [J] */
  readonly wrong: number;
  readonly firstWrong: number;
}

/** The longest time that an amount may be of [s]: a bit more than the usual one, where readings are even. */
function longestOfAmount(times: Float64Array): number {
  const { apart, every } = intervalsOf({ times });
  const uneven = apart.filter((each) => Math.abs(each - every) > every * FEW);
  return uneven.length > apart.length * FEW ? Number.POSITIVE_INFINITY : 1.5 * every;
}

/** Places of readings of a counter from which alone it falls, elsewhere than to a new beginning near 0. */
function wrongReadings(energies: Float64Array): number[] {
  const falls: number[] = [];
  for (let k = 1; k < energies.length; k++) if (energies[k]! < energies[k - 1]!) falls.push(k);
  if (falls.length > Math.max(1, energies.length * SELDOM)) return [];
  return falls.flatMap((k) => {
    const [before, now] = [energies[k - 1]!, energies[k]!];
    if (now <= before * NEAR_ZERO) return [];
    if (k + 1 < energies.length && energies[k + 1]! >= before) return [k];
    return k > 1 && now >= energies[k - 2]! ? [k - 1] : [];
  });
}

/**
 * Whether numbers go up but for a few new beginnings, or, as a counter of each day does, for falls that all
 * end near 0 and are far fewer than the rises. Amounts of intervals fall about as often as they rise.
 */
function isCounter(energies: Float64Array): boolean {
  let down = 0;
  let toZero = 0;
  let up = 0;
  for (let k = 1; k < energies.length; k++) {
    const [before, now] = [energies[k - 1]!, energies[k]!];
    if (now > before) up++;
    else if (now < before) {
      down++;
      if (now <= before * NEAR_ZERO) toZero++;
    }
  }
  if (up === 0) return false;
  const share = down / (up + down);
  return share <= FEW || (share <= SOME && toZero === down);
}

/**
 * Of all changes, the share that may be falls: anywhere, and where all of them end near 0. The first is also the
 * share of intervals that may be uneven, and how much even ones differ.
 */
const FEW = 0.1;
const SOME = 0.25;
/** Share of readings that may have been read wrongly. */
const SELDOM = 0.05;
/** What a new beginning may come to, over the count before it. */
const NEAR_ZERO = 0.1;
