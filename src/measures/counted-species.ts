import { SPECIES } from '../species/species-table.ts';
import type { PlanMeasures } from './plan-measures.ts';

/** A species of which plans have hours above a band, as tables speak of it. */
export interface CountedSpecies {
  readonly name: string;
  readonly symbol: string;
  /** An indicator tells that air is stale; a pollutant does harm itself. */
  readonly role: 'indicator' | 'pollutant';
  /** Which of its hours a table of the whole home counts. */
  readonly counted: 'occupied' | 'any time';
}

/**
 * Those of the table, from what only tells that air is stale to what harms most, and behind them those
 * that the scenarios of some plans name themselves.
 */
export function countedSpecies(plans: readonly Pick<PlanMeasures, 'species'>[]): CountedSpecies[] {
  const known = SPECIES.map(({ name, symbol, role, band: { counted } }) => ({
    ...{ name, symbol, role, counted },
  }));
  const carried = new Map(plans.flatMap(({ species }) => Object.entries(species)));
  const own = [...carried].filter(([name]) => !known.some((other) => other.name === name));
  return [
    ...known,
    ...own.map(
      ([name, { label }]): CountedSpecies => ({
        ...{ name, symbol: label, role: 'pollutant', counted: 'any time' },
      }),
    ),
  ];
}
