import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readOnce } from './read-once.ts';

const FILES = readdirSync('scenarios').filter((file) => file.endsWith('.yaml'));
const read = (file: string) => readOnce(readFileSync(`scenarios/${file}`, 'utf8'), file);

describe.each(FILES)('%s', (file) => {
  test('is read without a problem, names its schema, and every plan of it can be prepared', () => {
    expect(readFileSync(`scenarios/${file}`, 'utf8')).toMatch(
      /^# yaml-language-server: \$schema=\.\.\/docs\//,
    );
    const scenario = read(file);
    expect(scenario.invented).toBe(true);
    for (const { name, description: says } of scenario.plans) {
      expect(says).not.toBe('');
      const plan = preparePlan(scenario, { plan: name, set: [], files: new Map() });
      expect(plan.plan).toBe(name);
    }
  });

  test('calls nobody safe', () => {
    expect(readFileSync(`scenarios/${file}`, 'utf8')).not.toMatch(/\bsafe\b/i);
  });
});

test('the terrace has its plans, rooms and an infant', () => {
  const scenario = read('terrace.yaml');
  expect(scenario.plans.map(({ name }) => name)).toEqual([
    'as-lived',
    'always-on',
    'nineteen',
    'fifteen-at-night',
    'airing',
    'bathroom-fan',
    'smart-valves',
    'valve-sensors',
    'when-home',
    'when-home-lead',
    'loft-and-draughts',
    'dry-bedroom',
    'dry-bedroom-gated',
    'alerts',
    'alerts-always',
    'all-together',
  ]);
  const plan = (name: string) => preparePlan(scenario, { plan: name, set: [], files: new Map() });
  expect(plan('as-lived').home.rooms.length).toBeGreaterThanOrEqual(6);
  const settings = (name: string) =>
    plan(name).household.setpoints.map(({ base, spells }) => [
      base,
      ...spells.map(({ from, to, value }) => `${from / 60} to ${to / 60}: ${value}`),
    ]);
  const [living, , hall, , bedroom] = settings('as-lived');
  expect(hall).toEqual([16, '6.5 to 9: 21', '16 to 22.5: 21']);
  expect([living, bedroom], 'plain valves').toEqual([[21], [19]]);
  expect(settings('smart-valves')[4]).toEqual([16, '6.5 to 9: 19', '16 to 22.5: 19']);
  expect(settings('always-on')[0]).toEqual([21]);
  expect(settings('nineteen').map((room) => `${room}`.slice(-2))).toEqual(Array(7).fill('19'));
  expect(settings('fifteen-at-night')[2]).toEqual([21, '22.5 to 30: 15']);
  const lived = plan('as-lived').household.openings;
  plan('airing').household.openings.forEach(({ spells }, k) => {
    expect(spells.slice(0, -2), 'what is opened anyway').toEqual(lived[k]!.spells);
    expect(spells.slice(-2).map(({ from, to, value }) => [from, to - from, value])).toEqual([
      [450, 10, 1],
      [1140, 10, 1],
    ]);
  });
  for (const use of ['living', 'bedroom']) {
    const tilted = lived.filter((_, k) => plan('as-lived').home.openings[k]!.name.includes(use));
    for (const { spells } of tilted) {
      expect(spells).toContainEqual(expect.objectContaining({ months: 0b1110_0000, value: 0.1 }));
    }
  }
  expect(plan('as-lived').cautions.map(({ id }) => id)).toEqual(
    expect.arrayContaining(['co-alarm', 'infant']),
  );
});

test('the flat is two rooms and a bathroom on electricity by day and night', () => {
  const plan = preparePlan(read('flat.yaml'), { plan: null, set: [], files: new Map() });
  expect(plan.home.rooms).toHaveLength(3);
  expect(plan.home.sources.map(({ fuel }) => fuel)).toEqual(['electricity']);
  expect(plan.prices.fuels.electricity?.tariff.by).toBe('blocks');
});

test('the flat may have air conditioners in two rooms', () => {
  const scenario = read('flat.yaml');
  const plan = (name: string) => preparePlan(scenario, { plan: name, set: [], files: new Map() });
  expect(plan('as-lived').home.cooling).toBeUndefined();
  const { home, automation, purchases } = plan('air-conditioner');
  expect(home.cooling?.map(({ room }) => home.rooms[room]!.name)).toEqual(['living', 'bedroom']);
  expect(automation.coolingGates?.[1]).toEqual({ present: 'at home', windowsShut: true });
  expect(purchases).toHaveLength(1);
});

