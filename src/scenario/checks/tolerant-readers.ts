import { readAnyQuantity } from '../../units/any-quantity.ts';
import { daysOf, EVERY_DAY, minutesOf, spellOf } from '../clock-words.ts';
import { ALL_YEAR, monthsOf } from '../month-words.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import type { Path } from '../yaml/place-of.ts';

/*
 * Reading a scenario that may be wrong elsewhere: what cannot be read is left out, because the
 * model says so already. So that checks between fields still run on a file with other mistakes.
 */

export type UncheckedMapping = Readonly<Record<string, unknown>>;

/** The mapping at a path of keys, empty where there is none. */
export function mapping(value: unknown, ...path: readonly string[]): UncheckedMapping {
  const found = path.reduce((within, key) => mapping(within)[key], value);
  return isMapping(found) ? found : {};
}

/** A list, empty where there is none. */
export function items(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

/** A value of a scenario, and where it stands. */
export interface PlacedValue {
  readonly path: Path;
  readonly value: unknown;
}

/**
 * Whatever stands at the places of some patterns, one pattern behind the other, in which `*` is every key of
 * a mapping and `#` every item of a list; what is not there, or is of another kind, is left out.
 *
 * @param patterns  steps with slashes between them, such as "household/people/#/sleeps in"
 */
export const everyAt = (raw: unknown, ...patterns: readonly string[]): readonly PlacedValue[] =>
  patterns.flatMap((pattern) =>
    pattern
      .split('/')
      .reduce<readonly PlacedValue[]>(
        (places, step) =>
          places.flatMap(({ path, value }) =>
            inside(value, step).map(([key, inner]) => ({ path: [...path, key], value: inner })),
          ),
        [{ path: [], value: raw }],
      ),
  );

function inside(value: unknown, step: string): readonly (readonly [string | number, unknown])[] {
  if (step === '#') return items(value).map((item, k) => [k, item]);
  if (step === '*') return Object.entries(mapping(value));
  return isMapping(value) && Object.hasOwn(value, step) ? [[step, value[step]]] : [];
}

/** Names of the rooms. */
export const roomNames = (raw: UncheckedMapping): readonly string[] =>
  Object.keys(mapping(raw, 'home', 'rooms'));

/** A text or number as text, empty for anything else: a mapping may not even turn into text. */
export const textOf = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' ? String(value) : '';

/** A quantity, NaN where it cannot be read: comparisons with it are false. */
export function readTolerantly(value: unknown, unit: string): number {
  if (typeof value !== 'number' && typeof value !== 'string') return Number.NaN;
  const read = readAnyQuantity(value, unit);
  return 'value' in read ? read.value : Number.NaN;
}

export interface UncheckedSpell {
  readonly path: Path;
  readonly days: number;
  readonly months: number;
  readonly from: number;
  readonly to: number;
}

/** The spells of a list of spans and stretches, with the place of each. */
export function spellsOf(value: unknown, path: Path): UncheckedSpell[] {
  return items(value).flatMap((item, k) => {
    const at = [...path, k];
    if (typeof item === 'string') {
      const [from, to] = item.split(/\s*[-–]\s*/).map(minutesOf);
      return spell(at, { from: from ?? Number.NaN, to: to ?? Number.NaN });
    }
    const { days = 'every day', months = 'all year', from, to } = mapping(item);
    return spell(at, {
      from: minutesOf(textOf(from)),
      to: minutesOf(textOf(to)),
      days: daysOf(namesIn(days)),
      months: monthsOf(namesIn(months)),
    });
  });
}

const namesIn = (value: unknown): string | string[] =>
  typeof value === 'string' ? value : items(value).map(textOf);

interface Read {
  readonly from: number;
  readonly to: number;
  readonly days?: number;
  readonly months?: number;
}

function spell(
  path: Path,
  { from, to, days = EVERY_DAY, months = ALL_YEAR }: Read,
): UncheckedSpell[] {
  if (Number.isNaN(days + months + from + to)) return [];
  return [{ path, ...spellOf(days, from, to), months }];
}
