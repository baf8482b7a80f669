import { expect, test } from 'vitest';
import { surfacesOf } from '../../src/home/surfaces.ts';
import { compare } from '../reference/compare.ts';

test.each([
  ['wall', 0.13, 0.04],
  ['roof', 0.1, 0.04],
  ['floor', 0.17, 0.04],
  ['partition', 0.13, 0.13],
] as const)('%s', (kind, inner, outer) => {
  const got = surfacesOf(kind);
  const row = {
    topic: 'Surfaces',
    unit: 'm2 K/W',
    source:
      'ISO 6946, conventional surface resistances (wiki.indigud.de, RSI_RSE; both faces of partitions: 100gon.de/?p=222)',
    mark: 'published',
    tolerance: { absolute: 1e-9 },
    because: 'a table is carried over as printed',
  } as const;
  compare({ ...row, what: `${kind}, inner`, expected: inner, got: got.inner });
  compare({ ...row, what: `${kind}, outer`, expected: outer, got: got.outer });
  expect(got.bothFaces === true).toBe(kind === 'partition');
});
