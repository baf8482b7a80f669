import { describe, expect, test } from 'vitest';
import { aboutPlan } from '../../src/studies/about-plan.ts';
import { newPurchases } from '../../src/studies/compare/new-purchases.ts';
import { allOptions, type Option } from '../../src/studies/options.ts';
import { bringsDehumidifier } from '../../src/studies/purchase/new-devices.ts';
import { AIRED, DRY, linearScenario, linearWorld } from './linear-world.ts';

const BASE = 'as-lived: { change: {} }';
const FAN =
  'vented: { change: { devices: { fan: { kind: extract fan, room: bath } } }, purchases: [{ what: fan, price: 250, lasts: 12 }] }';

/** Options of these plans alone, without the program's own proposals. */
function optionsOf(...plans: string[]): Option[] {
  const scenario = linearScenario({ plans });
  const { named } = linearWorld(scenario);
  return scenario.plans.map(({ name }) => named(name));
}

const proposals = async (...plans: string[]): Promise<Option[]> => {
  const scenario = linearScenario({ plans });
  const names = scenario.plans.map(({ name }) => name);
  return allOptions({ ...linearWorld(scenario), plans: names, set: [] });
};

/** The same with no damp air, no wet corner and no mould. */
const undamp = (option: Option): Option => {
  const rooms = Object.entries(option.measures.rooms).map(([name, room]) => [
    name,
    {
      ...room,
      ...{ cold_spot_hours_above_80_pct: 0, mould_index_peak: 0 },
      outside_band_hours: { ...room.outside_band_hours, humidity_high: 0 },
    },
  ]);
  return { ...option, measures: { ...option.measures, rooms: Object.fromEntries(rooms) } };
};

