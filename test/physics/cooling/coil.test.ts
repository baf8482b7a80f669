import { describe, expect, test } from 'vitest';
import { humidityRatioFromRelativeHumidity } from '../../../src/physics/moist-air/humidity-ratio.ts';
import { dryAirDensity } from '../../../src/physics/moist-air/moist-air-volume.ts';
import { compare } from '../../reference/compare.ts';
import { apparatusDewPoint, coilDuty } from '../../reference/physics/cooling/coil.ts';

const SEA_LEVEL = 101_325;
const airAt = (temperature: number, humidity: number) => ({
  temperature,
  humidityRatio: humidityRatioFromRelativeHumidity(temperature, humidity, SEA_LEVEL),
});

test('the surface of a coil follows from what goes in and comes out', () => {
  compare({
    topic: 'Cooling',
    what: 'coil surface, air 32 to 22 °C, bypass factor 0.3',
    unit: '°C',
    source: 'exercise in refrigeration and air conditioning, ques10.com, page 22999',
    mark: 'published arithmetic',
    expected: 17.71,
    got: apparatusDewPoint(32, 22, 0.3),
    tolerance: { absolute: 0.005 },
    because: 'last digit printed',
  });
});

// Saturation after the ASHRAE handbook, 400 m3/h measured where the air enters, 101 325 Pa; worked
// out apart from the program, four digits.
describe.each([
  [27, 50, 10, 0.15, 12.55, 8.157, 1894.3, 978.4, 1.3806],
  [26, 60, 10, 0.15, 12.4, 8.381, 1785.3, 1394.4, 1.969],
  [26, 40, 12, 0.2, 14.8, 8.368, 1480.2, 0, 0],
])('air of %s °C and %s %% over a coil of %s °C, bypass factor %s', (...row) => {
  const [temperature, humidity, surface, bypass, leaving, ratio, sensible, latent, drained] = row;
  const entering = airAt(temperature, humidity);
  const duty = coilDuty(entering, airAt(surface, 100), bypass);
  const flow = (400 / 3600) * dryAirDensity(temperature, entering.humidityRatio, SEA_LEVEL);

  test('leaves so cold and so dry', () => {
    expect(duty.out.temperature).toBeCloseTo(leaving, 3);
    expect(1000 * duty.out.humidityRatio).toBeCloseTo(ratio, 3);
  });

  test('gives up so much heat and water', () => {
    expect(Math.abs(flow * duty.sensible - sensible)).toBeLessThan(1);
    expect(Math.abs(flow * duty.latent - latent)).toBeLessThan(1);
    expect(Math.abs(3600 * flow * duty.water - drained)).toBeLessThan(0.001);
  });
});
