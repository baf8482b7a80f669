import { describe, expect, test } from 'vitest';
import {
  saturationPressure,
  saturationPressureOverWater,
  saturationPressureSlope,
} from '../../../src/physics/moist-air/saturation-pressure.ts';
import { compare } from '../../reference/compare.ts';

const TOPIC = 'Moist air';

describe('saturationPressure', () => {
  test.each([
    [-20, 103.24],
    [-5, 401.74],
    [5, 872.6],
    [25, 3169.7],
    [50, 12351.3],
    [100, 101418],
  ])('%s °C has %s Pa in the handbook', (t, pressure) => {
    compare({
      topic: TOPIC,
      what: `saturation pressure at ${t} °C`,
      unit: 'Pa',
      source: 'ASHRAE Fundamentals (2017) ch. 1 table 3',
      mark: 'published arithmetic',
      expected: pressure,
      got: saturationPressure(t),
      tolerance: { relative: 0.0003 },
      because: 'the handbook puts its equations within 300 ppm of its tables',
    });
  });

  test('-60 °C has 1.08 Pa in the handbook', () => {
    compare({
      topic: TOPIC,
      what: 'saturation pressure at -60 °C',
      unit: 'Pa',
      source: 'ASHRAE Fundamentals (2017) ch. 1 table 3',
      mark: 'published arithmetic',
      expected: 1.08,
      got: saturationPressure(-60),
      tolerance: { absolute: 0.01 },
      because: 'the last digit printed',
    });
  });

  test.each([
    [-10, 259.9, 0.01],
    [0, 611.21, 0.01],
    [10, 1228.0, 0.1],
    [15, 1705.5, 0.1],
    [20, 2338.8, 0.1],
    [30, 4246.0, 0.1],
  ])('%s °C has %s Pa by another coding of the same equations', (t, pressure, absolute) => {
    compare({
      topic: TOPIC,
      what: `saturation pressure at ${t} °C, coded twice`,
      unit: 'Pa',
      source: 'Hyland and Wexler 1983, computed independently',
      mark: 'closed form',
      expected: pressure,
      // That computation takes 0 °C as liquid; the handbook parts the curves at 0.01 °C.
      got: t === 0 ? saturationPressureOverWater(t) : saturationPressure(t),
      tolerance: { absolute },
      because: 'the last digit printed, which has been rounded twice',
    });
  });

  test.each([0.01, 10, 20, 30])('%s °C agrees with the damp standard', (t) => {
    compare({
      topic: TOPIC,
      what: `saturation pressure at ${t} °C beside ISO 13788's own fit`,
      unit: 'Pa',
      source: 'ISO 13788:2012 annex E',
      mark: 'from memory',
      expected: 610.5 * Math.exp((17.269 * t) / (237.3 + t)),
      got: saturationPressure(t),
      tolerance: { relative: 0.002 },
      because: 'two fits of the same measurements; the fit there has four digits',
    });
  });

  test.each([-50, -40, -30, -20, -10, -1])('%s °C agrees with a later fit over ice', (t) => {
    const kelvin = t + 273.15;
    compare({
      topic: TOPIC,
      what: `saturation pressure over ice at ${t} °C beside a later fit`,
      unit: 'Pa',
      source: 'Murphy and Koop 2005, eq. 7',
      mark: 'published arithmetic',
      expected: Math.exp(
        9.550426 - 5723.265 / kelvin + 3.53068 * Math.log(kelvin) - 0.00728332 * kelvin,
      ),
      got: saturationPressure(t),
      tolerance: { relative: 0.00025 },
      because: 'the spread of the fits that the authors compare',
    });
  });

  test('rises over its whole range', () => {
    for (let t = -100; t < 200; t += 0.25) {
      expect(saturationPressure(t + 0.25)).toBeGreaterThan(saturationPressure(t));
    }
  });

  test('rises across the triple point, where ice ends', () => {
    const below = saturationPressure(0.01);
    const above = saturationPressure(0.01 + 1e-6);
    expect(above).toBeGreaterThan(below);
    expect(above / below - 1).toBeLessThan(1e-7);
  });

  test.each([-100.1, 200.1, Number.NaN, Number.POSITIVE_INFINITY])('refuses %s °C', (t) => {
    expect(() => saturationPressure(t)).toThrow(RangeError);
    expect(() => saturationPressureOverWater(t)).toThrow(RangeError);
    expect(() => saturationPressureSlope(t)).toThrow(RangeError);
  });

  test('says what was wrong, in which unit', () => {
    expect(() => saturationPressure(293.15)).toThrow(
      'saturationPressure: temperature must be between -100 and 200 °C, got 293.15 °C',
    );
  });
});

describe('saturationPressureOverWater', () => {
  test.each([
    [-10, 0.001],
    [-20, 0.001],
    [-30, 0.0025],
    [-40, 0.0075],
  ])('%s °C is within the promised %s of supercooled water', (t, promised) => {
    const kelvin = t + 273.15;
    const log = Math.log(kelvin);
    const cold = 53.878 - 1331.22 / kelvin - 9.44523 * log + 0.014025 * kelvin;
    compare({
      topic: TOPIC,
      what: `saturation pressure over supercooled water at ${t} °C`,
      unit: 'Pa',
      source: 'Murphy and Koop 2005, eq. 10',
      mark: 'published arithmetic',
      expected: Math.exp(
        54.842763 -
          6763.22 / kelvin -
          4.21 * log +
          0.000367 * kelvin +
          Math.tanh(0.0415 * (kelvin - 218.8)) * cold,
      ),
      got: saturationPressureOverWater(t),
      tolerance: { relative: promised },
      because: 'the liquid curve is extrapolated; this is what its description promises',
    });
  });

  test('is the same above the triple point and more below it', () => {
    for (const t of [0.02, 10, 50, 150]) {
      expect(saturationPressureOverWater(t)).toBe(saturationPressure(t));
    }
    for (const t of [-0.1, -10, -40]) {
      expect(saturationPressureOverWater(t)).toBeGreaterThan(saturationPressure(t));
    }
  });
});

test('saturationPressureSlope is the slope of saturationPressure', () => {
  const step = 1e-3;
  for (let t = -80; t <= 180; t += 1.7) {
    const rise = saturationPressure(t + step) - saturationPressure(t - step);
    // The central difference itself is good to step^2/6 p'''/p' and rounding, under 1e-8 here.
    expect(Math.abs(rise / (2 * step) / saturationPressureSlope(t) - 1)).toBeLessThan(1e-7);
  }
});
