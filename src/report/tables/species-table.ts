import { highKey } from '../../measures/band-hours.ts';
import { countedSpecies } from '../../measures/counted-species.ts';
import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { figureText } from '../../units/figure-text.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { type Column, textTable, WIDTH } from './text-table.ts';

/** What the air carried: outdoors and rooms down; across, for each species its mean and its hours above the band. */
export function speciesTable(measures: PlanMeasures, width = WIDTH): string {
  const { rooms, species } = measures;
  const carried = countedSpecies([measures]).filter(({ name }) => Object.hasOwn(species, name));
  if (carried.length === 0) return '';
  const all = Object.values(rooms);
  const columns = carried.flatMap(({ name, symbol }): Column[] => {
    const { unit, mean_outdoors } = species[name]!;
    const label = visibleProse(symbol);
    const means = [mean_outdoors, ...all.map((room) => room.mean_levels[name])];
    const hours = all.map((room) => figureText(room.outside_band_hours[highKey(name)], 0));
    return [
      {
        head: `${label},\nmean\n[${unit}]`,
        cells: means.map((mean) => figureText(mean)),
      },
      { head: `${label}\nhigh\n[h]`, cells: ['', ...hours] },
    ];
  });
  const names: Column = { head: '', cells: ['outdoors', ...Object.keys(rooms)], align: 'left' };
  return textTable([names, ...columns], width);
}
