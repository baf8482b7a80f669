import { SPELLINGS, UNITS, type UnitMeaning } from './unit-table.ts';

/** Whether the table of units knows it. */
export const isUnit = (unit: string): boolean => meaning(unit) !== null;

/** A unit without the marks that do not change its meaning: "W/(m² K)" and "W/m2K" are one. */
export function plainUnit(text: string): string {
  const bare = text
    .normalize('NFC')
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('μ', 'µ') // Greek mu, micro sign
    .replaceAll('º', '°') // ordinal indicator, often typed for degrees
    .replaceAll(/\bper\b/g, '/')
    .replaceAll('″', 'in')
    .replaceAll('′', 'ft')
    .replaceAll(/[\s()^·⋅*.]/g, '');
  return bare.replaceAll('°K', 'K');
}

/** What a unit measures, however it is spelled; null where the table has no such unit. */
export function meaning(unit: string): UnitMeaning | null {
  const bare = plainUnit(unit);
  const known = Object.hasOwn(SPELLINGS, bare) ? SPELLINGS[bare]! : bare;
  const found = Object.hasOwn(UNITS, known) ? UNITS[known] : undefined;
  if (found !== undefined) return found;
  const folded = known.toLowerCase();
  const alike = Object.keys(UNITS).filter((name) => name.toLowerCase() === folded);
  return alike.length === 1 ? UNITS[alike[0]!]! : null;
}
