import type { Stove } from '../../../home/devices.ts';
import { sourceAmount } from '../../../species/concentration-unit.ts';
import { byName, MOST_HARMFUL_FIRST } from '../../../species/species-lists.ts';
import type { DeviceOf } from '../../model/device.ts';
import { STOVE } from '../../presets/devices.ts';
import type { DeviceContext } from './device-context.ts';

/** A stove by its logs, what it makes of them, and what it lets out when its door is opened. */
export function stoveOf(
  given: DeviceOf<'stove'>,
  { number, species }: Pick<DeviceContext, 'number' | 'species'>,
): Stove {
  // What harms most is listed first among the numbers that nobody gave.
  const released = byName(MOST_HARMFUL_FIRST, ({ unit, sources: { refuelling } }) => {
    if (refuelling === undefined) return 0;
    const { key, usual } = refuelling;
    return sourceAmount(number(key, given[key], usual), unit);
  });
  const outside = given.air === 'outdoors';
  const { energy, efficiency, radiantShare } = STOVE;
  return {
    kind: 'stove',
    batch: number('batch', given.batch, STOVE.batch),
    interval: 60 * number('refuelling', given.refuelling, STOVE.refuelling),
    energy: 3.6e6 * number('wood energy', given['wood energy'], energy),
    efficiency: number('efficiency', given.efficiency, efficiency),
    radiantShare: number('radiant share', given['radiant share'], radiantShare),
    lag: 60 * number('lag', given.lag, STOVE.lag),
    perRefuelling: species.map(({ name }) => released[name]),
    roomAir: outside ? 0 : number('room air', given['room air'], STOVE.roomAir) / 3600,
  };
}
