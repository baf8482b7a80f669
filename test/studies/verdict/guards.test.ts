import { describe, expect, test } from 'vitest';
import type { PlanFigures } from '../../../src/studies/effects/plan-figures.ts';
import { guardsOf, happening } from '../../../src/studies/verdict/guards.ts';
import { preparedPlans } from '../answers/asked.ts';

/** What a plan with a change is for, beside the home as it is or with another change. */
function guards(change: string, before = '{}'): string {
  const [one, other] = preparedPlans(
    `  before: { change: ${before} }\n  after: { change: ${change} }\n`,
  );
  return guardsOf(one!, other!).join(' ');
}
const device = (kind: string) => `{ devices: { new: { room: den, ${kind} } } }`;
const rule = (when: string) =>
  `{ rules: [{ name: r, when: [${when}], response: [{ tell: look }] }] }`;

describe('what a plan guards against is seen from what it changes', () => {
  test.each([
    ['{ heating: { setpoint: 19 } }', 'damp cold'],
    ['{ household: { airing: [{ room: den, at: "08:00", lasts: 10 min }] } }', 'damp air'],
    ['{ home: { rooms: { den: { floor area: 20 } } } }', 'damp cold'],
    [device('kind: dehumidifier, label: 12 L/day'), 'damp'],
    [device('kind: humidifier'), 'dry'],
    [device('kind: purifier, clean air: 200 m3/h'), 'air'],
    [device('kind: extract fan, flow: 60 m3/h, runs: always'), 'damp air'],
    [device('kind: heater, power: 1 kW, runs: always'), 'damp cold'],
    [rule('{ room: den, reading: temperature, over: 26 }'), 'heat'],
    [rule('{ room: den, reading: temperature, under: 17 }'), 'cold'],
    [rule('{ room: den, reading: humidity, over: 65 }'), 'damp'],
    [
      rule('{ room: den, reading: humidity, over: 65 }, { after: "22:00", before: "06:00" }'),
      'damp',
    ],
    [rule('{ room: den, reading: co2, over: 1200 }, { windows: closed }'), 'air'],
  ])('%s: %s', (change, expected) => expect(guards(change)).toBe(expected));

  test('ventilation is against dry air too where it brings more moisture back', () => {
    const unit = (recovery: string) =>
      `{ devices: { unit: { kind: balanced ventilation, supplies: { den: 40 }, extracts: { bath: 40 }, moisture recovery: ${recovery} } } }`;
    expect(guards(unit('0 %'))).toBe('damp air');
    expect(guards(unit('65 %'))).toBe('damp dry air');
    expect(guards(unit('65 %'), unit('0 %'))).toBe('damp dry air');
    expect(guards(unit('0 %'), unit('65 %'))).toBe('damp air');
  });

  test('prices and windows alone tell nothing: everything counts', () => {
    const all = 'damp cold heat dry air';
    expect(guards('{ money: { gas: { price: 0.09 } } }')).toBe(all);
    expect(guards(rule('{ windows: open }'))).toBe(all);
  });

  test('beside devices that were there already, only new ones count', () => {
    const had = 'old: { kind: humidifier, room: den }';
    const more = `{ devices: { ${had}, new: { kind: dehumidifier, room: bath, label: 12 L/day } } }`;
    expect(guards(more, `{ devices: { ${had} } }`)).toBe('damp');
  });
});

describe('what is guarded against happens', () => {
  const YEAR = 8760;
  const none = { value: 0, room: '' };
  const figures = (more: Partial<PlanFigures>): PlanFigures => ({
    ...{ plan: 'made by hand', money: 0, energy: 0, alerts: 0, cold: none, mould: none },
    ...{
      warm: 0,
      warmBy: 0,
      damp: 0,
      dry: 0,
      spots: 0,
      air: [],
      part: null,
      coldOf: {},
      dampest: none,
      wettest: none,
    },
    ...more,
  });
  const quiet = figures({});

  test('from the least that people notice on', () => {
    const cold = (value: number) => figures({ cold: { value, room: 'den' } });
    expect(happening('cold', cold(0.25), quiet, YEAR)).toBe(0);
    expect(happening('cold', cold(0.5), quiet, YEAR)).toBe(1);
    expect(happening('warm', figures({ warm: 3 }), quiet, YEAR)).toBe(2);
    expect(happening('dry', figures({ dry: 10 }), quiet, YEAR)).toBe(1);
    expect(happening('air', quiet, quiet, YEAR)).toBe(-1);
  });

  test('mould by the index of a year, by wet corners where it is less', () => {
    const damp = figures({ spots: 4, mould: { value: 1.5, room: 'den' } });
    expect(happening('mould', damp, quiet, YEAR)).toBe(0.5);
    expect(happening('mould', damp, quiet, YEAR - 13)).toBe(0.5); // a file that begins at 13:00
    expect(happening('mould', damp, quiet, 336)).toBe(3);
  });

  test('damp air and wet corners by themselves, and as what mould comes from', () => {
    expect(happening('damp', figures({ damp: 40 }), quiet, YEAR)).toBe(3);
    expect(happening('spots', figures({ spots: 12 }), quiet, YEAR)).toBe(1);
    expect(happening('spots', figures({ damp: 40 }), quiet, YEAR)).toBe(-1);
    const mould = figures({ mould: { value: 1.5, room: 'den' } });
    expect(happening('damp', mould, quiet, YEAR)).toBe(0.5);
    expect(happening('spots', mould, quiet, YEAR)).toBe(0.5);
  });

  test('damp that is in one room, from twice of what counts in all', () => {
    const den = (value: number) => ({ value, room: 'den' });
    expect(happening('damp', figures({ damp: 3, dampest: den(20) }), quiet, YEAR)).toBe(0);
    expect(happening('damp', figures({ damp: 3, dampest: den(60) }), quiet, YEAR)).toBe(2);
    expect(happening('spots', figures({ spots: 2, wettest: den(12) }), quiet, YEAR)).toBe(0);
    expect(happening('damp', figures({ damp: 20, dampest: den(30) }), quiet, YEAR)).toBe(1);
    // What showers alone make of a bathroom.
    const bath = figures({ damp: 8.2, dampest: den(14.8), spots: 2.4, wettest: den(7.1) });
    expect(happening('damp', bath, quiet, YEAR)).toBeLessThan(0);
    expect(happening('spots', bath, quiet, YEAR)).toBeLessThan(0);
  });

  test('of the air only what differs between the two plans', () => {
    const air = (name: string, value: number, over: number, minded = false) => ({
      ...{ name, label: name, unit: 'ppm', kind: 'mean' as const, value, over, minded },
    });
    const one = figures({ air: [air('co2', 900, 5), air('tvoc', 300, 9)] });
    const other = figures({ air: [air('co2', 800, 2), air('tvoc', 301, 9)] });
    expect(happening('air', one, other, YEAR)).toBe(4);
    expect(happening('air', one, one, YEAR)).toBe(8);
    const sneezed = figures({ air: [air('pollen', 8, 0, true)] });
    expect(happening('air', sneezed, figures({ air: [air('pollen', 2, 0)] }), YEAR)).toBe(1);
  });
});
