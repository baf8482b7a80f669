import { SPECIES } from '../species/species-table.ts';

/** A logged quantity in the middle of a sentence: species by their plain names. */
export const quantityWords = (quantity: string): string =>
  SPECIES.find(({ name }) => name === quantity)?.plainName ?? quantity;

/** Unit of values, by the unit of their differences. */
export const unitOfValues = (unit: string): string =>
  unit === 'K' ? '°C' : unit === 'points' ? '%' : unit;
