import { describe, test } from 'vitest';
import { dewPoint } from '../../../src/physics/moist-air/dew-point.ts';
import {
  humidityRatioFromRelativeHumidity,
  humidityRatioFromVapourPressure,
  vapourPressureFromHumidityRatio,
} from '../../../src/physics/moist-air/humidity-ratio.ts';
import {
  dryAirDensity,
  moistAirSpecificVolume,
} from '../../../src/physics/moist-air/moist-air-volume.ts';
import {
  relativeHumidity,
  vapourPressureFromRelativeHumidity,
} from '../../../src/physics/moist-air/relative-humidity.ts';
import { saturationPressureOverWater } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { standardPressure } from '../../../src/physics/moist-air/standard-pressure.ts';
import { vapourDensity } from '../../../src/physics/moist-air/vapour-density.ts';
import { type Comparison, compare } from '../../reference/compare.ts';
import { moistAirEnthalpy } from '../../reference/physics/moist-air/moist-air-enthalpy.ts';
import { humidityRatioFromWetBulb } from '../../reference/physics/moist-air/wet-bulb.ts';

const SEA_LEVEL = 101_325;
const HANDBOOK = { topic: 'Moist air', mark: 'published arithmetic' } as const;
const TABLE_2 = 'ASHRAE Fundamentals (2017) ch. 1 table 2';
const REAL_GAS = 'the tables are of real gases, the equations of ideal ones';

const saturated = (t: number): number => humidityRatioFromRelativeHumidity(t, 100, SEA_LEVEL);

describe('saturated air', () => {
  test.each([
    [-50, 2.43e-5, 0.005],
    [-20, 6.373e-4, 0.01],
    [-5, 0.0024863, 0.005],
    [5, 0.005425, 0.005],
    [25, 0.020173, 0.005],
    [50, 0.086863, 0.01],
  ])('%s °C carries %s kg/kg', (t, expected, relative) => {
    compare({
      ...HANDBOOK,
      what: `humidity ratio of saturated air at ${t} °C`,
      unit: 'kg/kg',
      source: TABLE_2,
      expected,
      got: saturated(t),
      tolerance: { relative },
      because: REAL_GAS,
    });
  });

  test.each([
    [10, 0.00763, 5e-6],
    [20, 0.014695, 5e-7],
  ])('%s °C carries %s kg/kg by another coding', (t, expected, absolute) => {
    compare({
      topic: 'Moist air',
      mark: 'closed form',
      what: `humidity ratio of saturated air at ${t} °C, coded twice`,
      unit: 'kg/kg',
      source: 'Hyland and Wexler 1983, computed independently',
      expected,
      got: saturated(t),
      tolerance: { absolute },
      because: 'the last digit printed',
    });
  });

  test.each([
    [-20, -18542, 0.01],
    [-5, 1164, 0.03],
    [5, 18639, 0.01],
    [25, 76504, 0.01],
    [50, 275353, 0.01],
  ])('%s °C holds %s J/kg', (t, expected, relative) => {
    compare({
      ...HANDBOOK,
      what: `enthalpy of saturated air at ${t} °C`,
      unit: 'J/kg',
      source: TABLE_2,
      expected,
      got: moistAirEnthalpy(t, saturated(t)),
      tolerance: { relative },
      because: t === -5 ? `${REAL_GAS}; near the zero of the scale` : REAL_GAS,
    });
  });
});

const CASES: readonly Omit<Comparison, 'topic' | 'mark'>[] = [
  {
    what: 'specific volume of dry air at 25 °C',
    unit: 'm3/kg',
    source: TABLE_2,
    expected: 0.8443,
    got: moistAirSpecificVolume(25, 0, SEA_LEVEL),
    tolerance: { relative: 0.001 },
    because: REAL_GAS,
  },
  {
    what: 'specific volume at 30 °C, 0.02 kg/kg, 95 461 Pa',
    unit: 'm3/kg',
    source: 'tests of psychrolib, after ASHRAE Fundamentals (2017) ch. 1 eq. 26',
    expected: 0.940855,
    got: moistAirSpecificVolume(30, 0.02, 95_461),
    tolerance: { relative: 0.0003 },
    because: 'what that table claims',
  },
  {
    what: 'density at 30 °C, 0.02 kg/kg, 95 461 Pa',
    unit: 'kg/m3',
    source: 'tests of psychrolib, after ASHRAE Fundamentals (2017) ch. 1 eq. 11',
    expected: 1.08412,
    got: 1.02 * dryAirDensity(30, 0.02, 95_461),
    tolerance: { relative: 0.0003 },
    because: 'what that table claims',
  },
  {
    what: 'humidity ratio of 3169.7 Pa at 95 461 Pa',
    unit: 'kg/kg',
    source: 'tests of psychrolib, after ASHRAE Fundamentals (2017) ch. 1 eq. 20',
    expected: 0.0213603998047487,
    got: humidityRatioFromVapourPressure(3169.7, 95_461),
    tolerance: { absolute: 1e-6 },
    because: 'what that table claims',
  },
  ...[
    [-500, 107_478],
    [500, 95_461],
    [1000, 89_875],
    [4000, 61_640],
  ].map(([elevation = 0, expected = 0]) => ({
    what: `standard pressure at ${elevation} m`,
    unit: 'Pa',
    source: 'ASHRAE Fundamentals (2017) ch. 1 table 1',
    expected,
    got: standardPressure(elevation),
    tolerance: { absolute: 1 },
    because: 'the last digit printed',
  })),
];

