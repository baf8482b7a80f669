import { isConcentrationUnit } from '../species/concentration-unit.ts';
import { ownSpecies } from '../species/own-species.ts';
import type { KnownSpecies } from '../species/species-table.ts';
import { mapping, textOf, type UncheckedMapping } from './checks/tolerant-readers.ts';
import { unitAsWritten } from './model/own-species.ts';

/**
 * The species that a scenario names itself, in its order, as far as they can be read.
 *
 * One whose unit is wrong counts as having ppm, so that only its unit is complained of.
 */
export function declaredSpecies(raw: UncheckedMapping): KnownSpecies[] {
  return Object.entries(mapping(mapping(raw['air'])['own species'])).map(([name, given]) => {
    const { label, unit } = mapping(given);
    const written = unitAsWritten(textOf(unit));
    return ownSpecies({
      name,
      label: textOf(label) === '' ? name : textOf(label),
      unit: isConcentrationUnit(written) ? written : 'ppm',
    });
  });
}
