import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { PlanMeasures } from '../../../src/measures/plan-measures.ts';
import type { Scenario } from '../../../src/scenario/read-scenario.ts';
import { mergePatch } from '../../../src/scenario/yaml/merge-patch.ts';
import { settingsFromPatch } from '../../../src/scenario/yaml/settings-from-patch.ts';
import { prepareVariant, variantScenario } from '../../../src/studies/plan-variant.ts';
import type { BuiltIn } from '../../../src/studies/proposals/built-in.ts';
import { builtInAlternatives } from '../../../src/studies/proposals/built-in-alternatives.ts';
import { homeWith } from '../../scenario/problems-of.ts';
import { readOnce } from '../../scenario/read-once.ts';
import { type RoomFigures, somePlan } from '../some-plan.ts';

const BATH = 'heating: { setpoint: 19 }';
const home = (more = BATH): Scenario => readOnce(homeWith(more), 'h.yaml');

/** Figures with these hours of a cold spot above 80 %, by room. */
function figures(
  hours: Record<string, number>,
  currency = 'GBP',
  empty: readonly string[] = [],
): PlanMeasures {
  const rooms = Object.entries(hours).map(([name, cold_spot_hours_above_80_pct]) => {
    const over: RoomFigures['over'] = {
      cold_spot_hours_above_80_pct,
      ...(empty.includes(name) && { occupied_hours: 0 }),
    };
    return [name, somePlan('x', { den: { over } }).rooms['den']!] as const;
  });
  const plan = somePlan('as-lived');
  return { ...plan, money: { ...plan.money, currency }, rooms: Object.fromEntries(rooms) };
}

function proposals(scenario: Scenario, baseline = figures({ living: 10, bedroom: 90 })): BuiltIn[] {
  const [first] = scenario.plans;
  const rawOf = (plan: string) => variantScenario(scenario, { plan, set: [] });
  const plans = scenario.plans.map(({ name }) => ({ name, raw: rawOf(name) }));
  return builtInAlternatives({ raw: rawOf(first!.name), plans }, baseline);
}

const names = (list: readonly BuiltIn[]) => list.map(({ name }) => name);

describe('what is proposed', () => {
  test('four things and each two of them together', () => {
    expect(names(proposals(home()))).toEqual([
      ...['warmer', 'aired', 'fan', 'drier'],
      ...['warmer-and-aired', 'warmer-and-fan', 'warmer-and-drier'],
      ...['aired-and-fan', 'aired-and-drier', 'fan-and-drier'],
    ]);
  });

  test('every one can be prepared, and buys what it says', () => {
    const scenario = home();
    for (const { name, description: says, change, purchases: buys } of proposals(scenario)) {
      const set = settingsFromPatch(change);
      const plan = prepareVariant(scenario, new Map(), {
        plan: 'as-lived',
        set,
        as: { name, description: says, purchases: buys },
      });
      expect([plan.plan, plan.description, plan.purchases]).toEqual([name, says, buys]);
      expect(plan.home.devices).toHaveLength(buys.length);
    }
  });

  test('a drier of 12 L/day in the dampest room that people use', () => {
    const {
      change,
      description: says,
      purchases: buys,
    } = proposals(home()).find(({ name }) => name === 'drier')!;
    expect(change).toEqual({
      devices: {
        'proposed dehumidifier': {
          ...{ kind: 'dehumidifier', room: 'bedroom', type: 'compressor' },
          ...{ label: 12, 'tested at': '30 °C/80 %' },
        },
      },
    });
    expect(says).toBe('a dehumidifier in the bedroom, 12 L/day by its label');
    expect(buys[0]).toMatchObject({ price: 180, price_low: 120, price_high: 260, lastsYears: 8 });
    const elsewhere = proposals(home(), figures({ living: 10, bedroom: 90 }, 'GBP', ['bedroom']));
    expect(elsewhere.find(({ name }) => name === 'drier')!.description).toContain(
      'in the living room,',
    );
    expect(names(proposals(home(), figures({ living: 1 }, 'GBP', ['living'])))).not.toContain(
      'drier',
    );
  });

  test('a fan in the bathroom where there is one', () => {
    const bath = homeWith('').replace(
      'bedroom: { floor area: 12 }',
      'bathroom: { floor area: 5, use: bathroom }',
    );
    const { change } = proposals(readOnce(bath, 'h.yaml')).find(({ name }) => name === 'fan')!;
    expect(change).toMatchObject({
      devices: { 'proposed fan': { room: 'bathroom', runs: 'by humidity' } },
    });
  });

  test('airing beside the habits there are, which stay', () => {
    const habit = { room: 'bedroom', at: '08:00', lasts: '2 h', 'open share': '10 %' };
    const { change } = proposals(home(`household: { airing: [${JSON.stringify(habit)}] }`)).find(
      ({ name }) => name === 'aired',
    )!;
    expect(change).toEqual({
      household: {
        airing: [habit, { rooms: 'all', at: ['07:30', '19:00'], lasts: 10, 'open share': 1 }],
      },
    });
  });

  test('with prices of about the right size in a currency that is known, else without', () => {
    const priced = (currency: string) =>
      proposals(home(), figures({ living: 10, bedroom: 90 }, currency));
    const drier = priced('SEK').find(({ name }) => name === 'drier')!;
    // Some 11 krona stand for a euro.
    expect(drier.purchases).toMatchObject([{ price: 2000, price_low: 1300, price_high: 2900 }]);
    expect(priced('Taler').flatMap(({ purchases: buys }) => buys)).toEqual([]);
    expect(names(priced('Taler'))).toHaveLength(10);
  });

  test('under another name where a plan of the scenario bears it', () => {
    const plans =
      'plans: { as-lived: { change: {} }, warmer: { change: { heating: { setpoint: 17 } } } }';
    expect(names(proposals(home(plans)))[0]).toBe('proposed warmer');
  });
});

