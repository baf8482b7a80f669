import { describe, expect, test } from 'vitest';
import { aboutPlan } from '../../src/studies/about-plan.ts';
import type { DoubtfulInput } from '../../src/studies/doubts/doubtful-inputs.ts';
import { allOptions } from '../../src/studies/options.ts';
import { type PlanStudy, planStudy } from '../../src/studies/plan-study.ts';
import { DRY, linearScenario, linearWorld, type Today } from './linear-world.ts';

const VENTED =
  'vented: { change: { devices: { fan: { kind: extract fan, room: bath } } }, purchases: [{ what: fan, price: 240, lasts: 12 }] }';
const PRICE: DoubtfulInput = {
  ...{ path: '/money/electricity', value: 0.3, low: 0.25, high: 0.35, source: 'a guess' },
};

/** The purchase against all that is proposed. */
async function studied(
  today: Today & { about?: string; inputs?: readonly DoubtfulInput[] } = {},
): Promise<PlanStudy & { asked: ReturnType<typeof linearWorld>['asked'] }> {
  const { about: named = null, inputs = [], ...values } = today;
  const { scenario, files, run, asked } = linearWorld(linearScenario(values));
  const plans = scenario.plans.map(({ name }) => name);
  const options = await allOptions({ scenario, files, run, plans, set: [] });
  const about = aboutPlan(options, named)!;
  return {
    ...(await planStudy({ scenario, files, about, options, inputs, inputWords, run, draws: null })),
    asked,
  };
}
const plain = (words: string) => words.replaceAll('\u00a0', ' ');
const inputWords = (path: string) => ({ name: `what stands at ${path}`, unit: 'GBP/kWh' });
const names = (options: PlanStudy['rivals']) => options.map(({ name }) => name);
const found = await studied({ inputs: [PRICE] });

describe('a dehumidifier', () => {
  test('as a sum', () => {
    expect(found.about).toMatchObject({ device: 'drier', room: 'den', dries: true });
    expect(found.sum).toMatchObject({
      purchase_cost: 22.5,
      running: 90,
      heat_credit: 0,
      net: 112.5,
    });
    const drying = found.sum!.drying!;
    expect(drying).toMatchObject({ litres_per_year: 450 });
    expect(drying.label_litres_a_day).toBeCloseTo(12, 9);
  });

  test('as a sum without what the baseline buys in its place', async () => {
    const boiler = 'as-lived: { change: {}, purchases: [{ what: boiler, price: 90, lasts: 10 }] }';
    const { sum } = await studied({ plans: [boiler, DRY] });
    expect(sum!.lines.map(({ text }) => text)).toContain('price: boiler, not bought');
    expect(sum!.price).toBe(180 - 90);
  });

  test('with its inputs low and high', () => {
    expect(found.doubt).toMatchObject({ figure: 112.5, low: 97.5, high: 127.5 });
    expect(found.doubt.effects).toMatchObject([{ path: '/money/electricity', effect: 15 }]);
  });

  test('against the room kept as much warmer as is as safe', () => {
    // 300 h, 100 h a kelvin: 3 K, found in steps of 5 / 64 K, 40 a kelvin
    const kelvin = (5 * 39) / 64;
    expect(found.equalSafety).toMatchObject({ warmer_by_k: kelvin, extra_per_year: 40 * kelvin });
    expect(found.warmer).toMatchObject({
      ...{ name: 'den 3.0 °C warmer', description: 'only the den is kept 3.0 °C warmer' },
      ...{ origin: 'as safe', assumedPurchases: [] },
    });
  });

  test('that option is prepared as such: its own room has the higher setpoint, the other has not', () => {
    const { prepared, raw, measures, variant } = found.warmer!;
    expect(prepared.household.setpoints.map(({ base }) => base)).toEqual([18 + 195 / 64, 18]);
    expect([prepared.plan, measures.plan]).toEqual(['den 3.0 °C warmer', 'den 3.0 °C warmer']);
    expect(prepared.description).toBe('only the den is kept 3.0 °C warmer');
    expect(raw).toHaveProperty(['heating', 'rooms', 'den', 'setpoint'], 18 + 195 / 64);
    expect(variant.plan).toBe('as-lived');
    expect(measures.rooms['den']!.cold_spot_hours_above_80_pct).toBeLessThanOrEqual(0);
  });

  test('against all that does without one', () => {
    expect(names(found.rivals)).toEqual([
      ...['warmer', 'aired', 'fan', 'warmer-and-aired', 'warmer-and-fan', 'aired-and-fan'],
      'den 3.0 °C warmer',
    ]);
  });

  test('and the answer, with the price at which it turns round', () => {
    expect(found.decision).toMatchObject({ verdict: 'worth it', sure: false, instead: null });
    expect(found.decision.sentences.map(plain)).toEqual([
      'Buy it: less mould and drier corners for 113 GBP a year.',
      'With dry, mould is less likely (index 0.0, was 3.0, den) and cold corners are dry enough 100 % of the time (was 98 %).',
      'Nothing else that was tried does as much for less without making something else worse.',
      'The answer turns round where the price of what is bought is above 255 GBP (180 today): then den 3.0 °C warmer does as much for less.',
      'The cheapest other way to as much, den 3.0 °C warmer, costs 9 GBP a year more.',
      'It would turn round (something else first) were the price of electricity 0.331 GBP/kWh instead of 0.300.',
      'It would turn round (not needed) were water from washing, cooking, laundry and plants 1.30 L/day instead of 2.00.',
      'It would turn round (not needed) were the thermostat 20.1 °C instead of 18.0.',
      'It would turn round (something else first) were the price of what is bought 255 GBP instead of 180.',
      'It would turn round (something else first) were what stands at /money/electricity 0.331 GBP/kWh instead of 0.300.',
    ]);
    // 22.5 and 300 kWh against 121.875; at a price P, P / 8 and 90
    expect(found.decision.turn).toMatchObject({ of: 'price', today: 180 });
    expect(found.decision.turn.value).toBeCloseTo(8 * 31.875, 9);
    expect(found.flips[0]!.value).toBeCloseTo((121.875 - 22.5) / 300, 9);
    expect(found.flips.map(({ unit }) => unit)).toEqual([
      ...['GBP/kWh', 'L/day', '°C', 'GBP', 'GBP/kWh'],
    ]);
    expect(found.flips.at(-1)).toMatchObject({ path: PRICE.path, likely: true });
  });

  test('only the two nearest rivals are run again at other values', () => {
    const watered = found.asked.filter(({ set }) =>
      set.some((words) => words.startsWith('/household/activities/0/water')),
    );
    const asked = new Set(watered.map(({ plan, as }) => as?.name ?? plan));
    expect([...asked].sort()).toEqual(['aired', 'as-lived', 'den 3.0 °C warmer', 'dry']);
  });
});

