import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { readingProblems } from '../../problems-of.ts';

const text = (rooms: string): string => `title: T
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, storeys: 2 }
home:
  build: { shape: detached, exposed floor u-value: 0.5, roof u-value: 0.2 }
  rooms:
${rooms
  .trim()
  .split('\n')
  .map((line) => `    ${line.trim()}`)
  .join('\n')}
`;

function prepared(rooms: string) {
  const scenario = readScenario(text(rooms), 'h.yaml');
  const { home, cautions } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
  const names = home.rooms.map(({ name }) => name);
  const level = home.elements.filter(({ kind, far }) => kind !== 'wall' && far.to !== 'nothing');
  return {
    /** Floors and roofs: of which room, to what, and how much of it. */
    parts: level
      .filter(({ kind, far }) => kind !== 'partition' || far.to === 'room')
      .map(({ room, kind, far, area }) => [
        names[room],
        kind,
        far.to === 'room' ? names[far.room] : far.to,
        area,
      ]),
    asked: cautions.filter(({ id }) => id === 'levels-apart').map(({ text: said }) => said),
  };
}
/** Of those, what of the bedroom lies over other rooms. */
const between = (rooms: string) =>
  prepared(rooms).parts.filter(([room, kind]) => room === 'bedroom' && kind === 'partition');

const LOWER = `kitchen: { floor area: 12, outer sides: 2 }
  store: { use: storage, floor area: 8, outer sides: 2 }`;

describe('a floor larger than the room below', () => {
  test('lies over what others of the storey leave, and nothing is asked', () => {
    const { asked } = prepared(`${LOWER}
      bedroom: { floor area: 18, storey: 1, over: kitchen }`);
    expect(asked).toEqual([]);
    expect(
      between(`${LOWER}
      bedroom: { floor area: 18, storey: 1, over: kitchen }`),
    ).toEqual([
      ['bedroom', 'partition', 'kitchen', 12],
      ['bedroom', 'partition', 'store', 6],
    ]);
  });

  test('takes no ceiling that others have, those first that say what they lie over', () => {
    const rooms = `${LOWER}
      study: { floor area: 13, storey: 1 }
      bedroom: { floor area: 9, storey: 1, over: kitchen }
      den: { floor area: 6, storey: 1, over: kitchen }`;
    const { parts, asked } = prepared(rooms);
    const upstairs = ['study', 'bedroom', 'den'];
    const inner = parts.filter(
      ([room, kind]) => kind === 'partition' && upstairs.includes(room as string),
    );
    expect(inner).toEqual([
      ['bedroom', 'partition', 'kitchen', 9],
      ['den', 'partition', 'kitchen', 3],
      ['study', 'partition', 'store', 8],
    ]);
    expect(asked).toEqual([
      'Of the floors, 3 of the 6 m2 in den and 5 of the 13 m2 in study lie over no room of the home: nothing is lost through them. If they hang over outdoors, a passage or a garage, say "exposed floor: 3" in den, and so on.',
    ]);
  });

  test('and than all that is below hangs, which is asked about', () => {
    const rooms = `kitchen: { floor area: 12 }
      bedroom: { floor area: 20, storey: 1, over: kitchen }`;
    expect(prepared(rooms).asked).toEqual([
      'Of the floor of bedroom (20 m2), 8 m2 lie over no room of the home: nothing is lost through them. If they hang over outdoors, a passage or a garage, say "exposed floor: 8" in the room.',
    ]);
    expect(between(rooms)).toEqual([['bedroom', 'partition', 'kitchen', 12]]);
  });

  test('may be of a room that is no room upstairs, where nobody said so', () => {
    const rooms = `hall: { floor area: 8 }
      bedroom: { floor area: 14 }`;
    expect(prepared(rooms).asked).toEqual([
      'Of the floor of bedroom (14 m2), 6 m2 lie over no room of the home: nothing is lost through them. If they hang over outdoors, a passage or a garage, say "exposed floor: 6" in the room. If bedroom is downstairs, say "storey: 0" there.',
    ]);
  });

  test('loses heat by what is said to hang, with the U-value of floors over open air', () => {
    const rooms = `kitchen: { floor area: 12 }
      bedroom: { floor area: 20, storey: 1, over: kitchen, exposed floor: 8 }`;
    const { parts, asked } = prepared(rooms);
    expect(asked).toEqual([]);
    expect(parts).toContainEqual(['bedroom', 'floor', 'outdoors', 8]);
    expect(parts).toContainEqual(['bedroom', 'partition', 'kitchen', 12]);
    const scenario = readScenario(text(rooms), 'h.yaml');
    const { home } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
    const floor = home.elements.find(({ name }) => name === 'bedroom floor')!;
    const u = 1 / floor.chain.resistance.reduce((sum, r) => sum + r, 0);
    expect(u * floor.area).toBeCloseTo(0.5 * 8, 9); // W/K
  });

  test('by less than a metre or a twentieth is how storeys are', () => {
    const bedroom = (area: number) => `kitchen: { floor area: 30 }
      bedroom: { floor area: ${area}, storey: 1, over: kitchen }`;
    const small = (area: number) => `kitchen: { floor area: 9 }
      bedroom: { floor area: ${area}, storey: 1, over: kitchen }`;
    expect(prepared(small(9.9)).asked).toEqual([]);
    expect(prepared(small(10.1)).asked).toHaveLength(1);
    expect(prepared(bedroom(30.9)).asked).toEqual([]);
    expect(prepared(bedroom(31.5)).asked).toEqual([]);
    expect(prepared(bedroom(32)).asked).toHaveLength(1);
  });
});

