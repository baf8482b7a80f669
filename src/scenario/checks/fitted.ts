import { fittedModel } from '../model/fitted.ts';
import type { Finding } from '../unplaced-problem.ts';
import { validate } from '../validate.ts';
import { pointerSteps } from '../yaml/json-pointer.ts';
import { valueAt } from '../yaml/path-words.ts';
import { mapping, type UncheckedMapping } from './tolerant-readers.ts';

/** Fitted values that the file does not have, or has outside their range. What the model refuses it says itself. */
export function fittedFindings(raw: UncheckedMapping): Finding[] {
  const fitted = fittedModel.safeParse(mapping(raw)['fitted'] ?? {}).data ?? {};
  if (Object.keys(fitted).length === 0) return [];
  const { data } = validate(raw);
  if (data === null) return []; // what is wrong is said elsewhere
  return Object.entries(fitted).flatMap(([pointer, { low, high }]): Finding[] => {
    const path = ['fitted', pointer];
    const value = valueAt(data, pointerSteps(pointer) ?? []);
    if (typeof value !== 'number') {
      const expected = 'a pointer to a number that this file gives';
      return [{ path, key: true, expected, got: JSON.stringify(pointer) }];
    }
    if (value >= low && value <= high) return [];
    const shown = Number(value.toPrecision(6));
    return [{ path, expected: `a range that holds the value ${shown}`, got: `${low} to ${high}` }];
  });
}
