import type { HeatSource, Home } from '../../home/home.ts';
import type { LoggedSeries } from '../../log/log.ts';
import { along } from '../../units/along.ts';
import type { Weather } from '../../weather/weather.ts';

/** Whether a source makes heat of nothing but electricity. */
export const isElectric = ({ fuel }: Pick<HeatSource, 'fuel'>): boolean => fuel === 'electricity';

/**
 * Heat that electric heating gave, from the electricity it drew: times its efficiency, or times its COP at
 * the temperature outdoors, over the time that a reading stands for. Electricity that a backup heater drew
 * is not told apart, and counts by the COP too.
 *
 * @param source  what heats; null for heaters that turn all of it into heat
 * @returns [W]
 */
export function heatOfElectricity(
  series: LoggedSeries,
  source: Pick<HeatSource, 'conversion'> | null,
  weather: Weather,
): LoggedSeries {
  const { times, values, reading } = series;
  const conversion = source?.conversion ?? { by: 'efficiency' as const, efficiency: 1 };
  const heatPerPower = (k: number): number => {
    if (conversion.by === 'efficiency') return conversion.efficiency;
    const from = reading === 'mean' ? (times[k - 1] ?? times[k]!) : times[k]!;
    const curve = { outdoor: conversion.outdoor, value: conversion.cop };
    return along(curve, meanOutdoors(weather, from, times[k]!));
  };
  return {
    ...series,
    quantity: 'heating power',
    values: values.map((power, k) => power * heatPerPower(k)),
  };
}

/**
 * The electric source that warms a room: null where heaters do that are no part of the home's heating,
 * undefined where something else, or several things, do.
 */
export function roomSource(
  { rooms, emitters, sources }: Home,
  room: string,
): HeatSource | null | undefined {
  const own = emitters.filter((each) => rooms[each.room]!.name === room).map((e) => e.source);
  const all = [...new Set(own)].map((index) => sources[index]!);
  if (all.length === 0) return null;
  return all.length === 1 && isElectric(all[0]!) ? all[0]! : undefined;
}

/** Mean temperature outdoors between two instants; before and after the weather its first and last. [°C] */
export function meanOutdoors(
  { temperature, start, step, count, periodic }: Weather,
  from: number,
  to: number,
): number {
  const last = Math.round((to - start) / step);
  const first = Math.min(last, Math.round((from - start) / step) + 1);
  let sum = 0;
  for (let k = first; k <= last; k++) {
    const at = periodic ? ((k % count) + count) % count : Math.min(count - 1, Math.max(0, k));
    sum += temperature[at]!;
  }
  return sum / (last - first + 1);
}
