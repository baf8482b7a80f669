import { describe, expect, test } from 'vitest';
import { coordinatesText, readCoordinates } from '../../src/units/coordinates.ts';

describe('readCoordinates', () => {
  test.each([
    ['54.2,-1.9', 54.2, -1.9],
    [' 54.2 , -1.9 ', 54.2, -1.9],
    ['54.2 N, 1.9 W', 54.2, -1.9],
    ['33.9°S; 18.4°E', -33.9, 18.4],
    ['-90 180', -90, 180],
  ])('%s', (written, latitude, longitude) => {
    expect(readCoordinates(written)).toEqual({ place: { latitude, longitude } });
  });

  test.each([
    ['120.5,30', 'are they swapped? did you mean 30,120.5?'],
    ['91,181', ''],
    ['1.9 W, 54.2 N', 'the latitude, north or south, comes first'],
    ['54,2,-1,9', 'decimals have a point, such as 54.2'],
    ['54.2', ''],
    ['', ''],
    ['1e2,3', ''],
    ['NaN,NaN', ''],
  ])('%j is refused', (written, hint) => {
    expect(readCoordinates(written)).toEqual({
      refused: {
        expected: 'latitude and longitude in degrees, such as 54.2,-1.9 (north and east positive)',
        got: `"${written}"`,
        hint,
      },
    });
  });
});

test('coordinatesText shows which number is which', () => {
  expect(coordinatesText({ latitude: -33.9, longitude: 18.4 })).toBe('33.90° S, 18.40° E');
  expect(coordinatesText({ latitude: 54.2, longitude: -1.9 })).toBe('54.20° N, 1.90° W');
});
