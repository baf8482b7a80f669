import { type Edges, edgesWhen } from './climate.ts';

/** What can be wrong with an hour, in the order in which pictures show it. */
export const WRONGS = ['too cold', 'too warm', 'too damp', 'too dry'] as const;

/** One value per hour: bit k is set where `WRONGS[k]` holds. */
export type HoursOutside = Uint8Array;

/**
 * What is wrong with each hour of a room, by its means over the hour. On an edge is inside. Hours
 * count whole here and in control steps among the figures, so both may differ a little.
 *
 * @param temperature  operative, as its band is [°C]
 * @param humidity  relative, of the air [%]
 * @param mild  1 for hours of mild weather, 0 for others, as all are where it is left out
 */
export function hoursOutside(
  temperature: Float32Array,
  humidity: Float32Array,
  bands: { readonly temperature: Edges; readonly humidity: Edges },
  mild?: Uint8Array,
): HoursOutside {
  const found = new Uint8Array(temperature.length);
  const [usual, whenMild] = [false, true].map((is) => edgesWhen(bands.temperature, is).high);
  for (let h = 0; h < found.length; h++) {
    found[h] =
      (temperature[h]! < bands.temperature.low ? 1 : 0) |
      (temperature[h]! > (mild?.[h] === 1 ? whenMild! : usual!) ? 2 : 0) |
      (humidity[h]! > bands.humidity.high ? 4 : 0) |
      (humidity[h]! < bands.humidity.low ? 8 : 0);
  }
  return found;
}
