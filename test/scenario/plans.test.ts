import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { type CheckScope, readScenario } from '../../src/scenario/read-scenario.ts';
import { pointerOf, pointerSteps } from '../../src/scenario/yaml/json-pointer.ts';
import { mergePatch } from '../../src/scenario/yaml/merge-patch.ts';
import { homeWith, problemsOf, readingProblems } from './problems-of.ts';

// The cases of RFC 7386, appendix A.
test.each([
  [{ a: 'b' }, { a: 'c' }, { a: 'c' }],
  [{ a: 'b' }, { b: 'c' }, { a: 'b', b: 'c' }],
  [{ a: 'b' }, { a: null }, {}],
  [{ a: 'b', b: 'c' }, { a: null }, { b: 'c' }],
  [{ a: ['b'] }, { a: 'c' }, { a: 'c' }],
  [{ a: 'c' }, { a: ['b'] }, { a: ['b'] }],
  [{ a: { b: 'c' } }, { a: { b: 'd', c: null } }, { a: { b: 'd' } }],
  [{ a: [{ b: 'c' }] }, { a: [1] }, { a: [1] }],
  [
    ['a', 'b'],
    ['c', 'd'],
    ['c', 'd'],
  ],
  [{ a: 'b' }, ['c'], ['c']],
  [{ a: 'foo' }, null, null],
  [{ a: 'foo' }, 'bar', 'bar'],
  [{ e: null }, { a: 1 }, { e: null, a: 1 }],
  [[1, 2], { a: 'b', c: null }, { a: 'b' }],
  [{}, { a: { bb: { ccc: null } } }, { a: { bb: {} } }],
])('patch %j with %j gives %j', (target, patch, result) => {
  const before = JSON.stringify(target);
  expect(mergePatch(target, patch)).toEqual(result);
  expect(JSON.stringify(target)).toBe(before);
});

test('pointers read and write names with slashes, tildes and spaces', () => {
  expect(pointerSteps('/home/rooms/bed~1box ~0 1/floor area')).toEqual([
    'home',
    'rooms',
    'bed/box ~ 1',
    'floor area',
  ]);
  expect(pointerOf(['a/b', 'm~n', 0])).toBe('/a~1b/m~0n/0');
  expect(pointerSteps('heating')).toBeNull();
  expect(pointerSteps('/a~2')).toBeNull();
});

const PLANS = homeWith(`heating:
  setpoint: 21
  setback: 17
  hours: "06:00-22:00"
plans:
  base: { change: {} }
  cool: { description: less, change: { heating: { setpoint: 19 } }, purchases: [{ what: jumper, price: 40, lasts: 4 years }] }
  cool-out: { based on: cool, change: { heating: { setback: 15, hours: null } } }`);
const prepare = (plan: string | null, set: string[] = []) =>
  preparePlan(readScenario(PLANS, 'h.yaml'), { plan, set, files: new Map() });
const living = (plan: string | null, set: string[] = []) =>
  prepare(plan, set).household.setpoints[0];

