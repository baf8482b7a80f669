import { describe, expect, test } from 'vitest';
import { compare } from '../../reference/compare.ts';
import {
  basalMetabolicRate,
  carbonDioxidePerPerson,
} from '../../reference/physics/air-quality/carbon-dioxide-per-person.ts';
import {
  airChangesFromDecay,
  concentrationAfter,
  type MixedRoom,
  steadyConcentration,
} from '../../reference/physics/air-quality/concentration.ts';
import { infiltrationFactor } from '../../reference/physics/air-quality/infiltration-factor.ts';
import {
  cleanAirDeliveryRate,
  shareLeftByPurifier,
} from '../../reference/physics/air-quality/purifier.ts';

const TOPIC = 'Air quality';
const NAN = Number.NaN;
const PPM = 1e6;
const ROOM_RULE =
  'AHAM rule of room size: 1.55 ft2 a ft3/min of smoke takes 80 % away at one air change an hour (usairpurifiers.com, interpret-aham-cadr-chart)';

describe('carbonDioxidePerPerson', () => {
  test('a man at rest', () => {
    compare({
      topic: TOPIC,
      what: 'carbon dioxide of a man of 8.24 MJ/d at 1 met',
      unit: 'L/s',
      source: 'Persily and de Jonge 2017',
      mark: 'from memory',
      expected: 0.00399,
      got: carbonDioxidePerPerson(1, 8.24),
      tolerance: { relative: 0.03 },
      because: 'three digits, and a rounded constant of the equation',
    });
  });

  test('counts the same gas as more litres where it is warm or thin', () => {
    const cold = carbonDioxidePerPerson(1, 6);
    expect(carbonDioxidePerPerson(1, 6, 20) / cold).toBeCloseTo(293.15 / 273.15, 12);
    expect(carbonDioxidePerPerson(1, 6, 0, 101_325 / 2)).toBeCloseTo(2 * cold, 12);
    expect(carbonDioxidePerPerson(2, 6)).toBeCloseTo(2 * cold, 12);
  });

  test('a body burns more the heavier it is, and knows no jump of a quarter between ages', () => {
    for (const sex of ['female', 'male'] as const) {
      for (const age of [0, 3, 10, 18, 30, 60, 90]) {
        const mass = Math.min(70, 4 + 3.2 * age);
        const rate = basalMetabolicRate(sex, age, mass);
        expect(basalMetabolicRate(sex, age, mass + 1)).toBeGreaterThan(rate);
        if (age > 0) {
          expect(Math.abs(basalMetabolicRate(sex, age - 0.01, mass) / rate - 1)).toBeLessThan(0.25);
        }
      }
    }
  });

  test('the man of 8.24 MJ/d has 84.9 kg', () => {
    compare({
      topic: TOPIC,
      what: 'basal metabolic rate of a man of 25 years and 84.9 kg',
      unit: 'MJ/d',
      source: 'Persily and de Jonge 2017, table of occupants',
      mark: 'from memory',
      expected: 8.24,
      got: basalMetabolicRate('male', 25, 84.9),
      tolerance: { absolute: 0.01 },
      because: 'the last digit printed',
    });
  });

  test.each([
    ['no activity', () => carbonDioxidePerPerson(NAN, 8)],
    ['watts for met', () => carbonDioxidePerPerson(120, 8)],
    ['no body', () => carbonDioxidePerPerson(1, NAN)],
    ['kilocalories', () => carbonDioxidePerPerson(1, 1800)],
    ['kilopascals', () => carbonDioxidePerPerson(1, 8, 20, 101)],
    ['no temperature', () => carbonDioxidePerPerson(1, 8, NAN)],
    ['no quotient', () => carbonDioxidePerPerson(1, 8, 20, 101_325, NAN)],
    ['no age', () => basalMetabolicRate('male', NAN, 80)],
    ['no mass', () => basalMetabolicRate('male', 40, NAN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});

describe('a mixed room', () => {
  const bedroom: MixedRoom = {
    outdoor: 400,
    source: (27.2e-3 / 3600) * PPM,
    flow: 15 / 3600,
    volume: 30,
  };
  const cinema = { source: (5 / 3600) * PPM, flow: 500 / 3600, volume: 500 };

  test.each([
    {
      what: 'rise over outdoors, 0.0052 L/s at 7.5 L/s',
      source: '0.0052 L/s over 7.5 L/s; ASHRAE technical FAQ 35 prints about 700 ppm at that flow',
      mark: 'closed form' as const,
      expected: 693,
      absolute: 0.5,
      got: steadyConcentration({ outdoor: 0, source: 5.2, flow: 7.5e-3, volume: 50 }),
    },
    {
      what: 'level at 8.33 L/s a person of 0.3 L/min, 400 ppm outdoors',
      source: 'exercise on a study site, inputs published',
      mark: 'closed form' as const,
      expected: 1000,
      absolute: 0.5,
      got: steadyConcentration({ outdoor: 400, source: 5, flow: 8.33e-3, volume: 50 }),
    },
    {
      what: 'bedroom of 30 m3, two asleep, 0.5 air changes, for ever',
      source: 'mixed room, worked out independently',
      mark: 'closed form' as const,
      expected: 2213,
      absolute: 1,
      got: steadyConcentration(bedroom),
    },
    {
      what: 'the same after 8 h from 400 ppm',
      source: 'mixed room, worked out independently',
      mark: 'closed form' as const,
      expected: 2180,
      absolute: 1,
      got: concentrationAfter(bedroom, 400, 8 * 3600),
    },
    {
      what: 'cinema, 100 people, one air change, after 1 h, 400 ppm outdoors',
      source: 'engineeringtoolbox.com, recomputed from its inputs (it prints 6700)',
      mark: 'published arithmetic' as const,
      expected: 6721,
      absolute: 67,
      got: concentrationAfter({ outdoor: 400, ...cinema }, 400, 3600),
    },
    {
      what: 'the same without any outdoors',
      source: 'engineeringtoolbox.com (it prints 0.006)',
      mark: 'published arithmetic' as const,
      expected: 6300,
      absolute: 63,
      got: concentrationAfter({ outdoor: 0, ...cinema }, 0, 3600),
    },
  ])('$what', ({ what, source, mark, expected, absolute, got }) => {
    compare({
      topic: TOPIC,
      what,
      unit: 'ppm',
      source,
      mark,
      expected,
      got,
      tolerance: { absolute },
      because: absolute > 1 ? '1 %: printed with two digits' : 'the last digit printed',
    });
  });

  test('air changes from a decay', () => {
    compare({
      topic: TOPIC,
      what: 'air changes from 1500 to 800 ppm in 2 h, 400 outdoors',
      unit: '1/h',
      source: 'mixed room, worked out independently',
      mark: 'closed form',
      expected: 0.506,
      got: airChangesFromDecay(1500, 800, 400, 2),
      tolerance: { absolute: 0.0005 },
      because: 'half the last digit printed',
    });
  });

  test('the decay undoes itself', () => {
    const quiet = { ...bedroom, source: 0 };
    const later = concentrationAfter(quiet, 1500, 5400);
    expect(airChangesFromDecay(1500, later, 400, 1.5)).toBeCloseTo(0.5, 12);
  });

  test('two hours are one hour twice, and for ever is the steady level', () => {
    const room = { ...bedroom, loss: 1e-4 };
    const once = concentrationAfter(room, 900, 3600);
    expect(concentrationAfter(room, once, 3600)).toBeCloseTo(
      concentrationAfter(room, 900, 7200),
      9,
    );
    expect(concentrationAfter(room, 900, 1e9)).toBeCloseTo(steadyConcentration(room), 9);
    expect(concentrationAfter(room, 900, 0)).toBe(900);
  });

  test('a sealed room fills up without end, straight', () => {
    const sealed = { outdoor: 400, source: 5, flow: 0, volume: 30 };
    expect(concentrationAfter(sealed, 400, 3600)).toBeCloseTo(400 + (5 * 3600) / 30, 9);
    expect(steadyConcentration(sealed)).toBe(Number.POSITIVE_INFINITY);
    // Nearly sealed is nearly the same: nothing is lost in the difference of two near numbers.
    expect(concentrationAfter({ ...sealed, flow: 1e-12 }, 400, 3600)).toBeCloseTo(1000, 6);
  });

  test('twice the volume halves the first rise and leaves the end alone', () => {
    const large = { ...bedroom, volume: 60 };
    const rise = (room: MixedRoom): number => concentrationAfter(room, 400, 1) - 400;
    expect(rise(bedroom) / rise(large)).toBeCloseTo(2, 3);
    expect(steadyConcentration(large)).toBe(steadyConcentration(bedroom));
  });

  test('refuses in words what no room has', () => {
    expect(() => steadyConcentration({ ...bedroom, flow: -1 })).toThrow(
      'mixed room: flow must be between 0 and 1000000000000 m3/s, got -1 m3/s',
    );
    for (const key of ['outdoor', 'source', 'flow', 'volume', 'loss'] as const) {
      expect(() => steadyConcentration({ ...bedroom, [key]: NAN }), key).toThrow(RangeError);
    }
    expect(() => concentrationAfter(bedroom, NAN, 1)).toThrow(RangeError);
    expect(() => concentrationAfter(bedroom, 400, -1)).toThrow(RangeError);
    expect(() => airChangesFromDecay(800, 1500, 400, 2)).toThrow(
      'airChangesFromDecay: the concentration must fall and stay above outdoors, ' +
        'got 800 to 1500 with 400 outdoors',
    );
    expect(() => airChangesFromDecay(800, 400, 400, 2)).toThrow(RangeError);
    expect(() => airChangesFromDecay(NAN, 500, 400, 2)).toThrow(RangeError);
  });
});

describe('particles', () => {
  test('the room rule of purifiers leaves a fifth', () => {
    // 1.55 square feet for each cubic foot a minute, 8 feet high, 1.2 losses an hour otherwise.
    const footCubed = 0.3048 ** 3;
    compare({
      topic: TOPIC,
      what: 'share of particles left by a purifier of the room-size rule',
      unit: '-',
      source: ROOM_RULE,
      mark: 'published',
      expected: 0.2,
      got: shareLeftByPurifier(footCubed / 60, 1.55 * 8 * footCubed, 1.2 / 3600),
      tolerance: { absolute: 0.005 },
      because: 'the rule promises a reduction by 80 %; 0.2 1/h of settling besides is ours',
    });
  });

  test('the delivery rate is what the chamber shows, and nothing without a purifier', () => {
    const rate = cleanAirDeliveryRate(28.5, 4.2 / 3600, 0.2 / 3600);
    expect(rate * 3600).toBeCloseTo(114, 9);
    expect(cleanAirDeliveryRate(28.5, 1e-4, 1e-4)).toBe(0);
    expect(shareLeftByPurifier(0, 30, 0)).toBe(1);
    expect(shareLeftByPurifier(0.01, 30, 0)).toBe(0);
  });

  test.each([
    [1, 0.5, 0.39, 0.562],
    [0.78, 0.5, 0.39, 0.438],
  ])('P = %s, %s air changes, settling %s: %s comes in', (penetration, a, k, expected) => {
    compare({
      topic: TOPIC,
      what: `infiltration factor, P ${penetration}, ${a} air changes, deposition ${k} 1/h`,
      unit: '-',
      source: 'mixed room with the figures of the PTEAM study',
      mark: 'closed form',
      expected,
      got: infiltrationFactor(penetration, a, k),
      tolerance: { absolute: 0.0005 },
      because: 'half the last digit printed',
    });
  });

  test('the factor is the steady level of a room without sources', () => {
    const room = { outdoor: 20, source: 0, flow: (0.5 * 30) / 3600, volume: 30, loss: 0.39 / 3600 };
    expect(steadyConcentration(room) / 20).toBeCloseTo(infiltrationFactor(1, 0.5, 0.39), 12);
    expect(infiltrationFactor(1, 0, 0)).toBe(0);
  });

  test.each([
    ['a negative delivery rate', () => shareLeftByPurifier(-1, 30, 1e-4)],
    ['no delivery rate', () => shareLeftByPurifier(NAN, 30, 1e-4)],
    ['no loss', () => shareLeftByPurifier(0.1, 30, NAN)],
    ['a purifier that adds particles', () => cleanAirDeliveryRate(28.5, 1e-5, 1e-4)],
    ['no decay', () => cleanAirDeliveryRate(28.5, NAN, 1e-4)],
    ['more than all', () => infiltrationFactor(1.1, 0.5, 0.39)],
    ['no air change', () => infiltrationFactor(1, NAN, 0.39)],
    ['no settling', () => infiltrationFactor(1, 0.5, NAN)],
  ])('refuses %s', (_what, attempt) => expect(attempt).toThrow(RangeError));
});
