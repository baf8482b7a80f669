import * as z from 'zod';
import { anyQuantityWords, readAnyQuantity } from '../../units/any-quantity.ts';
import { nearestName } from '../../units/nearest-name.ts';

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

/** A number in `unit`, or text with a unit of the same kind. */
export function quantity(unit: string, limits: Limits, says: string) {
  const words = `${anyQuantityWords(unit)}${limitWords(limits)}`;
  return z
    .union([z.number(), z.string()], { error: () => words })
    .transform((written, context) => {
      const read = readAnyQuantity(written, unit);
      if ('refused' in read) {
        const { expected, got, hint } = read.refused;
        context.addIssue({ code: 'custom', message: expected, params: { got, hint } });
        return z.NEVER;
      }
      if (!within(read.value, limits)) context.addIssue({ code: 'custom', message: words });
      return read.value;
    })
    .meta({ description: `${says} [${unit}${limitWords(limits)}]` });
}

/** A plain number without a unit, such as a price in the scenario's currency. */
export function plainNumber(limits: Limits, says: string) {
  const words = `${limits.whole === true ? 'a whole number' : 'a number'}${limitWords(limits)}`;
  return z
    .number({ error: () => words })
    .refine((value) => within(value, limits), { error: words })
    .meta({ description: says });
}

export function text(says: string) {
  const words = 'text that is not empty';
  return z
    .string({ error: () => words })
    .refine((given) => given.length > 0, { error: words })
    .meta({ minLength: 1, description: says });
}

/** One of a few words. */
export function choice<const T extends readonly [string, ...string[]]>(values: T, says: string) {
  return z.enum(values, { error: () => `one of: ${values.join(', ')}` }).describe(says);
}

/** A mapping with known keys; an unknown one is a problem. The message lists the known ones. */
export function section<S extends z.ZodRawShape>(shape: S, says: string) {
  const known = Object.keys(shape).join(', ');
  const words = `a mapping with any of: ${known}`;
  return z
    .strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? known : words) })
    .describe(says);
}

/** A mapping from names that the person chooses. */
export function named<T extends z.ZodType>(value: T, words: string, says: string) {
  return z.record(z.string(), value, { error: () => words }).describe(says);
}

export function list<T extends z.ZodType>(item: T, words: string, says: string) {
  return z.array(item, { error: () => words }).describe(says);
}

/** One of several forms; the message is said where none of them is meant. */
export function either<const T extends readonly [z.ZodType, z.ZodType, ...z.ZodType[]]>(
  forms: T,
  words: string,
  says: string,
) {
  return z.union(forms, { error: () => words }).describe(says);
}

/** A compass direction, in words or degrees clockwise from north. */
export function facing(says: string) {
  const words = 'a compass direction such as south, SW, or degrees clockwise from north (0 to 360)';
  return z
    .union([z.number(), z.string()], { error: () => words })
    .transform((written, context) => {
      const degrees = typeof written === 'number' ? written : compass(written);
      if (degrees >= 0 && degrees <= 360) return degrees % 360;
      const near = nearestName(String(written), Object.keys(COMPASS));
      const hint = near === null ? '' : `did you mean "${near}"?`;
      context.addIssue({ code: 'custom', message: words, params: { hint } });
      return z.NEVER;
    })
    .meta({ description: `${says} [deg from north, clockwise, or a word]` });
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

function limitWords({ above, min, max }: Limits): string {
  const low = above !== undefined ? ` above ${above}` : min !== undefined ? ` from ${min}` : '';
  if (max === undefined) return min !== undefined ? ` of ${min} or more` : low;
  return low === '' ? ` up to ${max}` : `${low}${above !== undefined ? ' and up' : ''} to ${max}`;
}
