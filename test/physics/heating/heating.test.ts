import { describe, expect, test } from 'vitest';
import { outputAtExcess } from '../../../src/physics/heating/radiator-output.ts';
import { compare, compareBand } from '../../reference/compare.ts';
import { idealHeatingCop } from '../../reference/physics/heating/ideal-heating-cop.ts';
import { type Setback, setbackSaving } from '../../reference/physics/heating/setback-saving.ts';
import { setpointSaving } from '../../reference/physics/heating/setpoint-saving.ts';
import { utilisationFactor } from '../../reference/physics/heating/utilisation-factor.ts';
import { warmUpTime } from '../../reference/physics/heating/warm-up-time.ts';

const TOPIC = 'Heating';
const NAN = Number.NaN;

describe('outputAtExcess', () => {
  test.each([
    [5, 0.05],
    [10, 0.123],
    [15, 0.209],
    [20, 0.304],
    [25, 0.406],
    [30, 0.515],
    [35, 0.629],
    [40, 0.748],
    [45, 0.872],
    [50, 1],
    [55, 1.132],
    [60, 1.267],
    [65, 1.406],
    [70, 1.549],
    [75, 1.694],
  ])('%s K gives %s of the rating at 50 K', (excess, factor) => {
    compare({
      topic: TOPIC,
      what: `radiator at ${excess} K over its rating at 50 K, n = 1.3`,
      unit: '-',
      source: 'correction table for radiators (buildingservicesindex.co.uk)',
      mark: 'published arithmetic',
      expected: factor,
      got: outputAtExcess(1, 50, 1.3, excess),
      tolerance: { absolute: 0.0005 },
      because: 'half the last digit printed',
    });
  });

  test('gives nothing at the temperature of the room, and its rating at its rating', () => {
    expect(outputAtExcess(1000, 50, 1.3, 0)).toBe(0);
    expect(outputAtExcess(1500, 30, 1.1, 30)).toBe(1500);
  });
});

describe('setbackSaving', () => {
  const NIGHT: Setback = { indoor: 20, outdoor: 5, depth: 4, hours: 8, timeConstant: 20 };

  test.each([
    [0, 8.89],
    [10, 7.25],
    [20, 5.62],
    [40, 3.12],
    [80, 1.61],
    [160, 0.82],
  ])('a home of time constant %s h saves %s %%', (timeConstant, percent) => {
    compare({
      topic: TOPIC,
      what: `setback of 4 K for 8 h, 20 °C in, 5 °C out, time constant ${timeConstant} h`,
      unit: '%',
      source: 'one heat capacity, worked out independently',
      mark: 'closed form',
      expected: percent,
      got: 100 * setbackSaving({ ...NIGHT, timeConstant }),
      tolerance: { absolute: 0.05 },
      because: 'computed there by steps',
    });
  });

  test('agrees with stepping through the night', () => {
    for (const timeConstant of [3, 20, 200]) {
      const steps = 200_000;
      const dt = 24 / steps;
      let indoor = 20;
      let heat = 0;
      for (let i = 0; i < steps; i++) {
        const setpoint = i * dt < 8 ? 16 : 20;
        const free = 5 + (indoor - 5) * Math.exp(-dt / timeConstant);
        const next = Math.max(free, setpoint);
        heat += ((next - free) * timeConstant) / (1 - Math.exp(-dt / timeConstant)) / timeConstant;
        indoor = next;
      }
      const full = steps * 15;
      const saved = 1 - (heat * dt) / (full * dt);
      // Recovery is one step of dt at full loss: an error of the order of the step, 1.2e-4 h in 24.
      expect(setbackSaving({ ...NIGHT, timeConstant })).toBeCloseTo(saved, 4);
    }
  });

  test('lies in what field advice promises', () => {
    const rows = [
      ['7 to 10 °F for 8 h a day save up to 10 %', 8.5 / 1.8, 0, 10],
      ['10 to 15 °F for 8 h a night save 5 to 15 %', 12.5 / 1.8, 5, 15],
    ] as const;
    for (const [advice, depth, low, high] of rows) {
      for (const timeConstant of [10, 20]) {
        compareBand({
          topic: TOPIC,
          what: `${advice}; time constant ${timeConstant} h`,
          unit: '%',
          source: 'university extension advice (umaine.edu), partly quoting US DOE',
          mark: 'published',
          low,
          high,
          got: 100 * setbackSaving({ ...NIGHT, depth, timeConstant }),
          because: 'the range printed; timber houses, as are common where the advice is given',
        });
      }
    }
  });

  test('a heavy home stays below what that advice promises', () => {
    const masonry = { ...NIGHT, depth: 12.5 / 1.8, timeConstant: 50 };
    expect(100 * setbackSaving(masonry)).toBeLessThan(5);
  });

  test('a deeper, longer or lighter one saves more; none saves nothing', () => {
    const saved = setbackSaving(NIGHT);
    expect(setbackSaving({ ...NIGHT, depth: 5 })).toBeGreaterThan(saved);
    expect(setbackSaving({ ...NIGHT, hours: 9 })).toBeGreaterThan(saved);
    expect(setbackSaving({ ...NIGHT, timeConstant: 19 })).toBeGreaterThan(saved);
    expect(setbackSaving({ ...NIGHT, depth: 0 })).toBe(0);
    expect(setbackSaving({ ...NIGHT, hours: 0 })).toBe(0);
    expect(setbackSaving({ ...NIGHT, depth: 15, hours: 24, timeConstant: 0 })).toBe(1);
    expect(setbackSaving({ ...NIGHT, depth: 15 })).toBeGreaterThan(saved);
  });

  test('refuses what is no setback, in words', () => {
    expect(() => setbackSaving({ ...NIGHT, outdoor: 20 })).toThrow(
      'setbackSaving: outdoor must be below indoor, which is 20 °C, got 20 °C',
    );
    expect(() => setbackSaving({ ...NIGHT, depth: 16 })).toThrow(
      'setbackSaving: depth must be between 0 and 15 K, got 16 K',
    );
    for (const key of ['indoor', 'outdoor', 'depth', 'hours', 'timeConstant'] as const) {
      expect(() => setbackSaving({ ...NIGHT, [key]: NAN }), key).toThrow(RangeError);
    }
  });
});

