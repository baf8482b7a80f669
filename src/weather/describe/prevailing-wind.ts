import type { Weather } from '../weather.ts';

/** The eighth of the compass that the most wind comes from, by distance blown; null where unknown. */
export function prevailingWind({ windSpeed, windDirection }: Weather): string | null {
  const blown = new Array<number>(POINTS.length).fill(0);
  windDirection.forEach((from, k) => {
    if (!Number.isNaN(from)) blown[Math.round(from / 45) % 8]! += windSpeed[k]!;
  });
  const most = Math.max(...blown);
  return most > 0 ? POINTS[blown.indexOf(most)]! : null;
}

const POINTS = [
  ...['north', 'north-east', 'east', 'south-east'],
  ...['south', 'south-west', 'west', 'north-west'],
];
