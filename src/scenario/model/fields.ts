import * as z from 'zod';
import { anyQuantityWords, readAnyQuantity } from '../../units/any-quantity.ts';
import { nearestHint } from '../../units/nearest-name.ts';
import type { Preset } from '../../units/preset.ts';

/*
 * The kinds of field a scenario is made of. Every error message is the end of the sentence
 * "expected ..."; what came instead and where it stands is added by `problemsOf`.
 */

/** Which numbers a field takes. */
export interface Limits {
  readonly above?: number;
  readonly min?: number;
  readonly max?: number;
  readonly whole?: boolean;
}

/**
 * What an editor shows of a key besides its sentence. An example is only needed where neither the usual
 * value nor the first choice is one.
 */
export interface Shown {
  /** As somebody might write it. */
  readonly eg?: unknown;
  /** What is taken where the key is left out. */
  readonly usual?: Preset | string | number | boolean;
  /** What holds where the key is left out, in words, because it hangs on other keys; comes before `usual`. */
  readonly otherwise?: string;
  /** Of a plain number that has one. */
  readonly unit?: string;
}

/** What the JSON Schema is told of a field; `test/reference/scenario-json-schema.ts` puts it in words. */
const shown = (description: string, { eg, usual, otherwise, unit }: Shown) => ({
  description,
  ...(eg !== undefined && { eg }),
  ...(usual !== undefined && { usual: typeof usual === 'object' ? usual.value : usual }),
  ...(otherwise !== undefined && { otherwise }),
  ...(unit !== undefined && { unit }),
});

/** A field that several places have, told anew for one of them. */
export const told = <T extends z.ZodType>(field: T, says: string, more: Shown = {}): T =>
  field.meta({ usual: undefined, otherwise: undefined, ...shown(says, more) });

/** Fields of one room that are those of the whole home where they are left out. */
export function asInHome<S extends z.ZodRawShape>(shape: S): S {
  const entries = Object.entries(shape).map(([key, field]) => [
    key,
    (field as z.ZodType).meta({ otherwise: 'as in the whole home' }),
  ]);
  return Object.fromEntries(entries) as S;
}

/** A number in `unit`, or text with a unit of the same kind. */
export function quantity(unit: string, limits: Limits, says: string, more: Shown = {}) {
  const words = `${anyQuantityWords(unit)}${limits.whole === true ? ', a whole number' : ''}${limitWords(limits)}`;
  return z
    .union([z.number(), z.string()], { error: () => words })
    .transform((written, context) => {
      const read = readAnyQuantity(written, unit);
      if ('refused' in read) {
        const { expected, got, hint } = read.refused;
        const params = { got, hint, isWord: isWord(written) };
        context.addIssue({ code: 'custom', message: expected, params });
        return z.NEVER;
      }
      if (!within(read.value, limits)) {
        const params = { hint: fahrenheitHint(written, unit, limits) };
        context.addIssue({ code: 'custom', message: words, params });
      }
      return read.value;
    })
    .meta({ ...shown(says, more), unit, ...ends(limits) });
}

/** True for text without a number, which may be meant as one of the words that a field takes besides. */
export const isWord = (written: string | number): boolean => !/\d/.test(`${written}`);

/** A plain number without a unit, such as a price in the scenario's currency. */
export function plainNumber(limits: Limits, says: string, more: Shown = {}) {
  const words = `${limits.whole === true ? 'a whole number' : 'a number'}${limitWords(limits)}`;
  return z
    .number({ error: () => words })
    .refine((value) => within(value, limits), { error: words })
    .meta({ unit: '-', ...shown(says, more), ...ends(limits) });
}

const isPlain = (input: unknown): boolean => typeof input === 'number' || typeof input === 'bigint';

export function text(says: string, more: Shown = {}) {
  const words = 'text that is not empty';
  return z
    .string({
      error: ({ input }) => (isPlain(input) ? `${words}, in quotes where it is a number` : words),
    })
    .refine((given) => given.length > 0, { error: words })
    .meta({ minLength: 1, ...shown(says, more) });
}

