import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../src/scenario/read-scenario.ts';
import { mergePatch } from '../../../src/scenario/yaml/merge-patch.ts';
import { homeWith, problemsOf, readingProblems } from '../problems-of.ts';

test.each([
  [[{ name: 'a', n: 1 }, { name: 'b' }], { drop: ['a'] }, [{ name: 'b' }]],
  [[{ name: 'a', n: 1, m: 2 }], { change: { a: { n: 3, m: null } } }, [{ name: 'a', n: 3 }]],
  [[{ name: 'a' }], { add: [{ name: 'b' }] }, [{ name: 'a' }, { name: 'b' }]],
  [undefined, { add: [1] }, [1]],
  [
    [{ what: 'cooking' }],
    { change: { cooking: { at: '18:00' } } },
    [{ what: 'cooking', at: '18:00' }],
  ],
  [[{ between: ['a', 'b'] }], { drop: ['b and a'] }, []],
  [['a', 'b'], { drop: ['a'] }, ['b']],
  [
    [{ name: 'a' }, { name: 'b' }, { name: 'c' }],
    { drop: ['a'], change: { c: { n: 1 } }, add: [{ name: 'd' }] },
    [{ name: 'b' }, { name: 'c', n: 1 }, { name: 'd' }],
  ],
  // A mapping that is no edit takes the list's place, as a merge patch has it.
  [[{ from: '06:00' }], { from: '07:00' }, { from: '07:00' }],
  [undefined, { add: { kind: 'heater' } }, { add: { kind: 'heater' } }],
])('%j edited by %j is %j', (target, patch, result) => {
  const before = JSON.stringify(target);
  expect(mergePatch(target, patch)).toEqual(result);
  expect(JSON.stringify(target)).toBe(before);
});

const HOME = homeWith(`sensors: { co2: {}, humidity: {} }
rules:
  - { name: stale, when: [{ room: living, reading: co2, over: 1200 }], response: [{ tell: air }] }
  - { name: damp, when: [{ room: bedroom, reading: humidity, over: 70 }], response: [{ tell: dry }] }
  - { name: damper, when: [{ room: living, reading: humidity, over: 80 }], response: [{ tell: dry }] }
household:
  activities: [{ what: cooking }, { what: shower, at: "07:00" }, { what: shower, at: "08:00" }]
plans:
  base: { change: {} }
`);
/** A plan of one line, the twentieth, and what is wrong with it. */
const wrong = (change: string, more = '') =>
  readingProblems(`${HOME}  edited: { change: ${change} }\n${more}`);
const rulesOf = (text: string, plan: string) =>
  preparePlan(readScenario(text, 'h.yaml'), { plan, set: [], files: new Map() }).automation.rules;

describe('a plan that changes single items', () => {
  test('drops, changes and adds, and leaves the rest as it is', () => {
    const text = `${HOME}  edited:
    change:
      rules:
        drop: [stale]
        change: { damp: { on delay: 20 min } }
        add: [{ name: loud, when: [{ after: "22:00" }], response: [{ tell: hush }] }]
  more: { based on: edited, change: { rules: { drop: [damper] } } }
`;
    const got = (plan: string) => rulesOf(text, plan).map(({ name, onDelay }) => [name, onDelay]);
    expect(got('base')).toEqual([
      ['stale', 0],
      ['damp', 0],
      ['damper', 0],
    ]);
    expect(got('edited')).toEqual([
      ['damp', 1200],
      ['damper', 0],
      ['loud', 0],
    ]);
    expect(got('more')).toEqual([
      ['damp', 1200],
      ['loud', 0],
    ]);
  });

  test('of activities by what is done', () => {
    const text = `${HOME}  edited: { change: { household: { activities: { change: { cooking: { at: "12:00" } } } } } }\n`;
    const plan = preparePlan(readScenario(text, 'h.yaml'), {
      ...{ plan: 'edited', set: [], files: new Map() },
    });
    expect(plan.household.activities.map(({ when }) => when[0]!.from)).toEqual([720, 420, 480]);
  });

  test('is answered in words where a name is unknown, shared or nothing to drop', () => {
    expect(wrong('{ rules: { drop: [stalle] } }')).toEqual([
      'h.yaml:17:39: plans.edited.change.rules.drop #1: expected the name of an item: stale, damp, damper, got "stalle" (did you mean "stale"?)',
    ]);
    expect(wrong('{ rules: { change: { dump: { on delay: 5 } } } }')).toEqual([
      'h.yaml:17:42: plans.edited.change.rules.change.dump: expected the name of an item: stale, damp, damper, got "dump" (did you mean "damp"?)',
    ]);
    expect(wrong('{ household: { activities: { drop: [shower] } } }')).toEqual([
      'h.yaml:17:57: plans.edited.change.household.activities.drop #1: expected the name of one item; give each a name, got "shower", which 2 items are called',
    ]);
    expect(wrong('{ rules: { change: { damp: null } } }')).toEqual([
      'h.yaml:17:48: plans.edited.change.rules.change.damp: expected what changes in that item; drop takes it away, got nothing',
    ]);
    expect(wrong('{ rules: { change: { damp: { gate: null } } } }')).toEqual([
      'h.yaml:17:56: plans.edited.change.rules.change.damp.gate: expected something to remove, got null where nothing is given',
    ]);
    expect(wrong('{ rules: { drop: [stale], remove: [damp] } }')).toEqual([
      'h.yaml:17:47: plans.edited.change.rules.remove: expected add, change or drop, for items of the list, got "remove"',
    ]);
    expect(wrong('{ rules: { drop: stale } }')).toEqual([
      'h.yaml:17:38: plans.edited.change.rules.drop: expected a list of names of items to drop, got "stale"',
    ]);
  });

  test('has its mistakes placed where they were written', () => {
    expect(wrong('{ rules: { change: { damp: { on delay: -5 } } } }')).toEqual([
      'h.yaml:17:60: rules #2.on delay in plan edited: expected a length of time in min from 0 to 10080, got -5',
    ]);
    expect(
      wrong(
        '{ rules: { drop: [stale], add: [{ name: loud, when: [{ after: "25:00" }], response: [{ tell: x }] }] } }',
      ),
    ).toEqual([
      'h.yaml:17:83: rules #3.when #1.after in plan edited: expected a local time such as "06:30", got "25:00"',
    ]);
    // What a second plan makes of a rule that it does not touch stands where the first wrote it.
    const first =
      '{ rules: { drop: [stale], change: { damper: { response: [{ run: fan }] } } }, devices: { fan: { kind: extract fan, room: living } } }';
    expect(
      wrong(
        first,
        '  bare: { based on: edited, change: { rules: { drop: [damp] }, devices: null } }\n',
      ),
    ).toEqual([
      'h.yaml:17:85: rules #1.response #1.run in plan bare: expected the name of a device: there are none, got "fan"',
    ]);
  });

  test('that comes to nothing is refused', () => {
    expect(wrong('{ rules: { change: { damp: { name: damp } } } }')[0]).toContain(
      'expected a change to the home as it is, got only what is there already',
    );
    expect(
      problemsOf(() =>
        readScenario(`${HOME}  edited: { change: { rules: { add: [] } } }\n`, 'h.yaml'),
      ),
    ).toHaveLength(1);
  });
});