test('the flat may have blinds over two panes, by day in summer and by night in winter', () => {
  const scenario = read('flat.yaml');
  const plan = (name: string) => preparePlan(scenario, { plan: name, set: [], files: new Map() });
  expect(plan('as-lived').home.blinds).toBeUndefined();
  const [day, night] = [plan('blinds-by-day'), plan('blinds-by-day-and-night')];
  expect(day.home.blinds?.map(({ name }) => name)).toEqual([
    'living window inside blind',
    'bedroom window inside blind',
  ]);
  expect(day.household.blinds?.[0]?.spells).toHaveLength(1);
  expect(night.home.blinds).toEqual(day.home.blinds);
  expect(night.household.blinds?.[0]?.spells[0]).toEqual(day.household.blinds?.[0]?.spells[0]);
  expect(night.household.blinds?.[0]?.spells[1]).toMatchObject({ from: 1020, to: 1860 });
});

test('the terrace rehearses presence, a dehumidifier and four rules', () => {
  const scenario = read('terrace.yaml');
  const plan = (name: string) => preparePlan(scenario, { plan: name, set: [], files: new Map() });
  const quiet = plan('as-lived').automation;
  expect(quiet.presenceSensors).toEqual(quiet.presenceSensors.map(() => null));
  expect(quiet.deviceControls.length + quiet.rules.length).toBe(0);

  const home = plan('when-home');
  for (const thermostat of home.automation.thermostats) {
    expect(thermostat).toMatchObject({
      gate: { present: 'in the room', windowsShut: false },
      otherwise: 16,
      lead: { by: 'none' },
    });
  }
  expect(home.automation.presenceSensors.every((sensor) => sensor?.holdOn === 1200)).toBe(true);
  expect(home.household.setpoints).toEqual(plan('always-on').household.setpoints);
  const lead = plan('when-home-lead').automation.thermostats[0]!.lead;
  expect(lead).toEqual({ by: 'learned', most: 7200 });

  const dry = plan('dry-bedroom');
  expect(dry.purchases).toEqual([{ what: 'dehumidifier', price: 180, lastsYears: 8 }]);
  expect(dry.home.devices.map(({ room }) => dry.home.rooms[room]!.name)).toEqual(['main bedroom']);
  const [free] = dry.automation.deviceControls;
  const [gated] = plan('dry-bedroom-gated').automation.deviceControls;
  expect(free!.gate.present).toBe('no matter');
  expect(gated).toEqual({ ...free!, gate: { present: 'in the room', windowsShut: false } });

  const rules = (name: string) => plan(name).automation.rules;
  expect(rules('alerts').map(({ name }) => name)).toEqual([
    'stale air',
    'damp bedroom',
    'cold with windows closed',
    'cold with windows open',
  ]);
  expect(new Set(rules('alerts').map(({ gate }) => gate.present))).toEqual(new Set(['at home']));
  expect(
    rules('alerts-always').map((rule) => ({ ...rule, gate: rules('alerts')[0]!.gate })),
  ).toEqual(rules('alerts'));
  const all = plan('all-together');
  expect(all.automation.rules).toEqual(rules('alerts'));
  expect(all.home.devices).toEqual(dry.home.devices);
  expect(all.purchases).toEqual([...plan('when-home').purchases, ...dry.purchases]);
  expect(all.automation.thermostats[0]).toMatchObject({
    windowDelay: 120,
    lead: { by: 'learned' },
  });
});

test('the cottage has a fire on winter evenings, a price for its logs and cautions for it', () => {
  const scenario = read('stove-cottage.yaml');
  const plan = (name: string) => preparePlan(scenario, { plan: name, set: [], files: new Map() });
  const lived = plan('as-lived');
  expect(lived.home.devices.map(({ does }) => does.kind)).toEqual(['stove']);
  expect(lived.prices.fuels.wood?.tariff).toEqual({ by: 'flat', price: 0.09 });
  expect(lived.cautions.map(({ id }) => id)).toEqual(expect.arrayContaining(['co-alarm', 'stove']));
  expect(plan('no-fire').home.devices).toEqual([]);
  expect(plan('purifier-and-airing').home.devices.map(({ name }) => name)).toEqual([
    'stove',
    'purifier',
  ]);
  expect(plan('purifier-and-airing').automation.airings).toHaveLength(1);
  expect(plan('purifier').purchases.map(({ what }) => what)).toEqual(['purifier', 'filter']);
});