describe('what is not proposed', () => {
  test.each([
    [
      'a dehumidifier in a plan',
      'plans: { as-lived: { change: {} }, dry: { change: { devices: { d: { kind: dehumidifier, room: living } } } } }',
      'drier',
    ],
    ['a fan in the baseline', 'devices: { f: { kind: extract fan, room: living } }', 'fan'],
    [
      'a unit that airs all the time',
      'devices: { u: { kind: balanced ventilation, supplies: { living: 60 m3/h }, extracts: { bedroom: 60 m3/h } } }',
      'fan',
    ],
    ['a stove that draws room air', 'devices: { s: { kind: stove, room: living } }', 'fan'],
    [
      'airing of all rooms in a plan',
      'plans: { as-lived: { change: {} }, air: { change: { household: { airing: [{ rooms: all, at: ["07:00", "20:00"] }] } } } }',
      'aired',
    ],
    [
      'a plan two kelvin warmer',
      'plans: { as-lived: { change: { heating: { setpoint: 18 } } }, up: { change: { heating: { setpoint: 20 } } } }',
      'warmer',
    ],
    ['no heating', 'heating: { source: none }', 'warmer'],
  ])('%s', (_, more, without) => {
    const found = names(proposals(home(more)));
    expect(found.filter((name) => name.includes(without))).toEqual([]);
    expect(found).toHaveLength(6);
  });

  test('airing where no window opens', () => {
    const shut = homeWith('').replaceAll('floor area: 1', 'openings: [], floor area: 1');
    expect(names(proposals(readOnce(shut, 'h.yaml')))).not.toContain('aired');
  });
});

describe.each(['terrace', 'flat', 'stove-cottage'])('of the demonstration %s', (name) => {
  const scenario = readOnce(readFileSync(`scenarios/${name}.yaml`, 'utf8'), name);
  const rooms = Object.keys((scenario.yaml.value as { home: { rooms: object } }).home.rooms);
  const list = proposals(scenario, figures(Object.fromEntries(rooms.map((room) => [room, 5]))));
  const varied = { plan: scenario.plans[0]!.name, set: [] };

  test('something is left to propose, and all of it can be read', () => {
    expect(list.length).toBeGreaterThan(0);
    for (const { change } of list) {
      const settings = settingsFromPatch(change);
      const laid = variantScenario(scenario, { ...varied, set: settings });
      expect(laid).toEqual(mergePatch(variantScenario(scenario, varied), change));
    }
  });
});
