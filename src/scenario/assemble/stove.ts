import type { Stove } from '../../home/devices.ts';
import type { DeviceOf } from '../model/device.ts';
import { STOVE } from '../presets/devices.ts';
import type { DeviceContext } from './device-context.ts';

/** A stove by its logs, what it makes of them, and what it lets out when its door is opened. */
export function stoveOf(
  given: DeviceOf<'stove'>,
  { number, species }: Pick<DeviceContext, 'number' | 'species'>,
): Stove {
  const released: Readonly<Record<string, number>> = {
    pm25: 1000 * number('particles', given.particles, STOVE.particles),
    tvoc: 1000 * number('tvoc', given.tvoc, STOVE.tvoc),
  };
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
    perRefuelling: species.map(({ name }) => released[name] ?? 0),
    roomAir: outside ? 0 : number('room air', given['room air'], STOVE.roomAir) / 3600,
  };
}
