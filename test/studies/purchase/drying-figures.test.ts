import { expect, test } from 'vitest';
import type { DeviceMeasures } from '../../../src/measures/plan-measures.ts';
import { dryingFigures } from '../../../src/studies/purchase/drying-figures.ts';

/** 100 hours, 30 kWh and 25 litres. */
const DRIER: DeviceMeasures = {
  ...{ electricity_kwh: 30, electricity_money: null, fuel_kwh: 0, water_kg: -25, heat_kwh: 45 },
  ...{ hours: 100, starts: 20, emptied: 6, hours_4_pa_below_outdoors: null },
};

test('half of a year counts twice for a year, and the same for a day or a kilowatt-hour', () => {
  expect(dryingFigures(DRIER, 4383, 12)).toEqual({
    run_hours_per_year: 200,
    kwh_per_year: 60,
    litres_per_year: 50,
    litres_a_day_running: 6, // 25 L in 100/24 days
    litres_per_kwh: 25 / 30,
    label_litres_a_day: 12,
    share_of_label: 0.5,
    tank_empties_per_year: 12,
  });
});

test('without a label, a run or a draw nothing is set against it', () => {
  expect(dryingFigures(DRIER, 8760, null)).toMatchObject({
    litres_a_day_running: 6,
    share_of_label: null,
  });
  const idle = { ...DRIER, hours: 0, electricity_kwh: 0, electricity_money: null, water_kg: 0 };
  expect(dryingFigures(idle, 8760, 12)).toMatchObject({
    litres_a_day_running: null,
    litres_per_kwh: null,
    share_of_label: null,
  });
});

test('a device that wets the room takes nothing', () => {
  const humidifier = { ...DRIER, water_kg: 25 };
  expect(dryingFigures(humidifier, 8760, null)).toMatchObject({
    litres_per_year: 0,
    litres_per_kwh: 0,
  });
});
