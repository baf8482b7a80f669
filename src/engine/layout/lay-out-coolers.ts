import type { Cooler, Home } from '../../home/home.ts';
import { humidityRatioFromRelativeHumidity } from '../../physics/moist-air/humidity-ratio.ts';
import type { i32 } from '../../units/portable.ts';
import { COOLER } from './state-layout.ts';

/** COOLER records of a home, and the room and EER line of each. */
export interface Coolers {
  readonly count: i32;
  readonly records: Float64Array;
  readonly room: Int32Array;
  readonly eer: readonly Cooler['eer'][];
}

/**
 * @param density   dry air in a cubic metre of room air [kg/m3]
 * @param pressure  mean station pressure [Pa]
 */
export function layOutCoolers({ cooling = [] }: Home, density: number, pressure: number): Coolers {
  const records = new Float64Array(cooling.length * COOLER_STRIDE);
  cooling.forEach(({ power, coil, exhaust, radiantShare }, c) => {
    const at = c * COOLER_STRIDE;
    records[at + COOLER.power] = power;
    records[at + COOLER.exhaust] = density * exhaust;
    records[at + COOLER.radiantShare] = radiantShare;
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
