import { type Channel, modelled } from '../simulate/channel.ts';
import type { HourlyColumns } from '../simulate/hourly-columns.ts';

/** Residuals of each channel, observed less modelled; NaN where nothing was observed. */
export type Residuals = readonly Float64Array[];

/** Asks for runs at places of the search; each place is run once, however often it is asked for. */
export interface Evaluations {
  /** Residuals at several places; null where the scenario cannot be run there. */
  ask(places: readonly (readonly number[])[]): Promise<(Residuals | null)[]>;
  /** Runs so far. */
  used(): number;
}

/** @param run  simulates a place; several may be asked for before the first has come */
export function createEvaluations(
  channels: readonly Channel[],
  run: (place: readonly number[]) => Promise<HourlyColumns | null>,
): Evaluations {
  const known = new Map<string, Residuals | null>();
  let used = 0;
  return {
    ask: async (places) => {
      const missing = new Map(
        places.map((place) => [keyOf(place), place] as const).filter(([key]) => !known.has(key)),
      );
      used += missing.size;
      const found = await Promise.all([...missing.values()].map(run));
      [...missing.keys()].forEach((key, k) => {
        const columns = found[k] ?? null;
        known.set(key, columns === null ? null : residualsOf(channels, columns));
      });
      return places.map((place) => known.get(keyOf(place)) ?? null);
    },
    used: () => used,
  };
}

function residualsOf(channels: readonly Channel[], columns: HourlyColumns): Residuals {
  return channels.map((channel) => {
    const values = modelled(columns, channel);
    return channel.observed.map((observed, k) => observed - values[k]!);
  });
}

const keyOf = (place: readonly number[]): string => place.join(' ');
