import { expect, test } from 'vitest';
import { preparePlan } from '../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { homeWith } from './problems-of.ts';

const cautions = (more: string) =>
  preparePlan(readScenario(homeWith(more), 'h.yaml'), { plan: null, set: [], files: new Map() })
    .cautions;
const ids = (more: string) => cautions(more).map(({ id }) => id);

test('a fuel-burning appliance needs a carbon-monoxide alarm', () => {
  expect(ids('heating: { source: boiler, setpoint: 20 }')).toEqual([
    'co-alarm',
    'mould',
    'model-limits',
  ]);
  expect(ids('heating: { source: direct electric, setpoint: 20 }')).toEqual([
    'mould',
    'model-limits',
  ]);
});

test('infant, frail, low setting, frost', () => {
  expect(
    ids(
      'heating: { source: heat pump, setpoint: 20 }\nhousehold: { people: [{ who: infant }, { who: frail adult }] }',
    ),
  ).toEqual(['infant', 'frail', 'mould', 'model-limits']);
  expect(ids('heating: { source: heat pump, setpoint: 17 }')).toContain('low-setpoint');
  expect(ids('heating: { source: heat pump, setpoint: 18 }')).not.toContain('low-setpoint');
  expect(ids('heating: { source: heat pump, setpoint: 20, rooms: { bedroom: off } }')).toContain(
    'frost',
  );
});

test('a low setting by night counts, and names the room', () => {
  const low = cautions('heating: { source: heat pump, setpoint: 20, rooms: { bedroom: 16 } }');
  expect(low.find(({ id }) => id === 'low-setpoint')?.text).toContain('below 18 °C in bedroom:');
  expect(
    ids(
      'heating: { source: heat pump, setpoint: 20, night: { setpoint: 15, from: "22:00", to: "06:00" } }',
    ),
  ).toContain('low-setpoint');
});

test('no caution ever gives a verdict of safety', () => {
  const all = cautions(
    'heating: { setpoint: 16, rooms: { bedroom: off } }\nhousehold: { people: [{ who: infant }, { who: frail adult }] }',
  );
  expect(all.length).toBe(7);
  for (const { text } of all) expect(text).not.toMatch(/\bsafe(ly|ty)?\b/i);
});
