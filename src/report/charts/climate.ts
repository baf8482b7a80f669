import { rangeText } from '../../units/range-text.ts';
import { INK } from './palette.ts';

/** What of a room's air is drawn. */
export type ClimateQuantity = 'temperature' | 'humidity';

/** Lower and upper edge; infinite for none. */
export interface Edges {
  readonly low: number;
  readonly high: number;
  /** The upper edge in mild weather, where it is another then. */
  readonly mild?: { readonly high: number };
}

/** The edges that hold in mild weather, or in any other. */
export const edgesWhen = ({ low, high, mild }: Edges, isMild: boolean): Edges =>
  isMild && mild !== undefined ? { low, high: mild.high } : { low, high };

export const CLIMATE = {
  temperature: {
    title: 'Temperature [°C]',
    unit: ' °C',
    low: 'too cold',
    high: 'too warm',
    step: 2,
  },
  humidity: {
    title: 'Relative humidity [%]',
    unit: ' %',
    low: 'too dry',
    high: 'too damp',
    step: 10,
  },
} as const;

/** An upright axis that shows all values and the band's edges, ending on round figures. */
export function climateDomain(
  quantity: ClimateQuantity,
  band: Edges,
  values: Iterable<number>,
): [number, number] {
  let low = Number.isFinite(band.low) ? band.low : Number.POSITIVE_INFINITY;
  let high = Number.isFinite(band.high) ? band.high : Number.NEGATIVE_INFINITY;
  for (const value of values) {
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (!(low <= high)) return [0, 1];
  const { step } = CLIMATE[quantity];
  const from = step * Math.floor(low / step - 0.25);
  const to = step * Math.ceil(high / step + 0.25);
  return quantity === 'humidity' ? [Math.max(0, from), Math.min(100, to)] : [from, to];
}

/** The band as a shaded strip between dashed edges. */
export function bandLayers(band: Edges, [low, high]: readonly [number, number]): object[] {
  const strip = { from: Math.max(band.low, low), to: Math.min(band.high, high) };
  const edges = [band.low, band.high].filter((at) => at > low && at < high).map((at) => ({ at }));
  return [
    {
      data: { values: [strip] },
      mark: { type: 'rect', color: INK, opacity: 0.08 },
      encoding: {
        y: { field: 'from', type: 'quantitative' },
        y2: { field: 'to' },
      },
    },
    {
      data: { values: edges },
      mark: { type: 'rule', strokeDash: [3, 3], opacity: 0.6 },
      encoding: { y: { field: 'at', type: 'quantitative' } },
    },
  ];
}

/** Times outside a band: how many of the values are below and above it. */
export function countOutside(
  values: Iterable<number>,
  band: Edges,
): { below: number; above: number } {
  let below = 0;
  let above = 0;
  for (const value of values) {
    if (value < band.low) below++;
    if (value > band.high) above++;
  }
  return { below, above };
}

/** To a hundredth for the picture's data; null for what is no number. */
export const point = (value: number | undefined): number | null =>
  value === undefined || !Number.isFinite(value) ? null : Math.round(value * 100) / 100;

/** "18 to 26 °C" and the like. */
export const bandText = (band: Edges, quantity: ClimateQuantity): string =>
  rangeText(band, CLIMATE[quantity].unit);