describe('the purchase that a study is about', () => {
  test('the first plan that dries with a machine, though others buy before it', () => {
    const again = DRY.replace('dry:', 'dry again:');
    const options = optionsOf(BASE, FAN, AIRED, DRY, again);
    expect(aboutPlan(options, null)).toEqual({
      ...{ option: options[3], device: 'drier', room: 'den', dries: true, guards: ['damp'] },
      question: 'Is a dehumidifier worth buying here?',
      purchases: [{ what: 'drier', price: 180, lastsYears: 8 }],
      spared: [],
    });
  });

  test('the proposed one where no plan has one', async () => {
    const options = await proposals(BASE, FAN);
    const about = aboutPlan(options, null)!;
    expect(about.option).toMatchObject({ name: 'drier', origin: 'proposed' });
    expect(about).toMatchObject({ device: 'proposed dehumidifier', room: 'den', dries: true });
    expect(about.purchases).toMatchObject([{ what: 'dehumidifier', price: 180, lastsYears: 8 }]);
  });

  test('of a home that is not damp what its plans buy, before a dehumidifier that nobody asked for', async () => {
    const options = (await proposals(BASE, FAN)).map(undamp);
    expect(aboutPlan(options, null)).toMatchObject({
      ...{ option: { name: 'vented' }, question: 'Is an extract fan worth buying here?' },
    });
    const none = (await proposals(BASE, AIRED)).map(undamp);
    expect(aboutPlan(none, null)!.option).toMatchObject({ name: 'drier', origin: 'proposed' });
    expect(aboutPlan((await proposals(BASE, FAN, DRY)).map(undamp), null)!.option.name).toBe('dry');
  });

  test('the named one, which need not dry', async () => {
    const options = await proposals(BASE, FAN, DRY);
    expect(aboutPlan(options, 'vented')).toMatchObject({
      ...{ device: 'fan', room: 'bath', dries: false, option: { name: 'vented' } },
      purchases: [{ what: 'fan', price: 250, lastsYears: 12 }],
    });
    expect(aboutPlan(options, 'dry')).toMatchObject({ device: 'drier', dries: true });
  });

  test('of several new devices a dehumidifier first', () => {
    const both =
      'both: { change: { devices: { fan: { kind: extract fan, room: bath }, drier: { kind: dehumidifier, room: den, label: 12 } } } }';
    expect(aboutPlan(optionsOf(BASE, both), 'both')).toMatchObject({
      ...{ device: 'drier', room: 'den', dries: true, purchases: [] },
    });
  });

  test.each([
    [
      'devices: { unit: { kind: balanced ventilation, supplies: { den: 30 m3/h }, extracts: { bath: 30 m3/h } } }',
      'a ventilation unit',
    ],
    ['devices: { mist: { kind: humidifier, room: den } }', 'a humidifier'],
    ['devices: { clean: { kind: purifier, room: den } }', 'an air purifier'],
    ['devices: { plug: { kind: heater, room: den } }', 'a heater'],
    ['devices: { fire: { kind: stove, room: den } }', 'a stove'],
    ['cooling: { source: split, rooms: [den] }', 'an air conditioner'],
  ])('asks by what it is: %s', (change, thing) => {
    const own = `own: { change: { ${change} } }`;
    const buys = own.replace(/ }$/, ', purchases: [{ what: x, price: 9, lasts: 9 }] }');
    const asks = (plan: string) => aboutPlan(optionsOf(BASE, plan), 'own')!.question;
    expect(asks(own)).toBe(`Is ${thing} worth having here?`);
    expect(asks(buys)).toBe(`Is ${thing} worth buying here?`);
  });

  test('names what goes for it', () => {
    const old = 'as-lived: { change: { devices: { old fan: { kind: extract fan, room: bath } } } }';
    const clean = 'clean: { kind: purifier, room: den }';
    const own = `own: { change: { devices: { ${clean} } } }`;
    expect(aboutPlan(optionsOf(old, own), 'own')!.question).toBe(
      'Is an air purifier worth having here in place of the old fan?',
    );
    const bought = old.replace(/ }$/, ', purchases: [{ what: fan, price: 90, lasts: 9 }] }');
    expect(aboutPlan(optionsOf(bought, own), 'own')!.question).toBe(
      'Is an air purifier worth having here in place of fan for 90 money?',
    );
  });

  test('of two new kinds of machines it asks by their names; a cooled home gets no new cooling', () => {
    const two =
      'two: { change: { devices: { fan: { kind: extract fan, room: bath }, plug: { kind: heater, room: den } } } }';
    expect(aboutPlan(optionsOf(BASE, two), 'two')!.question).toBe(
      'With or without the fan and the plug?',
    );
    const cooled = 'as-lived: { change: { cooling: { source: split, rooms: [den] } } }';
    const aired = AIRED.replace('{ ', '{ based on: as-lived, ');
    expect(aboutPlan(optionsOf(cooled, aired), 'aired')!.question).toBe('Open windows otherwise?');
  });

  test('what the baseline buys and it does not is spared', () => {
    const boiler = { what: 'boiler', price: 3000, lastsYears: 15 };
    const base = `as-lived: { change: {}, purchases: [{ what: boiler, price: 3000, lasts: 15 }] }`;
    expect(aboutPlan(optionsOf(base, DRY), 'dry')!.spared).toEqual([boiler]);
  });

  test('the named one, which need not bring anything', () => {
    const options = optionsOf(BASE, AIRED);
    expect(aboutPlan(options, 'aired')).toMatchObject({
      ...{ device: null, dries: false, purchases: [], guards: ['damp', 'air'] },
      question: 'Open windows otherwise?',
    });
  });

  test('none where nothing new dries, or there is no such plan', () => {
    const options = optionsOf(BASE, FAN, AIRED);
    expect(aboutPlan(options, null)).toBeNull();
    expect(aboutPlan(options, 'as-lived')).toBeNull();
    expect(aboutPlan(options, 'dry')).toBeNull();
    expect(aboutPlan([], null)).toBeNull();
  });

  test('a dehumidifier that the baseline has is not new', () => {
    const had = DRY.replace('dry:', 'as-lived:');
    const options = optionsOf(had, DRY, FAN.replace('change: {', 'change: { heating: {},'));
    expect(aboutPlan(options, null)).toBeNull();
    expect(options.map((option) => bringsDehumidifier(options[0]!, option))).toEqual([
      ...[false, false, false],
    ]);
  });

  test('what brings a dehumidifier', async () => {
    const options = await proposals(BASE, FAN);
    const drying = options.filter((option) => bringsDehumidifier(options[0]!, option));
    expect(drying.map(({ name }) => name)).toEqual(
      options.map(({ name }) => name).filter((name) => name.includes('drier')),
    );
    expect(drying.length).toBeGreaterThan(1);
  });
});

describe('what is bought for it', () => {
  const curtains = '{ what: curtains, price: 90, lasts: 10 }';

  test.each([
    ['written down again', DRY.replace('purchases: [', `purchases: [${curtains}, `)],
    ['built upon', DRY.replace('dry: {', 'dry: { based on: as-lived,')],
  ])('what the baseline buys is not counted: %s', (_, dry) => {
    const base = `as-lived: { change: {}, purchases: [${curtains}] }`;
    const options = optionsOf(base, dry);
    expect(options[1]!.prepared.purchases).toHaveLength(2);
    expect(aboutPlan(options, null)!.purchases).toEqual([
      { what: 'drier', price: 180, lastsYears: 8 },
    ]);
  });

  test('a second one alike is, and so is one at another price or life', () => {
    const [a, b, c] = [180, 181, 180].map((price, k) => ({
      ...{ what: 'drier', price, lastsYears: k === 2 ? 9 : 8 },
    })) as [Bought, Bought, Bought];
    expect(newPurchases([{ ...a }], [a, a])).toEqual([a]);
    expect(newPurchases([{ ...a }, { ...a }], [a])).toEqual([]);
    expect(newPurchases([{ ...a }], [b, c])).toEqual([b, c]);
    expect(newPurchases([], [a])).toEqual([a]);
  });
});

type Bought = Parameters<typeof newPurchases>[0][number];
