import type { SpeciesFacts } from '../../species/species-facts.ts';
import { byName } from '../../species/species-lists.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { quantity, section } from './fields.ts';

/** The range that counts as fine; either end may be left out. */
const band = (unit: string, min: number, max: number, says: string, eg: Edges) =>
  section(
    {
      low: quantity(unit, { min, max }, 'Least that counts as fine', {
        eg: eg.low,
        otherwise: 'the usual edge',
      }).optional(),
      high: quantity(unit, { min, max }, 'Most that counts as fine', {
        eg: eg.high,
        otherwise: 'the usual edge',
      }).optional(),
    },
    says,
    { eg, otherwise: 'the usual ones' },
  );

interface Edges {
  readonly low: number;
  readonly high: number;
}

const averaged = ({ words, band: { hours } }: SpeciesFacts): string =>
  `${words}${hours === 0 ? '' : `, mean of ${hours} hours`}: levels between which it counts as fine`;

/** @param species  that bands may be given for */
export const bandsModel = (
  species: readonly KnownSpecies[],
  says = 'Ranges that count as fine in all rooms',
  otherwise = 'the usual ones',
) =>
  section(
    {
      temperature: band(
        '°C',
        -20,
        50,
        'Operative temperatures between which a room counts as comfortable',
        { low: 18, high: 25 },
      ).optional(),
      humidity: band(
        '%',
        0,
        100,
        'Levels of relative humidity between which the air of a room counts as fine',
        { low: 40, high: 60 },
      ).optional(),
      ...byName(species, (facts) =>
        band(facts.unit, 0, facts.limits.band, averaged(facts), edgesOf(facts)).optional(),
      ),
    },
    says,
    { eg: { humidity: { low: 40, high: 60 } }, otherwise },
  );

/** Edges for an example. */
const edgesOf = ({ band: { high } }: SpeciesFacts): Edges => ({
  low: 0,
  high: Number.isFinite(high) ? high : 100,
});
