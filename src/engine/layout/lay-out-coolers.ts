import type { Cooler, Home } from '../../home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../physics/moist-air/humidity-ratio.ts';
import type { i32 } from '../../units/portable.ts';
import { COOLER, ROOM } from './state-layout.ts';

/** COOLER records of a home, and the room and EER line of each. */
export interface Coolers {
  readonly count: i32;
  readonly records: Float64Array;
  readonly room: Int32Array;
  readonly eer: readonly Cooler['eer'][];
}

/**
 * @param rooms     ROOM records, as laid out
 * @param density   dry air in a cubic metre of room air [kg/m3]
 * @param pressure  mean station pressure [Pa]
 */
export function layOutCoolers(
  { cooling = [] }: Home,
  rooms: Float64Array,
  density: number,
  pressure: number,
): Coolers {
  const records = new Float64Array(cooling.length * COOLER_STRIDE);
  cooling.forEach(({ room, power, coil, exhaust, radiantShare }, c) => {
    const at = c * COOLER_STRIDE;
    records[at + COOLER.power] = power;
    records[at + COOLER.exhaust] = density * exhaust;
    // Where there is no surface to cool, there is only the air.
    const surfaced = rooms[room * ROOM.stride + ROOM.radiantG]! > 0;
    records[at + COOLER.radiantShare] = surfaced ? radiantShare : 0;
    if (coil === null) return;
    records[at + COOLER.cooled] = density * coil.airflow * (1 - coil.bypassFactor);
    records[at + COOLER.coil] = coil.temperature;
    records[at + COOLER.coilHumidity] = humidityRatioFromRelativeHumidity(
      coil.temperature,
      100,
      pressure,
    );
  });
  return {
    count: cooling.length,
    records,
    room: Int32Array.from(cooling, ({ room }) => room),
    eer: cooling.map(({ eer }) => eer),
  };
}

const COOLER_STRIDE = COOLER.stride;
