import type { TextTable } from '../text-table.ts';
import type { WeatherKind } from '../weather-options.ts';

/** Which known layout a text has, by its first lines; null for none. */
export function sniffKind(table: TextTable): WeatherKind | null {
  const [first = '', second = ''] = table.lines;
  if (/^Latitude \(decimal degrees\)/i.test(first)) return 'pvgis';
  if (/^Date \(MM\/DD\/YYYY\),\s*Time \(HH:MM\)/i.test(second)) return 'tmy3';
  if (/^\d{4} [ \d]\d [ \d]\d [ \d]\d( +-?\d+){2,}\s*$/.test(first)) return 'isd-lite';
  if (first.startsWith('#') || /^"?time"?\s*,/i.test(first)) return 'own';
  return null;
}
