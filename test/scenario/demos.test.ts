import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';

const FILES = readdirSync('scenarios').filter((file) => file.endsWith('.yaml'));
const read = (file: string) => readScenario(readFileSync(`scenarios/${file}`, 'utf8'), file);

describe.each(FILES)('%s', (file) => {
  test('is read without a problem, names its schema, and every plan of it can be prepared', () => {
    expect(readFileSync(`scenarios/${file}`, 'utf8')).toMatch(
      /^# yaml-language-server: \$schema=\.\.\/docs\//,
    );
    const scenario = read(file);
    for (const { name, says } of scenario.plans) {
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
    'nineteen',
    'fifteen-at-night',
    'airing',
  ]);
  const plan = (name: string) => preparePlan(scenario, { plan: name, set: [], files: new Map() });
  expect(plan('as-lived').home.rooms.length).toBeGreaterThanOrEqual(6);
  for (const line of plan('as-lived').household.setpoints)
    expect(line).toEqual({ base: 21, spells: [] });
  for (const line of plan('nineteen').household.setpoints) expect(line.base).toBe(19);
  for (const line of plan('fifteen-at-night').household.setpoints) {
    expect(line.spells).toEqual([{ days: 127, from: 1350, to: 1800, value: 15 }]);
  }
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
      expect(spells[0]).toMatchObject({ months: 0b0001_1111_0000, value: 0.1 });
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