describe('preparing', () => {
  test('the first plan is the baseline', () => {
    expect(prepare(null).plan).toBe('base');
    expect(living(null)).toEqual({
      base: 17,
      spells: [{ days: 127, from: 360, to: 1320, value: 21 }],
    });
  });

  test('a plan is laid on what it builds on', () => {
    expect(living('cool')?.spells[0]?.value).toBe(19);
    expect(living('cool-out')).toEqual({ base: 19, spells: [] });
    expect(prepare('cool-out').purchases).toEqual([{ what: 'jumper', price: 40, lastsYears: 4 }]);
  });

  test('settings come last, in their order, with units', () => {
    expect(living('cool-out', ['/heating/setpoint=18', '/heating/setpoint=68 °F'])?.base).toBe(20);
    expect(prepare('base', ['/home/rooms/living/floor area=20']).home.rooms[0]?.floorArea).toBe(20);
  });

  test('a setting may remove, and may make what is not there', () => {
    expect(living('base', ['/heating/hours=null'])).toEqual({ base: 21, spells: [] });
    const panes = prepare('base', ['/home/rooms/living/panes/0/u-value=1.1']).home.panes;
    expect(panes.filter(({ room }) => room === 0).map(({ uValue }) => uValue)).toEqual([1.1]);
  });

  test('a name with a slash is reached', () => {
    const text =
      'title: T\nweather: w.csv\nsite: { latitude: 1, longitude: 1, elevation: 1 }\nhome: { rooms: { bed/box room: { floor area: 9 } } }';
    const scenario = readScenario(text, 'h.yaml');
    const set = ['/home/rooms/bed~1box room/height=3'];
    expect(preparePlan(scenario, { plan: null, set, files: new Map() }).home.rooms[0]?.volume).toBe(
      27,
    );
  });

  test('every assumed value can be set at the path it is listed under', () => {
    for (const { path, value, low } of prepare('base').assumed) {
      if (low === null) continue;
      const again = problemsOf(() => prepare('base', [`${path}=${value}`]));
      expect(again, path).toEqual([]);
      expect(prepare('base', [`${path}=${value}`]).assumed.map((row) => row.path)).not.toContain(
        path,
      );
    }
  });
});

test('settings add a device whose kind they say, and keys that the file has not', () => {
  const drier = ['/devices/drier/room=living', '/devices/drier/kind=dehumidifier'];
  expect(prepare('base', drier).home.devices).toHaveLength(1);
  const whole = ['/devices/drier={ kind: dehumidifier, room: living }', '/devices/drier/target=55'];
  expect(prepare('base', whole).home.devices).toHaveLength(1);
  expect(problemsOf(() => prepare('base', ['/heating/rooms/living=19']))).toEqual([]);
  expect(problemsOf(() => prepare('base', ['/heating/season/mean below=12']))).toEqual([]);
});

describe('refuses', () => {
  test('a plan that does not exist', () => {
    expect(problemsOf(() => prepare('col'))).toEqual([
      'h.yaml: plan: expected one of the plans base, cool, cool-out, got "col" (did you mean "cool"?)',
    ]);
  });

  test.each([
    [
      '/heating/setpiont=19',
      '--set /heating/setpiont=19: heating.setpiont: did you mean "setpoint"? Expected one of the keys source, fuel, efficiency, cop, power, backup, sharing, water temperature, emitters, setpoint, hours, setback, night, gate, hold off, lead, longest lead, window lock-out, sensor, proportional band, deadband, season, holiday setback, thermostat, frost guard, rooms, got "setpiont", which is not known',
    ],
    [
      '/heting/setpoint=19',
      '--set /heting/setpoint=19: heting: did you mean "heating"? Expected one of the keys title, invented, weather, site, period, step, money, home, heating, cooling, blinds, household, devices, sensors, rules, air, seed, bands, log, doubts, fitted, plans, got "heting", which is not known',
    ],
    [
      '/heating/rooms/livng=19',
      '--set /heating/rooms/livng=19: heating.rooms.livng: expected the name of a room: living, bedroom, got "livng" (did you mean "living"?)',
    ],
    [
      '/home/rooms/livng/floor area=19',
      '--set /home/rooms/livng/floor area=19: home.rooms.livng: expected the name of a room: living, bedroom, got "livng" (did you mean "living"?)',
    ],
    [
      '/home/rooms/livng=null',
      '--set /home/rooms/livng=null: home.rooms.livng: expected the name of a room: living, bedroom, got "livng" (did you mean "living"?)',
    ],
    [
      '/devices/drier/target=55',
      '--set /devices/drier/target=55: devices.drier: expected the name of a device, of which there is none, got "drier"',
    ],
    [
      '/heating/setpoint=',
      '--set /heating/setpoint=: expected a value after "=", got nothing (/heating/setpoint=null removes the key)',
    ],
    [
      '/heating/setpoint=21 K',
      '--set /heating/setpoint=21 K: heating.setpoint: expected a temperature in °C or °F, such as 20 or "68 °F", got "21 K", which is a temperature difference (K is a difference here; a temperature is written 21 °C)',
    ],
    [
      'heating=3',
      '--set heating=3: expected a pointer such as /heating/setpoint, got "heating" (a slash in a name is written ~1)',
    ],
    [
      '"/heating=19',
      `--set "/heating=19: expected a pointer such as /heating/setpoint, got "/heating (a slash in a name is written ~1)`,
    ],
    [
      '/heating/setpoint',
      '--set /heating/setpoint: expected /pointer=value, got "/heating/setpoint" (such as /heating/setpoint=19)',
    ],
    [
      '/weather=other.csv',
      '--set /weather=other.csv: weather: expected a setting of the home or its people, got weather, which was read before',
    ],
    [
      '/money/gas/prices=p.csv',
      '--set /money/gas/prices=p.csv: money.gas.prices: expected a price file that the scenario file names, got "p.csv"',
    ],
    [
      '/household/people/3/who=child',
      '--set /household/people/3/who=child: expected item 0 of an empty list, got "3" (items are counted from 0)',
    ],
  ])('%s', (set, expected) => {
    const given = set.includes('people') ? ['/household/people=[]', set] : [set];
    expect(problemsOf(() => prepare('base', given))).toEqual([expected]);
  });

  test('a new name once, whatever else is set below it', () => {
    const set = ['/home/rooms/study/floor area=9 kg', '/home/rooms/study/use=x', '/step=61'];
    expect(problemsOf(() => prepare('base', set))).toEqual([
      '--set /home/rooms/study/use=x: home.rooms.study: expected the name of a room: living, bedroom, got "study"',
      expect.stringContaining('--set /step=61: step: expected'),
    ]);
  });

  test('a setting that contradicts the file points to the file', () => {
    expect(problemsOf(() => prepare('base', ['/heating/setpoint=16']))).toEqual([
      'h.yaml:10:12: heating.setback: expected a setback of the setpoint (16 °C) or less, got 17',
    ]);
  });
});