describe('a ceiling larger than the rooms above', () => {
  const rooms = (more: string) => `kitchen: { floor area: 25${more} }
    bedroom: { floor area: 10, storey: 1, over: kitchen }`;

  test('is asked about where a third and more of it is bare', () => {
    expect(prepared(rooms('')).asked).toEqual([
      'Of the ceiling of kitchen (25 m2), 15 m2 lie under no room of the home: nothing is lost through them. If they have a roof over them, say "exposed ceiling: 15" in the room.',
    ]);
  });

  test.each([
    [9, 5.5, 0], // 3.5 m2
    [10, 5.9, 1],
    [30, 20.1, 0], // less than a third
    [30, 19.9, 1],
  ])('of %d m2 under %d: asked %d times', (below, above, times) => {
    const { asked } = prepared(`kitchen: { floor area: ${below} }
      bedroom: { floor area: ${above}, storey: 1, over: kitchen }`);
    expect(asked).toHaveLength(times);
  });

  test('smaller parts are asked about where a roof over all of them would count', () => {
    // 12 of 57 m2: no part is a third, and together a roof of 0.2 W/m2K would lose 2.4 W/K.
    const parts = `kitchen: { floor area: 20 }
      living: { floor area: 25 }
      hall: { floor area: 12 }
      bedroom: { floor area: 15, storey: 1, over: kitchen }
      main bedroom: { floor area: 19, storey: 1, over: living }
      landing: { floor area: 11.5, storey: 1, over: hall }`;
    const said = (roof: number) => {
      const scenario = readScenario(
        text(parts).replace('roof u-value: 0.2', `roof u-value: ${roof}`),
        'h.yaml',
      );
      const { cautions } = preparePlan(scenario, { plan: null, set: [], files: new Map() });
      return cautions.filter(({ id }) => id === 'levels-apart').map((each) => each.text);
    };
    expect(said(0.2)).toEqual([]);
    expect(said(2.3)).toEqual([
      'Of the ceilings, 5 of the 20 m2 in kitchen and 6 of the 25 m2 in living lie under no room of the home: nothing is lost through them. If they have a roof over them, say "exposed ceiling: 5" in kitchen, and so on.',
    ]);
  });

  test('has a roof over what is said to have one', () => {
    const { parts, asked } = prepared(rooms(', exposed ceiling: 15'));
    expect(asked).toEqual([]);
    expect(parts).toContainEqual(['kitchen', 'roof', 'outdoors', 15]);
    expect(parts).toContainEqual(['kitchen', 'floor', 'ground', 25]);
  });
});

test('a floor on the ground may hang in part', () => {
  const { parts } = prepared('den: { floor area: 16, exposed floor: 4 }');
  expect(parts).toEqual([
    ['den', 'roof', 'outdoors', 16],
    ['den', 'floor', 'ground', 12],
    ['den', 'floor', 'outdoors', 4],
  ]);
});

test('a ceiling under the roof is exposed anyway', () => {
  expect(readingProblems(text('den: { floor area: 16, exposed ceiling: 4 }'))).toEqual([
    'h.yaml:7:28: home.rooms.den.exposed ceiling: expected nothing in a room of the top storey, all of which has the roof over it unless "above" says otherwise, got 4',
  ]);
});

test('parts larger than the room, or of what is drawn or exposed as a whole, are refused', () => {
  expect(
    readingProblems(
      text(`den: { floor area: 16, exposed floor: 20 m2 }
      study: { floor area: 8, below: outdoors, exposed floor: 2 }
      hall: { floor area: 6, above: roof, exposed ceiling: 2 }
      attic: { floor area: 9, elements: [{ kind: roof, area: 9, u-value: 1 }], exposed ceiling: 2 }`),
    ),
  ).toEqual([
    'h.yaml:7:43: home.rooms.den.exposed floor: expected no more than the floor of the room (16 m2), got "20 m2"',
    'h.yaml:8:46: home.rooms.study.exposed floor: expected nothing beside "below: outdoors", which holds for all of it, got 2',
    'h.yaml:9:41: home.rooms.hall.exposed ceiling: expected nothing beside "above: roof", which holds for all of it, got 2',
    'h.yaml:10:78: home.rooms.attic.exposed ceiling: expected nothing beside `elements`, which list all of the room, got 2',
  ]);
});
