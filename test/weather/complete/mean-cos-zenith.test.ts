import { describe, expect, test } from 'vitest';
import { dayOfYear } from '../../../src/physics/sun/day-of-year.ts';
import { extraterrestrialNormal } from '../../../src/physics/sun/extraterrestrial.ts';
import { solarDeclination } from '../../../src/physics/sun/solar-coordinates.ts';
import { sunPosition } from '../../../src/physics/sun/sun-position.ts';
import { meanCosZenith } from '../../../src/weather/complete/mean-cos-zenith.ts';
import { compare } from '../../reference/compare.ts';
import { extraterrestrialDaily } from '../../reference/physics/sun/extraterrestrial-daily.ts';

const JUNE = Date.UTC(2023, 5, 21) / 1000;

/** Mean cosine of the zenith angle by adding up many moments. */
function slowly(from: number, step: number, latitude: number, longitude: number): number {
  const parts = 2000;
  let sum = 0;
  for (let k = 0; k < parts; k++) {
    const { elevation } = sunPosition(from + ((k + 0.5) / parts) * step, latitude, longitude);
    sum += Math.max(0, Math.sin((elevation * Math.PI) / 180));
  }
  return sum / parts;
}

describe('meanCosZenith', () => {
  test.each([
    [54.2, -1.9],
    [-33, 151],
    [0, 179],
    [80, 20],
    [-80, 20],
  ])('agrees with the sum of moments at %d, %d', (latitude, longitude) => {
    for (const step of [300, 3600, 10_800]) {
      for (let from = JUNE; from < JUNE + 86_400; from += step * Math.ceil(7000 / step)) {
        const got = meanCosZenith(from, step, latitude, longitude);
        // The declination drifts 0.4° a day, the sun's parallax is 0.002°.
        expect(Math.abs(got - slowly(from, step, latitude, longitude))).toBeLessThan(2e-4);
      }
    }
  });

  test('adds up to the daily sum outside the atmosphere', () => {
    const day = Math.floor(dayOfYear(JUNE));
    let sum = 0;
    for (let k = 0; k < 24; k++) {
      sum += 3600 * meanCosZenith(JUNE + k * 3600, 3600, 54.2, 0) * extraterrestrialNormal(day);
    }
    compare({
      topic: 'Weather files',
      what: 'hours of sun outside the atmosphere, added up over a day, 54.2° north, 21 June',
      unit: 'MJ/m2',
      source: 'daily integral in closed form, Duffie and Beckman equation 1.10.3',
      mark: 'closed form',
      expected: extraterrestrialDaily(day, 54.2, solarDeclination(JUNE + 43_200)) / 1e6,
      got: sum / 1e6,
      tolerance: { relative: 30 / 86_400 },
      because: 'a day of the sun is up to 30 s longer or shorter than 24 h',
    });
  });

  test('is nothing at night and positive in the hour of sunrise', () => {
    expect(meanCosZenith(JUNE, 3600, 54.2, 0)).toBe(0);
    expect(meanCosZenith(JUNE + 3 * 3600, 3600, 54.2, 0)).toBeGreaterThan(0);
  });
});
