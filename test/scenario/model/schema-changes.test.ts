import { readdirSync, readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import type { SchemaNode } from '../../reference/described-schema.ts';
import { scenarioJsonSchema } from '../../reference/scenario-json-schema.ts';

const SCHEMA = scenarioJsonSchema() as SchemaNode;
const PLAN = SCHEMA.properties!['plans']!.additionalProperties as SchemaNode;
const CHANGE = PLAN.properties!['change']!;
const takes = new Ajv({ strict: false, code: { optimize: false } }).compile(SCHEMA);
const isHome = (file: string): boolean => file.endsWith('.yaml');

test.each(readdirSync('scenarios').filter(isHome))(
  'an editor takes all that %s and its plans say',
  (file) => {
    const scenario = parse(readFileSync(`scenarios/${file}`, 'utf8'));
    takes(scenario);
    expect(takes.errors).toBeNull();
    expect(Object.keys(scenario.plans).length).toBeGreaterThan(1);
  },
);

const { plans: _, ...FLAT } = parse(readFileSync('scenarios/flat.yaml', 'utf8'));

/** Whether an editor takes a change of the flat, in a plan of its own; what it marks lies there. */
function accepts(change: object): boolean {
  const taken = takes({ ...FLAT, plans: { now: { change: {} }, other: { change } } });
  for (const { instancePath } of takes.errors ?? []) {
    expect(instancePath).toMatch(/^\/plans\/other\/change/);
  }
  return taken;
}

test.each([
  ['a key of a device, without the rest of the device', { devices: { drier: { target: '55 %' } } }],
  ['a device taken away', { devices: { drier: null } }],
  ['a key of one room taken away', { home: { rooms: { living: { height: null } } } }],
  ['a whole section taken away', { heating: null }],
  ['a list, which takes the place of the one before', { rules: [] }],
  ['an item more of a list', { household: { activities: { add: [{ what: 'cleaning' }] } } }],
  [
    'a key of one item and another one gone',
    { household: { activities: { change: { laundry: { number: 3 } }, drop: ['candles'] } } },
  ],
  ['nothing', {}],
])('an editor takes %s as a change', (_, change) => {
  expect(accepts(change)).toBe(true);
});

test.each([
  ['a key that there is not', { heating: { setpiont: 18 } }],
  ['a number out of range', { home: { rooms: { living: { 'floor area': -3 } } } }],
  ['a list in place of a mapping', { devices: { drier: [] } }],
  ['an item of a list that lacks what it needs', { rules: [{ name: 'too damp' }] }],
  ['a word that no list knows', { household: { airing: { append: [] } } }],
  ['plans within plans', { plans: {} }],
])('an editor marks %s in a change', (_, change) => {
  expect(accepts(change)).toBe(false);
});

test('keys of a change say what they are, and nothing of what is taken where they are left out', () => {
  const { setpoint } = CHANGE.properties!['heating']!.properties!;
  const own = SCHEMA.properties!['heating']!.properties!['setpoint']!;
  expect(setpoint!.description!.length).toBeGreaterThan(10);
  expect(own.description!.startsWith(setpoint!.description!)).toBe(true);
  const {
    description,
    examples,
    default: usual,
  } = CHANGE.properties!['site']!.properties!['albedo']!;
  expect([examples, usual]).toEqual([undefined, undefined]);
  expect(description).not.toMatch(/; must be given|; where not given, /);
});