/** One of a few words. */
export function choice<const T extends readonly [string, ...string[]]>(
  values: T,
  says: string,
  more: Shown = {},
) {
  return z.enum(values, { error: () => `one of: ${values.join(', ')}` }).meta(shown(says, more));
}

/** A mapping with known keys; an unknown one is a problem. The message lists the known ones. */
export function section<S extends z.ZodRawShape>(shape: S, says: string, more: Shown = {}) {
  const known = Object.keys(shape).join(', ');
  const words = `a mapping with any of: ${known}`;
  return z
    .strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? known : words) })
    .meta(shown(says, more));
}

/** A mapping from names that the person chooses. */
export function named<T extends z.ZodType>(
  value: T,
  words: string,
  says: string,
  more: Shown = {},
) {
  return z.record(z.string(), value, { error: () => words }).meta(shown(says, more));
}

export function list<T extends z.ZodType>(item: T, words: string, says: string, more: Shown = {}) {
  return z.array(item, { error: () => words }).meta(shown(says, more));
}

/** One of several forms; the message is said where none of them is meant. */
export function either<const T extends readonly [z.ZodType, z.ZodType, ...z.ZodType[]]>(
  forms: T,
  words: string,
  says: string,
  more: Shown = {},
) {
  return z.union(forms, { error: () => words }).meta(shown(says, more));
}

/** A compass direction, in words or degrees clockwise from north. */
export function facing(says: string, more: Shown = {}) {
  const words = 'a compass direction such as south, SW, or degrees clockwise from north (0 to 360)';
  return z
    .union([z.number(), z.string()], { error: () => words })
    .transform((written, context) => {
      const degrees = typeof written === 'number' ? written : compass(written);
      if (degrees >= 0 && degrees <= 360) return degrees % 360;
      const hint = nearestHint(String(written), Object.keys(COMPASS));
      context.addIssue({ code: 'custom', message: words, params: { hint } });
      return z.NEVER;
    })
    .meta({
      ...shown(says, { eg: 'south', ...more }),
      unit: 'deg clockwise from north, or a word',
    });
}

function compass(word: string): number {
  const plain = word.toLowerCase().replaceAll(/[\s-]/g, '');
  if (Object.hasOwn(COMPASS, plain)) return COMPASS[plain]!;
  const read = readAnyQuantity(word, 'deg');
  return 'value' in read ? read.value : Number.NaN;
}

const COMPASS: Readonly<Record<string, number>> = {
  north: 0,
  northeast: 45,
  east: 90,
  southeast: 135,
  south: 180,
  southwest: 225,
  west: 270,
  northwest: 315,
  n: 0,
  ne: 45,
  e: 90,
  se: 135,
  s: 180,
  sw: 225,
  w: 270,
  nw: 315,
};

function within(value: number, { above, min, max, whole }: Limits): boolean {
  if (above !== undefined && !(value > above)) return false;
  if (min !== undefined && !(value >= min)) return false;
  if (max !== undefined && !(value <= max)) return false;
  return whole !== true || Number.isInteger(value);
}

/** Whether a number that is no temperature in °C here would be one in °F. */
function fahrenheitHint(written: number | string, unit: string, limits: Limits): string {
  if (unit !== '°C' || typeof written !== 'number') return '';
  const read = readAnyQuantity(`${written} °F`, unit);
  return 'value' in read && within(read.value, limits) ? `did you mean "${written} °F"?` : '';
}

/** The ends of a range as JSON Schema has them, which hold for numbers in the documented unit. */
const ends = ({ above, min, max }: Limits) => ({
  ...(above !== undefined && { exclusiveMinimum: above }),
  ...(min !== undefined && { minimum: min }),
  ...(max !== undefined && { maximum: max }),
});

function limitWords({ above, min, max }: Limits): string {
  const low = above !== undefined ? ` above ${above}` : min !== undefined ? ` from ${min}` : '';
  if (max === undefined) return min !== undefined ? ` of ${min} or more` : low;
  return low === '' ? ` up to ${max}` : `${low}${above !== undefined ? ' and up' : ''} to ${max}`;
}
