import { plainName } from '../../species/plain-name.ts';
import { SPECIES } from '../../species/species-table.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { type Log, seriesOf } from '../log.ts';
import type { UnderstoodColumn, UnderstoodFile } from '../read/log-options.ts';
import type { AirChange } from './air-change.ts';

/** How a file was taken, as sentences. */
export function fileWords(file: UnderstoodFile): string[] {
  const { separator, decimal, head, rows, form } = file;
  const above = head === 1 ? 'one line above them' : `${head} lines above them`;
  const lines = [
    `${file.file}: ${rows} rows, ${separator} between cells, decimal ${decimal}, ${above}; ` +
      `${form === 'wide' ? 'a column for each reading' : 'each row names its reading'}.`,
    `Time in ${file.time}; zone: ${file.zone}.`,
    ...(file.columns.length > 0 ? [`Taken: ${file.columns.map(columnWords).join('; ')}.`] : []),
    ...file.notes,
  ];
  if (file.leftOut.length > 0) {
    const shown = file.leftOut.slice(0, MOST_SAID).map(({ name, why }) => `"${name}" (${why})`);
    const more = file.leftOut.length - shown.length;
    lines.push(`Left out: ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`);
  }
  return lines;
}

function columnWords({ name, quantity, where, unit, unitBy }: UnderstoodColumn): string {
  const by = unitBy === 'numbers' ? ', as its numbers show' : '';
  const shown = unit === '-' ? 'share or count' : unit;
  return `"${name}" as ${wordsFor(quantity)} of ${where} [${shown}${by}]`;
}

/** What decays told, and what they cannot tell. */
export function airChangeWords(log: Log, changes: readonly AirChange[]): string[] {
  if (changes.length === 0) {
    return [
      'No air change can be seen: that takes at least three evenings or mornings on which the air of a ' +
        'room clears by itself, read every quarter of an hour or oftener.',
    ];
  }
  return changes.map((change) => {
    const { room, decays, rate, low, high } = change;
    const rates = `${figureText(rate, 2)} an hour (${figureText(low, 2)} to ${figureText(high, 2)} in the middle half of ${decays.length} decays)`;
    return change.by === 'moisture'
      ? `${room}: moisture after a rise falls by ${rates}. Walls and textiles take up a part of it, so this is more than the air change.`
      : `${room}: ${wordsFor(change.by)} falls by ${rates}, over ${levelWords(log, change.by)} outdoors. That counts air from outdoors and from other rooms.`;
  });
}

function levelWords(log: Log, name: string): string {
  if (seriesOf(log, name, null, 'outdoors') !== undefined) return 'the logged level';
  const facts = SPECIES.find((species) => species.name === name)!;
  return `an assumed ${figureText(facts.outdoors.value)} ${facts.unit}`;
}

const wordsFor = (quantity: string): string =>
  SPECIES.find(({ name }) => plainName(name) === plainName(quantity))?.plainName ??
  andList([quantity]);

const MOST_SAID = 8;
