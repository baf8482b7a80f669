import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { statedDoubts } from '../../../src/studies/doubts/stated-doubts.ts';
import { variantScenario } from '../../../src/studies/plan-variant.ts';
import { homeWith } from '../../scenario/problems-of.ts';
import { readOnce } from '../../scenario/read-once.ts';

const SOURCE = 'stated in the scenario';
const TEXT = homeWith(`heating: { efficiency: 86 % }
doubts:
  /home/leakage/ach50: [7, 15]
  /heating/efficiency: [0.8, 0.9]
  /devices/drier/power: [180, 240]
  /home/rooms/living/floor area: [15, 17]
  /home/cold spot factor: [0.5, 0.6]
plans:
  base: { change: {} }
  dry: { change: { devices: { drier: { kind: dehumidifier, room: living, label: 12 L/day, power: 0.2 kW, target: 55 % } } } }
  new boiler: { change: { heating: { efficiency: 0.93 }, home: { leakage: { area: 0.03 } } } }`);

function stated(plan: string, set: readonly string[] = [], text = TEXT) {
  const scenario = readOnce(text, 'h.yaml');
  const raw = variantScenario(scenario, { plan, set });
  return statedDoubts(scenario, preparePlan(scenario, { plan, set, files: new Map() }), raw);
}

describe('doubts that a scenario states', () => {
  test('about what is assumed and what is given, converted to the documented unit', () => {
    const { inputs, unknown, outside } = stated('base');
    const home = preparePlan(readOnce(TEXT, 'h.yaml'), {
      plan: null,
      set: [],
      files: new Map(),
    });
    const assumed = home.assumed.find(({ path }) => path === '/home/leakage/ach50')!.value;
    expect(inputs).toEqual([
      { path: '/home/leakage/ach50', value: assumed, low: 7, high: 15, source: SOURCE },
      { path: '/heating/efficiency', value: 0.86, low: 0.8, high: 0.9, source: SOURCE },
      { path: '/home/rooms/living/floor area', value: 16, low: 15, high: 17, source: SOURCE },
      expect.objectContaining({ path: '/home/cold spot factor', low: 0.5, high: 0.6 }),
    ]);
    expect(unknown).toEqual(['/devices/drier/power']);
    expect(outside).toEqual([]);
  });

  test('about a device, in the plan that has it', () => {
    const { inputs, unknown } = stated('dry');
    expect(unknown).toEqual([]);
    const [device] = inputs.filter(({ path }) => path.startsWith('/devices'));
    expect(device).toEqual({
      ...{ path: '/devices/drier/power', value: 200, low: 180, high: 240, source: SOURCE },
    });
  });

  test('a plan that gives another value, or has no such value, is not in doubt there', () => {
    const { inputs, unknown, outside } = stated('new boiler');
    expect(outside).toEqual(['/heating/efficiency']);
    expect(unknown).toEqual(['/home/leakage/ach50', '/devices/drier/power']);
    expect(inputs.map(({ path }) => path)).toEqual([
      '/home/rooms/living/floor area',
      '/home/cold spot factor',
    ]);
  });

  test('a setting within the range is the value, one beside it ends the doubt', () => {
    const at = (value: string) => stated('base', [`/heating/efficiency=${value}`]);
    expect(at('0.81').inputs[1]).toMatchObject({ path: '/heating/efficiency', value: 0.81 });
    expect(at('0.95').outside).toEqual(['/heating/efficiency']);
  });

  test('what is assumed may lie beside what the scenario holds possible', () => {
    const text = homeWith('doubts: { /home/leakage/ach50: [1, 2] }');
    const { inputs } = stated('as-lived', [], text);
    expect(inputs[0]).toMatchObject({ low: 1, high: 2 });
    expect(inputs[0]!.value).toBeGreaterThan(2);
  });

  test('none where none are stated', () => {
    expect(stated('as-lived', [], homeWith(''))).toEqual({ inputs: [], unknown: [], outside: [] });
  });

  test('those of the terrace are known and not beside what they doubt, in every plan of it', () => {
    const text = readFileSync('scenarios/terrace.yaml', 'utf8');
    const { plans } = readOnce(text, 'terrace.yaml');
    for (const { name } of plans) {
      const { inputs, unknown, outside } = stated(name, [], text);
      expect([...unknown, ...outside]).toEqual([]);
      expect(inputs.map(({ path, value }) => [path, value])).toEqual([
        ['/home/leakage/ach50', name === 'loft-and-draughts' ? 10 : 14],
        ['/home/rooms/main bedroom/cold spot factor', 0.58],
        ['/household/activities/5/water', 2],
      ]);
    }
  });
});
