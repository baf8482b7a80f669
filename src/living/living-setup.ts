import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate';
import type { TrialOffer } from '../studies/trial/knobs.ts';
import { fromBase64, toBase64 } from '../units/base64.ts';
import type { Weather } from '../weather/weather.ts';

/** All that a home is run from in a page. */
export interface LivingSetup {
  /** The scenario as it was written, and the name of its file. */
  readonly text: string;
  readonly file: string;
  /** Texts of the files it names, by path; of the weather only where the scenario takes its place from it. */
  readonly files: readonly (readonly [path: string, text: string])[];
  readonly weather: Weather;
  /** The baseline, and what the call laid on all plans. */
  readonly plan: string;
  readonly set: readonly string[];
  readonly offer: TrialOffer;
  /** Whose air is told day by day. */
  readonly room: string;
}

/** A setup as a short text: every number comes back to the last bit. */
export const packSetup = (setup: LivingSetup): string =>
  packText(
    JSON.stringify(setup, (_, value: unknown) =>
      value instanceof Float64Array ? { numbers: Array.from(value, (x) => x) } : value,
    ),
  );

/** @param packed  of `packSetup` */
export function unpackSetup(packed: string): LivingSetup {
  return JSON.parse(unpackText(packed), (_, value: unknown) => {
    const numbers = (value as { numbers?: unknown } | null)?.numbers;
    // JSON has no NaN: a number that is not known is null.
    return Array.isArray(numbers)
      ? Float64Array.from(numbers, (x: number | null) => x ?? Number.NaN)
      : value;
  }) as LivingSetup;
}

export const packText = (text: string): string =>
  toBase64(deflateSync(strToU8(text), { level: 9 }));

export const unpackText = (packed: string): string => strFromU8(inflateSync(fromBase64(packed)));
