import { moistureEffusivity } from '../physics/moisture/moisture-effusivity.ts';
import { requireWithin } from '../units/require-within.ts';
import type { Room } from './home.ts';

/** How much of a room takes up moisture: bare; furnished; plenty of textiles, books, wood or clay. */
export type Furnishing = 'bare' | 'furnished' | 'plenty';

/**
 * The moisture buffer of a room of which only the furnishing is known.
 *
 * Counts floor, ceiling and walls of a square room, each square metre with the buffer value of
 * FURNISHINGS below; furniture is in those values.
 *
 * @param floorArea  [m2]
 * @param height  [m]
 */
export function bufferFromFurnishing(
  furnishing: Furnishing,
  floorArea: number,
  height: number,
): Room['buffer'] {
  requireWithin(floorArea, [0.5, 5000], 'bufferFromFurnishing: floor area', 'm2');
  requireWithin(height, [1, 20], 'bufferFromFurnishing: height', 'm');
  const area = 2 * floorArea + 4 * Math.sqrt(floorArea) * height;
  return bufferFromValue(FURNISHINGS[furnishing].value, area);
}

/**
 * The one-node buffer that stands for an area of material with a moisture buffer value.
 *
 * A thick material answers a daily swing of vapour pressure with the flow b sqrt(i w), b being its
 * moisture effusivity. A node of capacity sqrt(2) b / sqrt(w) behind a conductance sqrt(2) b sqrt(w)
 * gives the same flow in size and phase at that one period: it holds what one penetration depth
 * holds, and sits half a penetration depth under the surface. Other swings are answered too weakly:
 * with 0.69 of the flow at 6 h, 0.89 at two days, 0.53 at a week; the square wave that defines the
 * buffer value with 0.86 of it. The film of air at the surface is put in series.
 *
 * @param value  moisture buffer value, 8 h at 75 % and 16 h at 33 % [g/(m2 %RH)]
 * @param area  [m2]
 * @returns capacity from 0 to 100 % [kg], conductance [kg/(s Pa)]
 * Source: effective moisture penetration depth after Cunningham 1988 and Kerestecioglu et al. 1990
 * (idea, from memory); matching done here.
 */
export function bufferFromValue(value: number, area: number): Room['buffer'] {
  requireWithin(value, [0, 20], 'bufferFromValue: moisture buffer value', 'g/(m2 %RH)');
  requireWithin(area, [0, 1e5], 'bufferFromValue: area', 'm2');
  const effusivity = moistureEffusivity(value, TEST_SATURATION);
  const material = Math.SQRT2 * effusivity * Math.sqrt(DAILY);
  const conductance = material > 0 ? 1 / (1 / material + 1 / FILM) : 0;
  const capacity = ((Math.SQRT2 * effusivity) / Math.sqrt(DAILY)) * TEST_SATURATION;
  return { capacity: capacity * area, conductance: conductance * area };
}

/**
 * Buffer value of a square metre of room surface with what stands before it, likely and from-to.
 * Common practice: painted plaster 0.1 to 0.4, wood and textiles 0.5 to 1.5. [g/(m2 %RH)]
 */
const FURNISHINGS: Readonly<
  Record<Furnishing, { readonly value: number; readonly low: number; readonly high: number }>
> = {
  bare: { value: 0.2, low: 0.1, high: 0.4 },
  furnished: { value: 0.5, low: 0.3, high: 0.8 },
  plenty: { value: 1, low: 0.6, high: 1.5 },
};

const DAILY = (2 * Math.PI) / 86_400; // [rad/s]
const TEST_SATURATION = 2811; // of the test chamber at 23 °C [Pa]
const FILM = 2e-8; // [kg/(m2 s Pa)], 5e7 m2 s Pa/kg of the Nordic test method (from memory)