describe('setpointSaving', () => {
  test.each([
    [16.7, 6, 'energy agencies of Luxembourg and South Tyrol'],
    [10, 10, 'D. MacKay, Sustainable Energy, ch. E (degree-days of Cambridge)'],
  ])('a winter %s K below saves %s %% a kelvin', (difference, percent, source) => {
    compare({
      topic: TOPIC,
      what: `saving a kelvin at a mean difference of ${difference} K`,
      unit: '%/K',
      source,
      mark: 'published arithmetic',
      expected: percent,
      got: 100 * setpointSaving(difference),
      tolerance: { absolute: 0.5 },
      because: 'half the last digit printed',
    });
  });

  test('refuses no difference', () => {
    for (const d of [0, -5, NAN]) expect(() => setpointSaving(d)).toThrow(RangeError);
  });
});

describe('utilisationFactor', () => {
  test('half as much gain as loss at a = 3', () => {
    compare({
      topic: TOPIC,
      what: 'utilisation factor, gains half of losses, a = 3',
      unit: '-',
      source: 'ISO 13790:2008',
      mark: 'closed form',
      expected: 0.9333,
      got: utilisationFactor(0.5, 3),
      tolerance: { absolute: 5e-5 },
      because: 'half the last digit printed',
    });
  });

  test('is the formula as it is printed, also where gains exceed losses', () => {
    for (const g of [0.01, 0.3, 0.9, 1.1, 2, 7]) {
      for (const a of [1, 2.3, 6]) {
        expect(utilisationFactor(g, a)).toBeCloseTo((1 - g ** a) / (1 - g ** (a + 1)), 12);
      }
    }
  });

  test('passes smoothly through gains equal to losses', () => {
    expect(utilisationFactor(1, 3)).toBe(0.75);
    expect(utilisationFactor(1 + 1e-9, 3)).toBeCloseTo(0.75, 8);
    expect(utilisationFactor(1 - 1e-9, 3)).toBeCloseTo(0.75, 8);
  });

  test('falls from 1 and never uses more heat than is lost', () => {
    expect(utilisationFactor(0, 3)).toBe(1);
    let before = 1;
    for (let g = 0.05; g < 50; g *= 1.1) {
      const eta = utilisationFactor(g, 3);
      expect(eta).toBeLessThan(before);
      expect(eta * g).toBeLessThan(1);
      before = eta;
    }
    expect(utilisationFactor(1e6, 1000)).toBeCloseTo(1e-6, 12);
  });

  test.each([
    [NAN, 3],
    [-0.1, 3],
    [0.5, NAN],
    [0.5, 0],
  ])('refuses %s and %s', (g, a) => {
    expect(() => utilisationFactor(g, a)).toThrow(RangeError);
  });
});

describe('warmUpTime', () => {
  test('6 K with power for 20 K more', () => {
    compare({
      topic: TOPIC,
      what: 'warm-up from 14 to 20 °C, time constant 20 h, 40 °C reachable',
      unit: 'h',
      source: 'one heat capacity, worked out independently',
      mark: 'closed form',
      expected: 5.25,
      got: warmUpTime(20, 14, 20, 40),
      tolerance: { absolute: 0.005 },
      because: 'half the last digit printed',
    });
  });

  test('is nothing when warm, and for ever when power is short', () => {
    expect(warmUpTime(20, 21, 20, 40)).toBe(0);
    expect(warmUpTime(20, 14, 20, 20)).toBe(Number.POSITIVE_INFINITY);
    expect(warmUpTime(20, 14, 20, 19)).toBe(Number.POSITIVE_INFINITY);
    expect(warmUpTime(20, 14, 20, 41)).toBeLessThan(warmUpTime(20, 14, 20, 40));
  });

  test.each([
    [NAN, 14, 20, 40],
    [20, NAN, 20, 40],
    [20, 14, NAN, 40],
    [20, 14, 20, NAN],
    [-1, 14, 20, 40],
  ])('refuses %s, %s, %s, %s', (tau, start, target, reachable) => {
    expect(() => warmUpTime(tau, start, target, reachable)).toThrow(RangeError);
  });
});

describe('idealHeatingCop', () => {
  test('0 to 20 °C is 14.66', () => {
    compare({
      topic: TOPIC,
      what: 'ideal heating COP from 0 to 20 °C',
      unit: '-',
      source: 'Carnot, computed independently',
      mark: 'closed form',
      expected: 14.66,
      got: idealHeatingCop(0, 20),
      tolerance: { absolute: 0.005 },
      because: 'half the last digit printed',
    });
  });

  test('warmer water costs more work', () => {
    expect(idealHeatingCop(0, 55)).toBeLessThan(idealHeatingCop(0, 35));
  });

  test('refuses to lift downwards', () => {
    expect(() => idealHeatingCop(20, 20)).toThrow(
      'idealHeatingCop: sink must be warmer than the source, which has 20 °C, got 20 °C',
    );
    expect(() => idealHeatingCop(NAN, 20)).toThrow(RangeError);
    expect(() => idealHeatingCop(0, NAN)).toThrow(RangeError);
  });
});