describe('plans as plans', () => {
  const plans = (text: string) =>
    readingProblems(homeWith(`plans:\n${text.replaceAll(/^/gm, '  ')}`));

  test('one that patches nothing, unless it is the baseline', () => {
    expect(
      plans(
        'a: { change: {} }\nb: { change: {} }\nc: { change: { home: { rooms: { living: { floor area: 16 } } } } }',
      ),
    ).toEqual([
      'h.yaml:10:16: plans.b.change: expected a change to the home as it is, got none (only the first plan, the baseline, may have an empty change)',
      'h.yaml:11:16: plans.c.change: expected a change to the home as it is, got only what is there already (only the first plan, the baseline, may have an empty change)',
    ]);
  });

  test('one that removes what is not there', () => {
    expect(plans('a: { change: { heating: { night: null } } }')).toEqual([
      'h.yaml:9:36: plans.a.change.heating.night: expected something to remove, got null where nothing is given',
    ]);
  });

  test('one that builds on nobody, and two that build on one another', () => {
    expect(plans('first: { based on: frist-of-all, change: { step: 5 } }')[0]).toContain(
      'plans.first.based on: expected the name of another plan',
    );
    expect(
      plans(
        'up: { based on: down, change: { heating: { setpoint: 20 } } }\ndown: { based on: up, change: { heating: { setpoint: 21 } } }',
      ),
    ).toEqual([
      'h.yaml:9:19: plans.up.based on: expected plans that do not build on themselves, got up on down on up',
      'h.yaml:10:21: plans.down.based on: expected plans that do not build on themselves, got down on up on down',
    ]);
  });

  test('one that changes what all plans share', () => {
    expect(plans('a: { change: { weather: other.csv } }')).toEqual([
      'h.yaml:9:18: plans.a.change.weather: expected a change of the home or its people, got weather, which all plans share',
    ]);
  });

  test('one that goes wrong only together with the base says so', () => {
    expect(
      readingProblems(
        homeWith(
          'heating: { setpoint: 20, setback: 17 }\nplans: { cold: { change: { heating: { setpoint: 16 } } } }',
        ),
      ),
    ).toEqual([
      'h.yaml:8:35: heating.setback in plan cold: expected a setback of the setpoint (16 °C) or less, got 17',
    ]);
  });
});