describe('where the warmer room is the cheaper one', () => {
  test('that comes first, and it is named', async () => {
    const { decision, warmer } = await studied({ electricity: 0.5 });
    expect(decision).toMatchObject({
      verdict: 'something else first',
      instead: warmer!.name,
    });
    expect(plain(decision.sentences[0]!)).toBe(
      'Something else first: den 3.0 °C warmer does about as much against damp and costs 51 GBP a year less.',
    );
  });
});

describe('no warmer room', () => {
  test.each([
    ['where five kelvin are not enough', { water: 3 }, 'not within +5 °C', null],
    ['where nothing has to be warmer', { setpoint: 21.5 }, '', 0],
    [
      'where it has no thermostat',
      {
        more: 'period: {}',
        plans: ['as-lived: { change: { heating: { rooms: { den: off } } } }', DRY],
      },
      'the den has no thermostat',
      null,
    ],
  ])('%s', async (_, today: Today, note, warmer_by_k) => {
    const { equalSafety, warmer, rivals } = await studied(today);
    expect(equalSafety).toMatchObject({ note, warmer_by_k });
    expect(warmer).toBeNull();
    expect(names(rivals)).not.toContain('den 3.0 °C warmer');
  });
});

test('what does not dry is weighed and summed up alike, without a warmer room', async () => {
  const plans = ['as-lived: { change: {} }', VENTED, DRY];
  const fan = await studied({ plans, about: 'vented', inputs: [PRICE] });
  expect(fan.about).toMatchObject({ device: 'fan', dries: false, guards: ['damp', 'air'] });
  // 20 a year by the bill, 240 over 12 years
  expect(fan.sum).toMatchObject({ purchase_cost: 20, net: 40 });
  expect(fan.doubt.effects).toHaveLength(1);
  expect(fan).toMatchObject({ equalSafety: null, warmer: null });
  // up to what the other way costs: 112.5 - 20 a year, for 12 years
  expect(fan.decision).toMatchObject({ verdict: 'worth it', turn: { of: 'price', value: 1110 } });
});

test('what brings nothing has no sum, and its question and verdict all the same', async () => {
  const warmer = 'nineteen: { change: { heating: { setpoint: 19 } } }';
  const plans = ['as-lived: { change: {} }', warmer, DRY];
  const found = await studied({ plans, about: 'nineteen' });
  expect(found.about).toMatchObject({ question: '18 °C or 19 °C?', device: null });
  expect(found.sum).toBeNull();
  expect(found.decision.verdict).toBe('worth it');
  expect(found.decision.sentences.slice(0, 2).map(plain)).toEqual([
    'Do it: less mould for 60 GBP a year.',
    'With nineteen, mould is less likely (index 2.0, was 3.0, den).',
  ]);
});
