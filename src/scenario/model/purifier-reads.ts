import { FILTER_RATED } from '../../species/species-lists.ts';
import { type KnownSpecies, SPECIES } from '../../species/species-table.ts';

/** What a purifier may go by besides particles: species of which it takes a share, in the same unit. */
const OTHERS: readonly KnownSpecies[] = SPECIES.filter(
  ({ filter, unit }) => filter?.by === 'share' && unit === FILTER_RATED.unit,
);

const wordOf = ({ name }: KnownSpecies): string => `by ${name}`;

/** What makes a purifier run. */
export const PURIFIER_RUNS = [
  ...(['always', 'by particles'] as const),
  ...OTHERS.map(wordOf),
  'by rules',
] as const;

/** The species whose reading makes a purifier run; null where none does. */
export function purifierReads(runs: unknown): KnownSpecies | null {
  if (runs === 'by particles') return FILTER_RATED;
  return OTHERS.find((species) => wordOf(species) === runs) ?? null;
}