describe('a scope of plans', () => {
  const BROKEN = homeWith(`money: { gas: { prices: gas.csv } }
doubts: { /heating/setpoint: [30, 20] }
plans:
  base: { change: {} }
  cold: { change: { heating: { setpoint: 50 } } }
  colder: { based on: cold, change: { heating: { setback: 5 } } }
  lost: { based on: gone, change: { heating: { setpoint: 19 } } }
  dear: { change: { money: { gas: { prices: dear.csv } } } }
  warm: { change: { heating: { setpoint: 22 } } }`);
  const read = (scope: CheckScope) => readScenario(BROKEN, 'h.yaml', scope);
  const wrong = (scope: CheckScope) => problemsOf(() => read(scope));
  const COLD =
    'h.yaml:12:42: heating.setpoint in plan cold: expected a temperature in °C or °F from -10 to 40, got 50 (did you mean "50 °F"?)';

  test('leaves out what is wrong with other plans and with doubts', () => {
    expect(wrong({ plans: ['warm', 'base'], doubts: false })).toEqual([]);
    expect(wrong({ plans: 'first', doubts: false })).toEqual([]);
    expect(wrong({ plans: ['no such plan'], doubts: false })).toEqual([]);
  });

  test('says what is wrong with those in it and those they build on', () => {
    expect(wrong({ plans: ['cold', 'warm'], doubts: false })).toEqual([COLD]);
    expect(wrong({ plans: ['colder'], doubts: false })).toEqual([COLD.replace('cold:', 'colder:')]);
    expect(wrong({ plans: ['lost'], doubts: false })).toEqual([
      expect.stringContaining('plans.lost.based on: expected the name of another plan'),
    ]);
    expect(wrong({ plans: 'first' })).toEqual([
      expect.stringContaining('doubts./heating/setpoint: expected a low below its high'),
    ]);
    expect(wrong({})).toHaveLength(3);
  });

  test('lists all plans, but only the files of those in it', () => {
    const some = read({ plans: ['warm'], doubts: false });
    expect(some.plans.map(({ name }) => name)).toEqual([
      ...['base', 'cold', 'colder', 'lost', 'dear', 'warm'],
    ]);
    expect(some.files).toEqual(['w.csv', 'gas.csv']);
    expect(read({ plans: ['dear'], doubts: false }).files).toEqual([
      'w.csv',
      'gas.csv',
      'dear.csv',
    ]);
  });

  test('does not spare the file itself', () => {
    const text = BROKEN.replace('floor area: 12', 'floor area: -12').replace(
      'on: gone',
      'on: [gone]',
    );
    expect(
      problemsOf(() => readScenario(text, 'h.yaml', { plans: ['warm'], doubts: false })),
    ).toEqual([
      expect.stringContaining('home.rooms.bedroom.floor area: expected'),
      expect.stringContaining('plans.lost.based on: expected'),
    ]);
  });

  test('a plan out of it is checked when it is prepared', () => {
    const some = read({ plans: ['warm'], doubts: false });
    const files = new Map([['gas.csv', '']]);
    expect(problemsOf(() => preparePlan(some, { plan: 'cold', set: [], files }))).toEqual([
      COLD.replace(' in plan cold', ''),
    ]);
  });

  test('a plan in it is prepared as if all had been read', () => {
    const all = readScenario(PLANS, 'h.yaml');
    for (const { name } of all.plans) {
      const one = readScenario(PLANS, 'h.yaml', { plans: [name], doubts: false });
      const choice = { plan: name, set: [], files: new Map() };
      expect(preparePlan(one, choice)).toEqual(preparePlan({ ...all, checked: new Map() }, choice));
    }
  });
});
