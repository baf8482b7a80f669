import type { Band, RoomBands } from '../../home/bands.ts';
import type { Room } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import type { KnownSpecies } from '../../species/species-table.ts';
import { andList } from '../../units/word-list.ts';
import { oddLevel } from './odd-level.ts';
import { written } from './written.ts';

/**
 * Bands with an edge in another unit, such as a share of 1 for a humidity, and bands that end below where they
 * begin, as one with an upper edge alone may: under either all air counts as too damp, too warm or stale.
 *
 * @param bands    of each room
 * @param counted  the species that they are of
 */
export function oddBands(
  rooms: readonly Pick<Room, 'name'>[],
  bands: readonly RoomBands[],
  counted: readonly Pick<KnownSpecies, 'name' | 'symbol' | 'unit'>[],
): Notice[] {
  const found = new Map<string, { readonly odd: Odd; readonly rooms: string[] }>();
  for (const [i, { temperature, humidity, species }] of bands.entries()) {
    const all = [
      ...oddEdges(temperature, { name: 'temperature', quantity: 'temperature', unit: ' °C' }),
      ...oddEdges(humidity, { name: 'humidity', quantity: 'relative humidity', unit: ' %' }),
      ...counted.flatMap(({ name, symbol, unit }) =>
        oddEdges(species[name]!, { name: symbol, quantity: name, unit: ` ${unit}` }),
      ),
    ];
    for (const odd of all) {
      const key = `${odd.name} ${odd.words}`;
      found.set(key, { odd, rooms: [...(found.get(key)?.rooms ?? []), rooms[i]!.name] });
    }
  }
  return [...found.values()].map(({ odd: { id, name, words }, rooms: those }) => {
    const where = those.length === rooms.length ? '' : ` (${andList(those)})`;
    return { id, text: `The band of ${name}${where} ${words}.` };
  });
}

/** "goes by 0.6 % relative humidity, drier than any home", of the band of humidity. */
interface Odd {
  readonly id: string;
  readonly name: string;
  readonly words: string;
}

/** What a band is of. */
interface Banded {
  readonly name: string;
  readonly quantity: string;
  /** With the blank before it. */
  readonly unit: string;
}

function oddEdges({ low, high }: Band, { name, quantity, unit }: Banded): Odd[] {
  const odd = [low, high].flatMap((value) => oddLevel(quantity, value) ?? []);
  if (odd.length > 0)
    return odd.map((level) => ({ id: 'odd-level', name, words: `goes by ${level}` }));
  if (low <= high) return [];
  const words = `ends at ${written(high)}${unit}, below the ${written(low)}${unit} at which it begins, so that nothing counts as fine. Give both edges`;
  return [{ id: 'odd-band', name, words }];
}
