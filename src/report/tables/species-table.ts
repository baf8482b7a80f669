import { highKey } from '../../measures/band-hours.ts';
import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures, SpeciesLevel } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { type Column, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** What the air carried, species by species: a line outdoors and one of each room, whether or not a limit is passed. */
export function speciesTable(measures: PlanMeasures, width: number): string {
  const { rooms, species } = measures;
  const carried = countedSpecies([measures]).filter(({ name }) => Object.hasOwn(species, name));
  if (carried.length === 0) return '';
  const lines = carried.flatMap(({ name, symbol }): Line[] => {
    const { unit, mean_outdoors } = species[name]!;
    const opening = `${visibleProse(symbol)} [${visibleProse(unit)}]`;
    return [
      { label: opening, figures: [] },
      { label: '  outdoors', figures: [figureText(mean_outdoors)] },
      ...Object.entries(rooms).map(([room, { species: levels, outside_band_hours }]) => ({
        label: `  ${visibleProse(room)}`,
        figures: [
          ...LEVELS.map((key) => figureText(levels[name]?.[key])),
          figureText(outside_band_hours[highKey(name)], 0),
        ],
      })),
    ];
  });
  const columns = HEADS.map(
    (head, k): Column => ({ head, cells: lines.map(({ figures }) => figures[k] ?? '') }),
  );
  const labels: Column = { head: '', cells: lines.map(({ label }) => label), align: 'left' };
  return `${textTable([labels, ...columns], width)}\n${wrapText(BY_THE_CLOCK, '', width)}`;
}

interface Line {
  readonly label: string;
  readonly figures: readonly string[];
}

const LEVELS: readonly (keyof SpeciesLevel)[] = ['mean', 'evening', 'night', 'p95', 'peak'];
const HEADS = [
  'mean',
  'evening\n18-23 h',
  'night\n23-7 h',
  '95 of 100\nhours under',
  'highest\nhour',
  'over the\nlimit [h]',
];
const BY_THE_CLOCK = 'Levels are means of hours; the limits are described in docs/quantities.md.';
