import type { Household } from '../../control/household.ts';
import type { RoomBands } from '../../home/bands.ts';
import type { Home } from '../../home/home.ts';
import type { Notice } from '../../home/notices.ts';
import { rangeText } from '../../units/range-text.ts';
import { andList } from '../../units/word-list.ts';

/**
 * Rooms whose heating is set above what counts as fine there, such as 21 °C where an infant sleeps: their
 * hours too warm are no fault of the weather.
 *
 * @param bands  of each room
 */
export function heatsPastBand(
  { rooms }: Pick<Home, 'rooms'>,
  { setpoints }: Pick<Household, 'setpoints'>,
  bands: readonly RoomBands[],
): Notice[] {
  const words = rooms.flatMap(({ name }, i) => {
    const { base, spells } = setpoints[i] ?? { base: Number.NEGATIVE_INFINITY, spells: [] };
    const most = Math.max(base, ...spells.map(({ value }) => value));
    const { low, high } = bands[i]!.temperature;
    const fine = rangeText({ low, high }, ' °C');
    return most > high ? [`${name} (set to ${most} °C, fine is ${fine})`] : [];
  });
  if (words.length === 0) return [];
  const text = `The heating itself makes rooms warmer than counts as fine there: ${andList(words)}. Hours too warm in them come from that.`;
  return [{ id: 'heats-past-band', text }];
}
