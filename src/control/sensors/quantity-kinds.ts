import type { Home } from '../../home/home.ts';
import type { Quantity } from '../automation.ts';

/** Number by which sensors know a quantity: species are told apart by their place in the home. */
export function kindOf(quantity: Quantity, species: Home['species']): number {
  if (quantity in KIND) return KIND[quantity as keyof typeof KIND];
  return FIRST_SPECIES + species.findIndex(({ name }) => name === quantity);
}

export const KIND = {
  temperature: 0,
  'relative humidity': 1,
  'absolute humidity': 2,
  'humidity above outdoors': 3,
  'dew point': 4,
  window: 5,
  presence: 6,
  hour: 7,
  'electricity price': 8,
  'hour since noon': 9,
} as const;
/** The home's first species; one less stands for a species that it does not carry. */
export const FIRST_SPECIES = 11;
