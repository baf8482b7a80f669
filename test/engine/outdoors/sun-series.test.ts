import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sunSeries } from '../../../src/engine/outdoors/sun-series.ts';
import type { Pane } from '../../../src/home/home.ts';
import { sunPosition } from '../../../src/physics/sun/sun-position.ts';
import type { Weather } from '../../../src/weather/weather.ts';
import { bareHome, bareRoom, NEW_YEAR } from '../homes.ts';
import { recordRun, runInput, total } from '../record-run.ts';
import { lastDays, steady } from '../short-weather.ts';

const DAY = 86_400;
const QUARTER = 900; // s
const STEPS = [60, 300, 600, 720, 900, 1200, 1800, 3600];

/** Two days of irradiances without any order. */
const ragged = (step: number): Weather => {
  const wave = (t: number) => 400 + 399 * Math.sin(t * t + t);
  return lastDays({ direct: wave, diffuse: (t) => wave(t + 1) / 4 }, 2, step);
};
const energy = (column: Float64Array, step: number): number => step * total(column);

describe('irradiances by control step', () => {
  test.each(STEPS)('steps of %s s get all the energy of weather in any interval', (dt) => {
    for (const step of STEPS) {
      const weather = ragged(step);
      const sun = sunSeries(weather, dt, NEW_YEAR);
      expect(sun.count * sun.step).toBe(2 * DAY);
      for (const column of ['directNormal', 'diffuseHorizontal'] as const) {
        const held = energy(weather[column], step);
        expect(Math.abs(energy(sun[column], sun.step) / held - 1)).toBeLessThan(1e-12);
      }
    }
  });

  test('where steps lie within intervals the weather is taken as it is', () => {
    const weather = ragged(3600);
    const { directNormal, diffuseHorizontal, step } = sunSeries(weather, 600, NEW_YEAR + 1200);
    expect(directNormal).toBe(weather.directNormal);
    expect(diffuseHorizontal).toBe(weather.diffuseHorizontal);
    expect(step).toBe(3600);
  });

  test('a step over two quarters of an hour takes of each what it covers', () => {
    const weather = lastDays({ direct: (t) => t / QUARTER }, 1, QUARTER);
    const sun = sunSeries(weather, 600, NEW_YEAR);
    // Values 0, 1, 2: the second step has 5 minutes of the first and 5 of the second.
    expect(Array.from(sun.directNormal.slice(0, 4))).toEqual([0, 0.5, 1, 2]);
  });

  test('steps that begin off the file’s grid still mean what the file holds over them', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...STEPS),
        fc.constantFrom(...STEPS),
        fc.integer({ min: 1, max: 59 }),
        (step, dt, minute) => {
          const weather = ragged(step);
          const sun = sunSeries(weather, dt, NEW_YEAR + minute * 60);
          expect((NEW_YEAR + minute * 60 - sun.start) % dt).toBe(0);
          // By the minute, of which every interval here is made.
          const k = sun.count >> 1;
          if (sun.step === step) return;
          let sum = 0;
          for (let t = 30; t < sun.step; t += 60) {
            const into = sun.start + k * sun.step + t - weather.start;
            sum += weather.directNormal[Math.floor(into / step)]!;
          }
          expect(sun.directNormal[k]).toBeCloseTo((60 * sum) / sun.step, 9);
        },
      ),
    );
  });
});

describe('a year of quarter-hourly sun through a south window', () => {
  const pane: Pane = {
    ...{ name: 'south', room: 0, area: 2, uValue: 1, gValue: 0.6 },
    ...{ frameShare: 0.3, unshaded: 1, azimuth: 180, tilt: 90 },
  };
  const home = bareHome([bareRoom('room', 40)], { panes: [pane] });
  const { latitude, longitude } = home.site;
  const high = (t: number): number =>
    Math.max(
      0,
      Math.sin((sunPosition(NEW_YEAR + t, latitude, longitude).elevation * Math.PI) / 180),
    );
  const yearly = (dt: number, course: Parameters<typeof steady>[0]): number => {
    const weather = steady(course, 365 * DAY, QUARTER);
    const site = { ...home.site, sky: 'even' as const };
    const { run } = recordRun(runInput({ home: { ...home, site }, weather }, { dt, hours: 8760 }));
    return total(run.ledger.energy.sun);
  };

  test('even light is the same at every step, to rounding', () => {
    const course = { diffuse: (t: number) => 300 * high(t + QUARTER / 2) };
    const exact = yearly(QUARTER, course);
    for (const dt of [600, 3600]) expect(yearly(dt, course) / exact).toBeCloseTo(1, 11);
  });

  test('direct sun is the same but for where the sun stands within a step', () => {
    const course = { direct: (t: number) => 900 * high(t + QUARTER / 2) ** 0.3 };
    const exact = yearly(QUARTER, course);
    // Within an hour the height of the sun is taken at its middle; chords of a sine fall short of
    // it by (15 degrees)^2/24 at most, and sunrise hours add less than that.
    for (const dt of [600, 3600]) {
      expect(Math.abs(yearly(dt, course) / exact - 1)).toBeLessThan(0.26 ** 2 / 24 + 0.003);
    }
  });
});