const ORACLES: typeof CASES = [
  {
    what: 'enthalpy of dry air at 25 °C',
    unit: 'J/kg',
    source: TABLE_2,
    expected: 25148,
    got: moistAirEnthalpy(25, 0),
    tolerance: { relative: 0.0003 },
    because: REAL_GAS,
  },
  {
    what: 'enthalpy at 30 °C and 0.02 kg/kg',
    unit: 'J/kg',
    source: 'tests of psychrolib, after ASHRAE Fundamentals (2017) ch. 1 eq. 30',
    expected: 81316,
    got: moistAirEnthalpy(30, 0.02),
    tolerance: { relative: 0.0003 },
    because: 'what that table claims',
  },
  {
    what: 'humidity ratio of 30 °C dry, 25 °C wet at 95 461 Pa',
    unit: 'kg/kg',
    source: 'tests of psychrolib, after ASHRAE Fundamentals (2017) ch. 1 eq. 33',
    expected: 0.0192281274241096,
    got: humidityRatioFromWetBulb(30, 25, 95_461),
    tolerance: { relative: 0.0003 },
    because: 'what that table claims',
  },
  {
    what: 'humidity ratio of -1 °C dry, -5 °C iced at 95 461 Pa',
    unit: 'kg/kg',
    source: 'tests of psychrolib, after ASHRAE Fundamentals (2017) ch. 1 eq. 35',
    expected: 0.00120399819933844,
    got: humidityRatioFromWetBulb(-1, -5, 95_461),
    tolerance: { relative: 0.0003 },
    because: 'what that table claims',
  },
];

test.each(CASES)('$what is $expected $unit', (row) => compare({ ...HANDBOOK, ...row }));
test.each(ORACLES)('$what is $expected $unit', (row) => compare({ ...HANDBOOK, ...row }));

test('the handbook reads 40 °C dry, 20 °C wet from its chart', () => {
  const w = humidityRatioFromWetBulb(40, 20, SEA_LEVEL);
  const pv = vapourPressureFromHumidityRatio(w, SEA_LEVEL);
  const rows = [
    ['humidity ratio', 'kg/kg', 0.0065, w, 0.0001],
    ['dew point', '°C', 7, dewPoint(pv), 0.5],
    ['relative humidity', '%', 14, relativeHumidity(pv, 40), 1],
    ['enthalpy', 'kJ/kg', 56.7, moistAirEnthalpy(40, w) / 1000, 0.1],
    ['specific volume', 'm3/kg', 0.896, moistAirSpecificVolume(40, w, SEA_LEVEL), 0.009],
  ] as const;
  for (const [what, unit, expected, got, absolute] of rows) {
    compare({
      ...HANDBOOK,
      what: `${what} of 40 °C dry, 20 °C wet`,
      unit,
      source: 'ASHRAE Fundamentals (2017) ch. 1 example 1',
      expected,
      got,
      tolerance: { absolute },
      because: 'read from a chart there',
    });
  }
});

test.each([
  [10, 3.8, 110],
  [0, 7.0, 210],
])('airing at %s °C outside removes %s g/m3', (outside, expected, hourly) => {
  const inside = vapourDensity(vapourPressureFromRelativeHumidity(20, 60), 20);
  const incoming = vapourDensity(0.7 * saturationPressureOverWater(outside), outside);
  const source = 'solar housing handbook ch. 10.1 (northernarchitecture.us)';
  compare({
    ...HANDBOOK,
    what: `vapour removed a cubic metre, 20 °C and 60 % inside, ${outside} °C and 70 % outside`,
    unit: 'g/m3',
    source,
    expected,
    got: inside - incoming,
    tolerance: { absolute: 0.05 },
    because: 'half the last digit printed',
  });
  compare({
    ...HANDBOOK,
    what: `vapour removed an hour by 30 m3/h, ${outside} °C outside`,
    unit: 'g/h',
    source,
    expected: hourly,
    got: 30 * (inside - incoming),
    tolerance: { absolute: 5 },
    because: 'half the last digit printed',
  });
});
