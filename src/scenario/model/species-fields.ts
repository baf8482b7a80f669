import { concentrationUnit } from '../../species/concentration-unit.ts';
import type { SourceField, SpeciesFacts, SpeciesSources } from '../../species/species-facts.ts';
import { MOST_HARMFUL_FIRST } from '../../species/species-lists.ts';
import {
  type FilterKey,
  type SourceKey,
  SPECIES,
  type SupplyFilterKey,
} from '../../species/species-table.ts';
import { plainNumber, quantity, type Shown } from './fields.ts';

/*
 * Fields for what sources give off, one for each species of the table that such a source gives.
 */

/** Fields for what an activity gives off each time. */
export const activitySources = () =>
  sourceFields('activity', MOST_HARMFUL_FIRST, (source, facts) =>
    eachTime(source, facts, { eg: 10, otherwise: 'usual for what is done' }),
  );

/** Fields for what a stove gives off each time its door is opened. */
export const refuellingSources = () =>
  sourceFields('refuelling', MOST_HARMFUL_FIRST, (source, facts) =>
    eachTime(source, facts, { usual: facts.sources.refuelling!.usual }),
  );

/** Fields for all that paint ever gives off. */
export const paintSources = () =>
  sourceFields('paint', SPECIES, ({ max, description }) =>
    quantity('g', { min: 0, max }, description, {
      eg: '50 g',
      otherwise: 'usual for the area',
    }).optional(),
  );

/** Fields for what a body gives off in an hour. */
export const bodySources = (state: 'awake' | 'asleep') =>
  sourceFields('body', SPECIES, ({ max, description }, { unit, sources }) => {
    const { rate } = concentrationUnit(unit);
    const usual = sources.body![state];
    const says = `${description} by a grown body ${state}`;
    return rate === 'm3/h'
      ? quantity('m3/h', { min: 0, max }, says, { usual }).optional()
      : plainNumber({ min: 0, max }, says, { unit: rate, usual }).optional();
  });

/** Fields for the shares of a purifier's clean-air rate, by species. */
export function filterShares() {
  const fields = SPECIES.flatMap(({ filter }) =>
    filter?.by === 'share'
      ? [
          [
            filter.key,
            quantity('-', { min: 0, max: 1 }, filter.description, {
              usual: filter.usual,
            }).optional(),
          ] as const,
        ]
      : [],
  );
  return Object.fromEntries(fields) as Record<FilterKey, (typeof fields)[number][1]>;
}

/** Fields for what the filter of supply air holds back, by species. */
export function supplyFilterShares() {
  const fields = SPECIES.flatMap(({ supplyFilter }) =>
    supplyFilter === undefined
      ? []
      : [
          [
            supplyFilter.key,
            quantity('-', { min: 0, max: 1 }, supplyFilter.description, {
              eg: 0.7,
              otherwise: 'by the class of the filter',
            }).optional(),
          ] as const,
        ],
  );
  return Object.fromEntries(fields) as Record<SupplyFilterKey, (typeof fields)[number][1]>;
}

const eachTime = ({ max, description }: SourceField, { unit }: SpeciesFacts, more: Shown) =>
  quantity(concentrationUnit(unit).amount, { min: 0, max }, description, more).optional();

function sourceFields<By extends keyof SpeciesSources, T>(
  by: By,
  species: readonly SpeciesFacts[],
  field: (source: SourceField, facts: SpeciesFacts) => T,
): Record<SourceKey<By>, T> {
  const fields = species.flatMap((facts) => {
    const source = facts.sources[by];
    return source === undefined ? [] : [[source.key, field(source, facts)] as const];
  });
  return Object.fromEntries(fields) as Record<SourceKey<By>, T>;
}
