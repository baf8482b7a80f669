import { describe, expect, test } from 'vitest';
import { compare, compareBand } from '../../reference/compare.ts';
import {
  HOME_QUALITY,
  heatPumpCop,
  MACHINE_QUALITY,
} from '../../reference/physics/heating/heat-pump-cop.ts';
import { idealHeatingCop } from '../../reference/physics/heating/ideal-heating-cop.ts';

const TOPIC = 'Heating';
const NAN = Number.NaN;
const TABLE = 'table of heat pumps by output temperature in a public encyclopedia, "Heat pump"';

describe('heatPumpCop', () => {
  test.each([
    [0, 35, 8.8],
    [0, 45, 7.1],
    [0, 55, 6.0],
    [0, 65, 5.2],
    [-20, 35, 5.6],
    [-20, 65, 4.0],
    [10, 35, 12.3],
    [10, 85, 4.8],
  ])('from %s to %s °C the ideal is %s', (source, water, expected) => {
    compare({
      topic: TOPIC,
      what: `ideal COP from ${source} to ${water} °C`,
      unit: '-',
      source: TABLE,
      mark: 'published',
      expected,
      got: idealHeatingCop(source, water),
      tolerance: { absolute: 0.06 },
      because: 'the last digit printed, 273 for 273.15',
    });
  });

  test.each([
    [0, 35, 3.8],
    [0, 45, 2.8],
    [0, 55, 2.2],
    [0, 65, 2.0],
    [-20, 35, 2.2],
    [-20, 45, 2.0],
  ])('from air of %s to water of %s °C good machines reach %s', (source, water, printed) => {
    compareBand({
      topic: TOPIC,
      what: `COP of a good air-source heat pump, air ${source} °C, water ${water} °C`,
      unit: '-',
      source: TABLE,
      mark: 'published',
      low: 0.9 * printed,
      high: 1.1 * printed,
      got: heatPumpCop(source, water, MACHINE_QUALITY),
      because: 'one quality grade, chosen on these six; machines differ by more than 10 %',
    });
  });

  test.each([
    ['a year', 6, 42, 2.8],
    ['a year, later average', 6, 42, 2.93],
    ['the coldest day', -2, 47, 2.44],
  ])('in homes: %s, %s °C outdoors, water %s °C', (when, outdoor, water, printed) => {
    compareBand({
      topic: TOPIC,
      what: `seasonal performance of air-source heat pumps in homes, ${when}`,
      unit: '-',
      source: 'UK heat pump demonstration, 742 homes: median performance factor',
      mark: 'published',
      low: 0.9 * printed,
      high: 1.1 * printed,
      got: heatPumpCop(outdoor, water),
      because: `quality ${HOME_QUALITY} was chosen on these; outdoors and water are our guess, worth 10 %`,
    });
  });

  test('is better from warmer air into cooler water, and in proportion to quality', () => {
    const cop = heatPumpCop(0, 45, 0.4);
    expect(heatPumpCop(1, 45, 0.4)).toBeGreaterThan(cop);
    expect(heatPumpCop(0, 46, 0.4)).toBeLessThan(cop);
    expect(heatPumpCop(0, 45, 0.2)).toBeCloseTo(cop / 2, 12);
    expect(cop).toBeCloseTo(0.4 * idealHeatingCop(0, 45), 12);
  });

  test('stays finite where hardly any lift is left, and never falls below a heating rod', () => {
    expect(heatPumpCop(30, 30)).toBe(heatPumpCop(10, 30));
    expect(heatPumpCop(40, 30)).toBe(heatPumpCop(10, 30));
    expect(heatPumpCop(-60, 90, 0.1)).toBe(1);
  });

  test.each([
    ['no outdoors', () => heatPumpCop(NAN, 45)],
    ['no water', () => heatPumpCop(0, NAN)],
    ['kelvins', () => heatPumpCop(273, 318)],
    ['quality in percent', () => heatPumpCop(0, 45, 40)],
    ['no quality', () => heatPumpCop(0, 45, NAN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});
