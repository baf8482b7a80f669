import type { SpeciesFacts } from '../../species/species-facts.ts';
import { byName } from '../../species/species-lists.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { quantity, section } from './fields.ts';

/** The range that counts as fine; either end may be left out. */
const band = (unit: string, min: number, max: number, says: string) =>
  section(
    {
      low: quantity(unit, { min, max }, 'Lower edge').optional(),
      high: quantity(unit, { min, max }, 'Upper edge').optional(),
    },
    says,
  );

const averaged = ({ words, band: { hours } }: SpeciesFacts): string =>
  hours === 0 ? words : `${words}, mean of ${hours} hours`;

/** @param species  that bands may be given for */
export const bandsModel = (species: readonly KnownSpecies[]) =>
  section(
    {
      temperature: band('°C', -20, 50, 'Operative temperature').optional(),
      humidity: band('%', 0, 100, 'Relative humidity of the room air').optional(),
      ...byName(species, (facts) =>
        band(facts.unit, 0, facts.limits.band, averaged(facts)).optional(),
      ),
    },
    'Ranges that count as fine, instead of the usual ones',
  );
