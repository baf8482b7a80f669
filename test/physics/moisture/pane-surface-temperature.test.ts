import { expect, test } from 'vitest';
import { dewPoint } from '../../../src/physics/moist-air/dew-point.ts';
import { saturationPressure } from '../../../src/physics/moist-air/saturation-pressure.ts';
import { compare } from '../../reference/compare.ts';
import {
  outdoorAtFirstCondensation,
  paneSurfaceTemperature,
} from '../../reference/physics/moisture/pane-surface-temperature.ts';

const dew = (temperature: number, humidity: number): number =>
  dewPoint((humidity / 100) * saturationPressure(temperature));

test('when panes begin to run', () => {
  compare({
    topic: 'Surface damp',
    what: 'outdoor temperature at which single glass begins to run, 18.3 °C and 50 % inside',
    unit: '°C',
    source: 'engineeringtoolbox.com, chart of condensation on windows',
    mark: 'published',
    expected: 6,
    got: outdoorAtFirstCondensation(6, 0.13, 18.3, dew(18.3, 50)),
    tolerance: { absolute: 2.5 },
    because: 'read off a chart that does not state its film; 0.13 instead of 0.15 m2 K/W is 1.5 K',
  });
  compare({
    topic: 'Surface damp',
    what: 'double glazing (U 2.9), 20 °C inside, -10 °C outside',
    unit: '°C',
    source: 'steady state with an inner resistance of 0.13 m2 K/W',
    mark: 'closed form',
    expected: 8.7,
    got: paneSurfaceTemperature(2.9, 0.13, 20, -10),
    tolerance: { absolute: 0.05 },
    because: 'worked out to a tenth',
  });
});

test('the chart of a double pane: 60 % runs at -10 °C', () => {
  expect(paneSurfaceTemperature(2.9, 0.13, 20, -10)).toBeLessThan(dew(20, 60));
});

test('the two formulas undo each other', () => {
  const outdoor = outdoorAtFirstCondensation(1.4, 0.13, 20, 12);
  expect(paneSurfaceTemperature(1.4, 0.13, 20, outdoor)).toBeCloseTo(12, 12);
  expect(paneSurfaceTemperature(1.4, 0.13, 20, 20)).toBe(20);
});
