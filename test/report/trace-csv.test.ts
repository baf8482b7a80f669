import { expect, test } from 'vitest';
import type { TraceView } from '../../src/engine/record/trace.ts';
import { createTraceCsv } from '../../src/report/trace-csv.ts';

const JAN_1 = Date.UTC(2023, 0, 1) / 1000;
const BERLIN_WINTER = { from: [0], offset: [3600] };

/** A stretch in which every figure of room i in step s is s + 10 i,  */
function stretch(steps: number, rooms: number, firstStep = 0, dt = 1800): TraceView {
  const perRoom = Float64Array.from(
    { length: steps * rooms },
    (_, k) => Math.floor(k / rooms) + 10 * (k % rooms),
  );
  const perStep = Float64Array.from({ length: steps }, (_, s) => s);
  return {
    firstStep,
    steps,
    rooms,
    dt,
    start: JAN_1 + firstStep * dt,
    room: {
      airTemperature: perRoom,
      radiantTemperature: perRoom,
      operativeTemperature: perRoom,
      humidityRatio: perRoom.map((x) => x / 1000),
      relativeHumidity: perRoom,
      vapourPressure: perRoom,
      heating: perRoom,
      cooling: perRoom.map((x) => 2 * x),
      outdoorAir: perRoom.map((x) => x / 1000),
      pressureDifference: perRoom,
      occupants: perRoom,
      asleep: perRoom,
      windowOpen: perRoom,
      condensation: perRoom.map((x) => -x * 1e-9),
      wallCondensation: perRoom.map((x) => x * 1e-6),
      heldHeat: perRoom,
      heldVapour: perRoom,
      species: [perRoom],
    },
    home: {
      outdoorTemperature: perStep,
      outdoorVapourPressure: perStep,
      outdoorSpecies: [perStep],
      infiltration: perStep.map((x) => x / 3600),
      sourceFuel: [perStep],
      sourceBackup: [perStep],
      electricity: perStep,
      gas: perStep,
      blinds: [],
      coolers: [],
      devices: [],
    },
  };
}

const setup = {
  rooms: ['hall', 'bed, small'],
  species: [{ name: 'CO2', unit: 'ppm' as const }],
  sources: ['boiler'],
  clock: BERLIN_WINTER,
};

test('one row an hour, each the mean of its steps', () => {
  const csv = createTraceCsv(setup);
  csv.observe(stretch(4, 2));
  const [header, first, second, ...rest] = csv.text().split('\n');
  expect(rest).toEqual(['']);
  expect(header).toMatch(
    /^time_utc,time_local,outdoor_temperature_c,outdoor_vapour_pressure_pa,infiltration_m3_per_h,electricity_w,gas_w,boiler\.fuel_w,outdoor_co2_ppm,hall\.air_temperature_c,/,
  );
  expect(header).toContain('"bed, small.co2_ppm"');
  expect(first).toBe(
    '2023-01-01T00:00:00Z,2023-01-01T01:00:00+01:00,' +
      '0.50,0.5,0.50,0.5,0.5,0.5,0.5,' +
      '0.50,0.50,0.50,0.5,0.500,0.5,0.5,1.0,0.50,0.50,0.500,0.00,1.80,0.5,' +
      '10.50,10.50,10.50,10.5,10.500,10.5,10.5,21.0,10.50,10.50,10.500,-0.04,37.80,10.5',
  );
  expect(second).toMatch(/^2023-01-01T01:00:00Z,2023-01-01T02:00:00\+01:00,2.50,/);
});

test('a blind has the share of the hour in which it was closed', () => {
  const csv = createTraceCsv({ ...setup, blinds: ['hall window curtain'] });
  const { home, ...rest } = stretch(2, 2);
  csv.observe({ ...rest, home: { ...home, blinds: [Float64Array.of(1, 0.5)] } });
  const [header = '', row = ''] = csv.text().split('\n');
  const at = header.split('"')[0]!.split(',').indexOf('hall window curtain.closed_share');
  expect(row.split(',')[at]).toBe('0.750');
});

test('a name that a spreadsheet would work out is made harmless', () => {
  const [header] = createTraceCsv({ ...setup, rooms: ['=A1', 'hall'] })
    .text()
    .split('\n');
  expect(header).toContain(",'=A1.air_temperature_c,");
  expect(header).toContain(',hall.air_temperature_c,');
});

test('an hour may be cut by the end of a stretch', () => {
  const whole = createTraceCsv(setup);
  whole.observe(stretch(2, 2));
  const cut = createTraceCsv(setup);
  const [a, b] = [stretch(1, 2), stretch(2, 2)];
  cut.observe(a);
  const second = { ...b, steps: 1, firstStep: 1, start: JAN_1 + 1800 };
  const tail = (x: Float64Array, from: number) => x.slice(from);
  cut.observe({
    ...second,
    room: {
      ...(Object.fromEntries(
        Object.entries(b.room).map(([k, v]) => [
          k,
          v instanceof Float64Array ? tail(v, 2) : v.map((x: Float64Array) => tail(x, 2)),
        ]),
      ) as unknown as TraceView['room']),
    },
    home: {
      ...(Object.fromEntries(
        Object.entries({ ...b.home, devices: [], coolers: [] }).map(([k, v]) => [
          k,
          v instanceof Float64Array ? tail(v, 1) : v.map((x: Float64Array) => tail(x, 1)),
        ]),
      ) as unknown as TraceView['home']),
    },
  });
  expect(cut.text()).toBe(whole.text());
});

test('local time west of Greenwich and with a half hour', () => {
  const csv = createTraceCsv({ ...setup, clock: { from: [0], offset: [-12600] } });
  csv.observe(stretch(2, 2));
  expect(csv.text()).toContain('\n2023-01-01T00:00:00Z,2022-12-31T20:30:00-03:30,');
});

test('devices and backup have columns of their own, and their electricity is in the sum', () => {
  const csv = createTraceCsv({ ...setup, backedUp: ['boiler'], devices: ['dryer'] });
  const plain = stretch(2, 2);
  const perStep = plain.home.electricity;
  const dryer = {
    electricity: perStep.map((x) => 100 * x),
    fuel: perStep,
    water: perStep.map((x) => -x / 3.6e6),
    heat: perStep,
    share: perStep,
  };
  csv.observe({ ...plain, home: { ...plain.home, devices: [dryer] } });
  const [header, row] = csv
    .text()
    .split('\n')
    .map((line) => line.split(','));
  const cell = (name: string): string => row![header!.indexOf(name)]!;
  // Two steps, 0 and 1: their mean is a half.
  expect(cell('electricity_w')).toBe('50.5');
  expect(cell('boiler.backup_w')).toBe('0.5');
  expect(cell('dryer.electricity_w')).toBe('50.0');
  expect(cell('dryer.water_g_per_h')).toBe('-0.50');
  expect(cell('dryer.running_share')).toBe('0.500');
});

test('electricity of the home is that of appliances, devices and coolers', () => {
  const view = stretch(2, 2);
  const cooler = { removed: view.home.electricity, water: view.home.electricity };
  const coolers = [{ ...cooler, electricity: Float64Array.of(100, 300) }];
  const csv = createTraceCsv(setup);
  csv.observe({ ...view, home: { ...view.home, coolers } });
  // Appliances draw 0 and 1 W.
  expect(csv.text().split('\n')[1]?.split(',')[5]).toBe('200.5');
});
