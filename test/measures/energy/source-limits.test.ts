import { expect, test } from 'vitest';
import type { HeatSource } from '../../../src/home/home.ts';
import { BOILER, home, type Moment, measure, setup } from '../hand-made.ts';

const PUMP: HeatSource = {
  ...BOILER,
  ...{ name: 'heat pump', fuel: 'electricity', power: 1500 },
  conversion: { by: 'cop', outdoor: [-10, 10], cop: [2, 4] },
};

/** Notices of a day under a source, by the hour. */
function told(source: HeatSource, hourly: (hour: number) => Moment): Record<string, string> {
  const own = setup({
    home: home({ sources: [source] }),
    period: { ...setup().period, hours: 24 },
  });
  const { notices } = measure(own, (step) => hourly(step / 6));
  return Object.fromEntries(notices.map(({ id, text }) => [id, text]));
}

test('a source that gives all it can for half a day on end is too small; in the morning it is not', () => {
  // 500 W at a COP of 3 are all 1500 W
  const full = (hours: number) =>
    told(PUMP, (hour) => ({ outdoor: 0, fuel: [hour < hours ? 500 : 100] }));
  expect(full(11)).not.toHaveProperty('source-too-small');
  expect(full(13)['source-too-small']).toMatch(
    /^The heat pump gave all it could \(1500 W at most\) for 13 h,/,
  );
  // At 97 % it keeps up.
  expect(told(PUMP, () => ({ outdoor: 0, fuel: [485] }))).not.toHaveProperty('source-too-small');
  // Of 1500 W by name 750 are left at 0 °C, half way from 1000 W at 10 °C to 500 W at -10 °C.
  const weak = { ...PUMP, powerCurve: { outdoor: [-10, 10], value: [500, 1000] } };
  const gives = (fuel: number) => told(weak, () => ({ outdoor: 0, fuel: [fuel] }));
  expect(gives(240)).not.toHaveProperty('source-too-small');
  expect(gives(250)).toHaveProperty('source-too-small');
  const helped = { ...PUMP, backup: 1000 };
  const withBackup = (backup: number) =>
    told(helped, () => ({ outdoor: 0, fuel: [500], backup: [backup] }));
  expect(withBackup(500)).not.toHaveProperty('source-too-small');
  expect(withBackup(1000)['source-too-small']).toContain('(2500 W with its backup at most)');
});

test('heat from below the coldest temperature of a table is told; one COP knows no coldest', () => {
  const cold = (source: HeatSource, share: number) =>
    told(source, (hour) => ({ outdoor: hour < 24 * share ? -20 : -10, fuel: [100] }));
  expect(cold(PUMP, 0.5)['cop-beyond-table']).toMatch(
    /gave 50 % of its heat below -10 °C outdoors, .* a COP of 2\.0 and its power;/,
  );
  // One hour of a day is 4 % and not worth a word; two are 8 %.
  expect(cold(PUMP, 2 / 24)['cop-beyond-table']).toContain('gave 8 % of its heat');
  expect(cold(PUMP, 1 / 24)).not.toHaveProperty('cop-beyond-table');
  const one: HeatSource = { ...PUMP, conversion: { by: 'cop', outdoor: [0], cop: [2] } };
  expect(cold(one, 1)).not.toHaveProperty('cop-beyond-table');
  expect(cold(BOILER, 1)).not.toHaveProperty('cop-beyond-table');
});
