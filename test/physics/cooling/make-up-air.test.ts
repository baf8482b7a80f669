import { describe, expect, test } from 'vitest';
import { makeUpAirHeat } from '../../reference/physics/cooling/make-up-air.ts';

const ROOM = { temperature: 26.7, humidityRatio: 0.0112 };
const HOT = { temperature: 35, humidityRatio: 0.0141 };
const WARM = { temperature: 28.3, humidityRatio: 0.01086 };

// Air of the rating of portable units, from memory; 250 m3/h of 1.18 kg/m3; worked by hand.
describe('air that a duct of 250 m3/h draws in', () => {
  const flow = (250 / 3600) * 1.18;

  test.each([
    ['hot and moist', HOT, 684.2, 586.5],
    ['warm and drier than the room', WARM, 131.9, -68.8],
  ] as const)('brings so much heat and water where it is %s', (_, outdoors, sensible, latent) => {
    const heat = makeUpAirHeat(flow, outdoors, ROOM);
    expect(heat.sensible).toBeCloseTo(sensible, 1);
    expect(heat.latent).toBeCloseTo(latent, 1);
  });
});
