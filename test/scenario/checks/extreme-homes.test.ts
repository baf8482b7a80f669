import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { homeWith, readingProblems } from '../problems-of.ts';

/** The home of a scenario of one room, with more words about it. */
function homeOf(room: string, more = '') {
  const text = homeWith('')
    .replace('living: { floor area: 16 }', `living: { ${room} }`)
    .replace('    bedroom: { floor area: 12 }\n', more);
  return preparePlan(readScenario(text, 'h.yaml'), { plan: null, set: [], files: new Map() }).home;
}

describe('a home that is unusual and can be', () => {
  test('a ground floor with no edge outdoors', () => {
    const { elements, leakage } = homeOf('floor area: 16, outer sides: 0');
    const floor = elements.find(({ kind }) => kind === 'floor')!;
    expect(floor.far).toEqual({ to: 'ground', damping: 0 });
    expect(leakage.share).toEqual([1]);
  });

  test('rooms that air reaches through the shell nowhere share its vents alike', () => {
    const sealed = 'floor area: 16, outer sides: 0, above: neighbour';
    const { leakage } = homeOf(
      sealed,
      `    den: { ${sealed} }\n  doorways: [{ between: [living, den] }]\n`,
    );
    expect(leakage.share).toEqual([0.5, 0.5]);
  });

  test('a ground floor with an edge of a few millimetres', () => {
    const { elements } = homeOf(
      'floor area: 16, panes: [], outer walls: [{ area: 0.01, faces: north }]',
    );
    expect(elements.map(({ kind }) => kind)).toEqual(['wall', 'roof', 'floor']);
  });

  test.each([0, 1e-6, 0.5])('walls with a heat capacity of %s kJ/m2K', (capacity) => {
    const { elements } = homeOf(
      'floor area: 16',
      `  build: { walls: timber frame, wall heat capacity: ${capacity} }\n`,
    );
    for (const { chain } of elements) {
      for (const part of chain.capacity) expect(part).toBeGreaterThanOrEqual(100); // a coat of paint
    }
  });
});

describe('a home that cannot be is told with its place', () => {
  test('more air than any home', () => {
    const rooms = Array.from(
      { length: 5 },
      (_, k) => `    r${k}: { floor area: 2000, height: 12 }\n`,
    );
    const text = homeWith('').replace('    bedroom: { floor area: 12 }\n', rooms.join(''));
    expect(readingProblems(text)).toEqual([
      'h.yaml:6:5: home.rooms: expected rooms of at most 100000 m3 in all, got 120038 m3',
    ]);
    // By the height of the home where a room has none of its own.
    const high = text.replaceAll(', height: 12', '').replace('home:\n', 'home:\n  height: 12\n');
    expect(readingProblems(high).join()).toContain('of at most 100000 m3 in all');
  });

  test('a figure that no formula was made for', () => {
    const text = homeWith('').replace(
      'floor area: 16',
      `floor area: 16, outer walls: [${'{ area: 2000 }, '.repeat(20)}]`,
    );
    expect(readingProblems(text)).toEqual([
      'h.yaml:5:3: home: expected an exposed perimeter of 0 to 10000 m, got 16671.5 m',
    ]);
  });
});
