import { expect, test } from 'vitest';
import { heatLoss } from '../../src/home/heat-loss.ts';
import type { FarSide } from '../../src/home/home.ts';
import { compare } from '../reference/compare.ts';
import { aHome, anElement, aPane } from './a-home.ts';

const GROUND: FarSide = { to: 'ground', damping: 1 };
const BOOK =
  'MacKay, Sustainable Energy without the hot air, chapter E, semi-detached house of 88 m2';

/** The house of 1940, before or after its walls and roof were insulated. */
function semi(walls: number, roof: number) {
  return aHome({
    elements: [
      anElement('pitched roof', 48, roof),
      anElement('flat roof', 1.6, 3),
      anElement('floor', 50, 0.8, GROUND),
      anElement('extension walls', 24.1, 0.6),
      anElement('main walls', 50, walls),
      anElement('thin wall', 2, 3),
    ],
    panes: [aPane('single glazing', 7.35, 5), aPane('double glazing', 17.8, 2.9)],
  });
}

const AIR = (80 * 0.5 + 36 * 2 + 27 * 3 + 77 * 1) / 3600; // bedrooms, kitchen, hall, the rest [m3/s]

test('the worked house', () => {
  const loss = heatLoss(semi(1, 0.6), AIR);
  const row = {
    topic: 'Heat loss of a home',
    unit: 'W/K',
    source: BOOK,
    mark: 'published arithmetic',
  } as const;
  const rounding = {
    tolerance: { relative: 0.01 },
    because: 'every element printed to three figures',
  } as const;
  const fabric = loss.elements + loss.ground + loss.panes;
  compare({ ...row, ...rounding, what: 'fabric', expected: 232.4, got: fabric });
  compare({ ...row, ...rounding, what: 'air', expected: 90, got: loss.air });
  compare({ ...row, ...rounding, what: 'all', expected: 322, got: loss.total });
  compare({
    ...row,
    ...rounding,
    what: 'heat for 20 K over a day',
    unit: 'kWh',
    expected: 155,
    got: (loss.total * 20 * 24) / 1000,
  });
  compare({
    ...row,
    what: 'share of the fabric',
    unit: '%',
    expected: 72,
    got: (100 * fabric) / loss.total,
    tolerance: { absolute: 0.5 },
    because: 'printed in whole percents',
  });
  compare({
    ...row,
    what: 'heat-loss parameter',
    unit: 'W/(m2 K)',
    expected: 3.7,
    got: loss.total / 88,
    tolerance: { absolute: 0.05 },
    because: 'printed to a tenth',
  });
});

test.each([
  ['main walls from 1 to 0.6', 0.6, 0.6, 20],
  ['roof from 0.6 to 0.3', 1, 0.3, 14],
])('insulating: %s', (what, walls, roof, expected) => {
  compare({
    topic: 'Heat loss of a home',
    what: `saved by insulating the ${what} W/(m2 K)`,
    unit: 'W/K',
    source: BOOK,
    mark: 'published arithmetic',
    expected,
    got: heatLoss(semi(1, 0.6)).total - heatLoss(semi(walls, roof)).total,
    tolerance: { absolute: 0.5 },
    because: 'printed in whole watts per kelvin',
  });
});

test('the end-of-terrace house', () => {
  const home = aHome({
    elements: [
      anElement('floor', 48, 0.25, GROUND),
      anElement('roof', 48, 0.16),
      anElement('walls', 80, 0.35),
      anElement('party wall', 40, 1.5, { to: 'nothing' }),
    ],
    panes: [aPane('windows and doors', 20, 2)],
  });
  compare({
    topic: 'Heat loss of a home',
    what: 'fabric of an end-of-terrace house of 96 m2',
    unit: 'W/K',
    source: 'Open University, Energy in buildings, section 2.4.1',
    mark: 'published arithmetic',
    expected: 87.7,
    got: heatLoss(home).total,
    tolerance: { absolute: 0.1 },
    because: 'printed to a tenth',
  });
});

test('neighbours stand apart, other rooms and nothing do not count', () => {
  const home = aHome({
    elements: [
      anElement('wall', 10, 1),
      anElement('party wall', 20, 2, { to: 'neighbour', temperature: 18 }),
      anElement('partition', 30, 2, { to: 'room', room: 0 }),
      anElement('mirror', 30, 2, { to: 'nothing' }),
    ],
  });
  const loss = heatLoss(home);
  expect(loss.total).toBeCloseTo(10, 9);
  expect(loss.neighbours).toBeCloseTo(40, 9);
  expect(loss.air).toBe(0);
});

test('mild ground counts less, but never less than a good part', () => {
  const ground = (damping: number): number =>
    heatLoss(aHome({ elements: [anElement('floor', 50, 0.5, { to: 'ground', damping })] })).ground;
  expect(ground(1)).toBeCloseTo(25, 9);
  expect(ground(0)).toBeCloseTo(17.5, 9);
  expect(ground(0.4)).toBeGreaterThan(ground(0.3));
});

test('a flow that is none is refused in words', () => {
  expect(() => heatLoss(aHome({}), -1)).toThrow(
    'heatLoss: air flow must be between 0 and 100 m3/s, got -1 m3/s',
  );
  expect(() => heatLoss(aHome({}), Number.NaN)).toThrow(RangeError);
});
