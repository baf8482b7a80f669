import type { Finding } from '../unplaced-problem.ts';
import type { Path } from '../yaml/place-of.ts';
import { items, mapping, readTolerantly, type UncheckedMapping } from './tolerant-readers.ts';

/** Tables by outdoor temperature have points, and rise; a COP table may list several waters for one. */
export function curveFindings(raw: UncheckedMapping): Finding[] {
  return CURVES.flatMap(([section, key]) => {
    const points = mapping(raw[section])[key];
    if (!Array.isArray(points)) return [];
    const path: Path = [section, key];
    if (points.length === 0) return [{ path, expected: 'at least one point' }];
    const mixed = points.some((one) => 'water' in mapping(one) !== 'water' in mapping(points[0]));
    if (key === 'cop' && mixed) {
      const expected = 'a water temperature with every point, or with none';
      return [{ path, expected, got: 'some with and some without' }];
    }
    return points.flatMap((point, k) => pointFindings(points, mapping(point), k, path, key));
  });
}

function pointFindings(
  points: unknown,
  point: UncheckedMapping,
  k: number,
  path: Path,
  key: string,
): Finding[] {
  const before = mapping(items(points)[k - 1]);
  const [here, last] = [
    readTolerantly(point['outdoor'], '°C'),
    readTolerantly(before['outdoor'], '°C'),
  ];
  if (here > last || Number.isNaN(here + last)) return [];
  if (key === 'cop' && here === last && 'water' in point) {
    if (!(readTolerantly(point['water'], '°C') <= readTolerantly(before['water'], '°C'))) return [];
    const expected = `a water temperature above the one before (${before['water']} °C)`;
    return [{ path: [...path, k, 'water'], expected }];
  }
  const expected = `an outdoor temperature above the one before (${last} °C)`;
  return [{ path: [...path, k, 'outdoor'], expected }];
}

const CURVES = [
  ['heating', 'cop'],
  ['heating', 'power'],
  ['heating', 'water temperature'],
  ['cooling', 'eer'],
] as const;
