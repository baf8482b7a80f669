import { type QuantityResult, quantityWords, readQuantity } from './quantity.ts';
import { isUnit, plainUnit } from './unit-words.ts';

/**
 * A number with or without its unit, in a unit of the table (see `readQuantity`) or in one that a
 * person made up, such as "Bq/m3", which nothing converts to.
 *
 * @example readAnyQuantity('12 Bq/m3', 'Bq/m3') // { value: 12 }
 */
export function readAnyQuantity(written: string | number, documented: string): QuantityResult {
  if (isUnit(documented)) return readQuantity(written, documented);
  const expected = anyQuantityWords(documented);
  if (typeof written === 'number') {
    if (Number.isFinite(written)) return { value: written };
    return { refused: { expected, got: `${written}`, hint: '' } };
  }
  const shown = JSON.stringify(written);
  const [, number, unit = ''] = NUMBER.exec(written.trim()) ?? [];
  if (number === undefined) return { refused: { expected, got: shown, hint: '' } };
  const same = unit === '' || plainUnit(unit) === plainUnit(documented);
  if (same && Number.isFinite(Number(number))) return { value: Number(number) };
  return {
    refused: { expected, got: same ? shown : `${shown}, which has another unit`, hint: '' },
  };
}

/** "a number in Bq/m3": how a field of this unit is described. */
export const anyQuantityWords = (documented: string): string =>
  isUnit(documented) ? quantityWords(documented) : `a number in ${documented}`;

const NUMBER = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)(?![\d,])\s*(.*)$/;
