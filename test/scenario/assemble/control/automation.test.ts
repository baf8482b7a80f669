import { describe, expect, test } from 'vitest';
import { OPEN_GATE, PERFECT_SENSOR, PLAIN_THERMOSTAT } from '../../../../src/control/automation.ts';
import { preparePlan } from '../../../../src/scenario/prepare-plan.ts';
import { readScenario } from '../../../../src/scenario/read-scenario.ts';
import { homeWith } from '../../problems-of.ts';

const prepared = (more: string, set: string[] = []) =>
  preparePlan(readScenario(homeWith(more), 'h.yaml'), { plan: null, set, files: new Map() });
const automation = (more: string) => prepared(more).automation;
const listed = (more: string) => prepared(more).assumed.map(({ path }) => path);

describe('a home that says nothing of it', () => {
  test('is watched by nobody, and its thermostats only guard against frost', () => {
    const { presenceSensors, thermostats, ...rest } = automation('');
    expect(presenceSensors).toEqual([null, null]);
    const heatingSeason = {
      ...{ months: 0b1111_0001_1111, outdoorBelow: 12, days: 3 },
      ifCold: { under: 2, after: 3600 },
    };
    const airings = [expect.objectContaining({ name: 'tilted on mild days' })];
    expect(rest).toEqual({ heatingSeason, seed: 1, airings, deviceControls: [], rules: [] });
    for (const thermostat of thermostats) {
      const guard = { otherwise: 5, frostGuard: 5, radiantShare: 0.3 };
      expect(thermostat).toEqual({ ...PLAIN_THERMOSTAT, ...guard });
    }
    expect(listed('').filter((path) => /sensors|devices|gate|hold off/.test(path))).toEqual([]);
  });

  test('has no thermostats to speak of where nothing heats', () => {
    const { thermostats } = automation('heating: { source: none }');
    expect(thermostats).toEqual([PLAIN_THERMOSTAT, PLAIN_THERMOSTAT]);
  });
});

describe('thermostats', () => {
  const of = (heating: string) => automation(`heating: ${heating}`).thermostats;

  test('gates, alone and together, with what is kept when they are shut', () => {
    const gate = (words: string) => of(`{ setpoint: 20, setback: 16, gate: ${words} }`)[0]!;
    expect(gate('always').gate).toEqual(OPEN_GATE);
    expect(gate('when present')).toMatchObject({
      gate: { present: 'in the room', windowsShut: false },
      otherwise: 16,
      holdOff: 600,
    });
    expect(gate('[when somebody is home, when windows are closed]').gate).toEqual({
      present: 'at home',
      windowsShut: true,
    });
    expect(gate('when windows are closed')).toMatchObject({ otherwise: 16, holdOff: 0 });
  });

  test('a room goes its own way, and takes the rest from the home', () => {
    const all = `{ setpoint: 20, gate: when present, deadband: 1, window lock-out: 2 min,
      rooms: { bedroom: { gate: always, lead: 45 min, frost guard: null } } }`;
    const [living, bedroom] = of(all.replace(', frost guard: null', ''));
    expect(living).toMatchObject({ windowDelay: 120, deadband: 1, lead: { by: 'none' } });
    expect(bedroom).toMatchObject({
      gate: OPEN_GATE,
      windowDelay: 120,
      deadband: 1,
      lead: { by: 'fixed', seconds: 2700 },
    });
    expect(of('{ setpoint: 20, gate: when present, rooms: { bedroom: off } }')[1]).toEqual({
      ...PLAIN_THERMOSTAT,
      otherwise: 5,
      frostGuard: 5,
    });
  });

  test('sensors on the valve read high by what is given, else by the usual, which is listed', () => {
    expect(of('{ sensor: on the valve }')[0]).toMatchObject({ bias: 0, valveBias: 2 });
    expect(listed('heating: { sensor: on the valve }')).toContain('/heating/sensor');
    const given = '{ place: on the valve, bias: 0.5 K, at full output: 4 }';
    expect(of(`{ sensor: ${given} }`)[0]).toMatchObject({ bias: 0.5, valveBias: 4 });
    expect(of('{ sensor: remote }')[0]).toMatchObject({ bias: 0, valveBias: 0 });
    expect(of('{ lead: learned }')[0]!.lead).toEqual({ by: 'learned', most: 10_800 });
  });
});

describe('one thermostat for the home', () => {
  const more = `heating: { thermostat: living, setpoint: 20, night: { setpoint: 16, from: "22:00", to: "06:00" },
    rooms: { bedroom: 18 } }`;

  test('calls for all; the other rooms have plain valves at one setting', () => {
    const { thermostats, callRoom } = automation(more);
    expect(callRoom).toBe(0);
    expect(thermostats[0]).toMatchObject({ deadband: 1, proportionalBand: 0 });
    expect(thermostats[1]).toEqual({
      ...PLAIN_THERMOSTAT,
      ...{ radiantShare: 0.3, proportionalBand: 2 },
    });
    expect(listed(more)).toEqual(
      expect.arrayContaining(['/heating/deadband', '/heating/proportional band']),
    );
    const { setpoints } = prepared(more).household;
    expect(setpoints[0]!.spells.length).toBeGreaterThan(0);
    expect(setpoints[1]).toEqual({ base: 18, spells: [] });
  });

  test('a plain valve knows no setback, and may stand below that of the thermostat', () => {
    const cool =
      'heating: { thermostat: living, setpoint: 20, setback: 16, rooms: { bedroom: 15 } }';
    expect(prepared(cool).household.setpoints[1]).toEqual({ base: 15, spells: [] });
    expect(() => prepared(cool.replace('bedroom: 15', 'living: 15'))).toThrow(/of the setback/);
    const own = cool.replace('thermostat: living, ', '');
    expect(() => prepared(own)).toThrow(
      /rooms\.bedroom: expected a setpoint of the setback \(16 °C\)/,
    );
  });

  test('without it every room calls for itself', () => {
    expect(automation('heating: { setpoint: 20 }').callRoom).toBeUndefined();
  });
});

describe('sensors', () => {
  const reading = (sensors: string, words: string) =>
    automation(
      `sensors: ${sensors}\nrules: [{ name: R, when: [${words}], response: [{ tell: T }] }]`,
    ).rules[0]!.all[0]!;

  test('are the usual ones where nobody says, and those of a room before those of all', () => {
    const damp = '{ room: bedroom, reading: humidity, over: 65 %, clear: 60 }';
    const usual = { bias: 0, noise: 0.3, step: 1, lag: 300, every: 300 };
    expect(reading('{}', damp)).toEqual({
      ...{ quantity: 'relative humidity', room: 1, is: 'above', value: 65, clear: 60 },
      sensor: usual,
    });
    const own = '{ humidity: { bias: 3, lag: 0 }, rooms: { bedroom: { humidity: { bias: -2 } } } }';
    expect(reading(own, damp).sensor).toEqual({ ...usual, bias: -2, lag: 0 });
    expect(listed(`rules: [{ name: R, when: [${damp}], response: [{ tell: T }] }]`)).toContain(
      '/sensors/humidity/bias',
    );
  });

  test('outdoors, windows, people and the clock are read as they are', () => {
    expect(reading('{}', '{ room: outdoors, reading: temperature, under: 3 }')).toMatchObject({
      room: -1,
      sensor: PERFECT_SENSOR,
    });
    expect(reading('{}', '{ windows: closed }')).toEqual({
      ...{ quantity: 'window', room: -1, is: 'below', value: 0.5, clear: 0.5 },
      sensor: PERFECT_SENSOR,
    });
    expect(reading('{}', '{ after: "21:30" }')).toMatchObject({ quantity: 'hour', value: 21.5 });
    const between = (after: string, before: string) =>
      reading('{}', `{ after: "${after}", before: "${before}" }`);
    const past = { quantity: 'hour since noon' };
    expect(between('12:00', '11:59')).toMatchObject({ ...past, value: 0 });
    expect(between('12:01', '12:00')).toMatchObject({ ...past, value: expect.closeTo(1 / 60, 9) });
    const night =
      '[{ name: R, when: [{ after: "22:00", before: "06:30" }], response: [{ tell: T }] }]';
    expect(automation(`rules: ${night}`).rules[0]!.all).toEqual([
      ...[
        { is: 'above', value: 10, clear: 10 },
        { is: 'below', value: 18.5, clear: 18.5 },
      ].map((edge) => ({ ...edge, quantity: 'hour since noon', room: -1, sensor: PERFECT_SENSOR })),
    ]);
  });

  test('what is derived from two errs by both', () => {
    const exact = '{ temperature: { noise: 0 }, humidity: { bias: 3, noise: 0 } }';
    const water = '{ room: living, reading: absolute humidity, over: 9 g/m3 }';
    // 3 % at 20 °C are 0.52 g/m3 and 0.88 K of dew point.
    expect(reading(exact, water).sensor.bias).toBeCloseTo(0.52, 2);
    const dew = '{ room: living, reading: dew point, over: 12 }';
    expect(reading(exact, dew).sensor.bias).toBeCloseTo(0.9, 9);
  });

  test('for presence: one a room as soon as something goes by them, unless there is none', () => {
    const gated =
      'heating: { gate: when somebody is home }\nsensors: { presence: { hold on: 5 min }';
    const { presenceSensors } = automation(`${gated}, rooms: { bedroom: { presence: none } } }`);
    expect(presenceSensors).toEqual([
      { holdOn: 300, delay: 0, missesAwake: 0.02, missesAsleep: 0.5 },
      null,
    ]);
    const own = 'presence: { delay: 2 min }, rooms: { bedroom: { presence: { hold on: 7 min } } }';
    const both = `heating: { gate: when somebody is home }\nsensors: { ${own} }`;
    expect(automation(both).presenceSensors).toMatchObject([
      { holdOn: 600, delay: 120 },
      { holdOn: 420, delay: 120 },
    ]);
    const rule = '{ name: R, when: [{ presence: nobody }], response: [{ tell: gone }] }';
    expect(automation(`rules: [${rule}]`).presenceSensors).not.toContain(null);
  });
});

describe('devices', () => {
  const one = (words: string, more = '') => {
    const plan = prepared(`devices: { it: { ${words} } }\n${more}`);
    return { does: plan.home.devices[0]!, control: plan.automation.deviceControls[0]!, plan };
  };

  test('a humidifier that boils its water takes more power than one that does not', () => {
    const power = (boils: string) => {
      const { does } = one(`kind: humidifier, room: bedroom, boils: ${boils}`).does;
      return (does as { power?: number }).power!;
    };
    expect(power('true')).toBeGreaterThan(2 * power('false'));
  });

  test('a dehumidifier by its label', () => {
    const { does, control, plan } = one(
      'kind: dehumidifier, room: bedroom, label: 25 pint/day, tested at: 65 °F/60 %, tank: drained, target: 50, deadband: 4, hours: "00:30-04:30"',
    );
    expect(does.room).toBe(1);
    expect(does.does).toMatchObject({ kind: 'dehumidifier', ratedHumidity: 60, tank: Infinity });
    if (does.does.kind !== 'dehumidifier') throw new Error('not one');
    expect(does.does.ratedWater * 86_400).toBeCloseTo(11.829, 3);
    expect(does.does.ratedTemperature).toBeCloseTo(18.333, 3);
    expect(control).toMatchObject({
      by: { kind: 'reading', on: { room: 1, is: 'above', value: 52, clear: 48 } },
      permitted: { base: 0, spells: [{ from: 30, to: 270, value: 1 }] },
      emptiedByPeople: false,
      leastRun: 300,
    });
    const paths = plan.assumed.map(({ path }) => path);
    expect(paths).toContain('/devices/it/power');
    expect(paths).not.toContain('/devices/it/label');
  });

  test('every kind with nothing but a room is filled in and listed', () => {
    const bare = ['dehumidifier', 'humidifier', 'extract fan', 'purifier', 'heater', 'stove'];
    for (const kind of bare) {
      const { does, plan } = one(`kind: ${kind}, room: living`);
      expect(does.does.kind).toBe(kind);
      const rows = plan.assumed.filter(({ path }) => path.startsWith('/devices/it/'));
      expect(rows.length).toBeGreaterThan(1);
      for (const { path, value, low, high } of rows) {
        if (typeof value !== 'number') continue;
        expect(low, path).toBeLessThanOrEqual(value);
        expect(high, path).toBeGreaterThanOrEqual(value);
        const more = `devices: { it: { kind: ${kind}, room: living } }`;
        expect(prepared(more, [`${path}=${value}`]).home.devices, path).toEqual(plan.home.devices);
      }
    }
  });

  test('a fan runs with what it names, else by humidity, else always', () => {
    const activities =
      'household: { activities: [{ what: shower }, { what: cooking, name: fry-up }] }';
    const fan = 'kind: extract fan, room: living';
    expect(one(`${fan}, with: [shower, fry-up], run on: 15`, activities).control.by).toEqual({
      kind: 'activity',
      activities: [0, 1],
      runOn: 900,
    });
    expect(one(`${fan}, target: 70, drier by: 1`).control).toMatchObject({
      by: { kind: 'reading', on: { value: 73, clear: 67 } },
      drierBy: 1,
    });
    expect(one(`${fan}, flow: 15 L/s`).does.does).toMatchObject({ flow: 54 / 3600 });
    expect(one(fan).control.by).toEqual({ kind: 'always' });
    expect(one(`${fan}, runs: by rules`).control.by).toEqual({ kind: 'rule' });
  });

  test('a purifier by species, ventilation by room, a heater below its target', () => {
    const purifier = one('kind: purifier, room: living, clean air: 180, tvoc share: 10 %');
    expect(purifier.plan.home.species.map(({ name }) => name)).toEqual(['co2', 'tvoc', 'pm25']);
    if (purifier.does.does.kind !== 'purifier') throw new Error('not one');
    expect(purifier.does.does.cleanAir[0]).toBe(0);
    expect(purifier.does.does.cleanAir[1]).toBeCloseTo(0.005, 12);
    expect(purifier.does.does.cleanAir[2]).toBeCloseTo(0.05, 12);
    const ventilation = one(
      'kind: balanced ventilation, supplies: { bedroom: 36 }, extracts: { living: 36 }',
    );
    expect(ventilation.does).toMatchObject({
      room: 0,
      does: { supplies: [{ room: 1, flow: 0.01 }], extracts: [{ room: 0, flow: 0.01 }] },
    });
    expect(one('kind: heater, room: bedroom, target: 18, deadband: 2').control.by).toMatchObject({
      on: { quantity: 'temperature', is: 'below', value: 17, clear: 19 },
    });
  });

  test('a stove by its logs; with air from outdoors it takes none of the room’s', () => {
    const words = 'kind: stove, room: living, burns: "19:00-22:00", batch: 1.2 kg, refuelling: 40';
    const { does, control, plan } = one(`${words}, wood energy: 4, efficiency: 75 %, particles: 2`);
    expect(does.does).toMatchObject({
      ...{ batch: 1.2, interval: 2400, energy: 14.4e6, efficiency: 0.75 },
      perRefuelling: [0, 3000, 2000],
      roomAir: 20 / 3600,
    });
    expect(control.by).toEqual({
      kind: 'clock',
      schedule: { base: 0, spells: [{ days: 127, from: 1140, to: 1320, value: 1 }] },
    });
    expect(plan.prices.fuels.wood).toBeDefined();
    expect(one(`${words}, air: outdoors`).does.does).toMatchObject({ roomAir: 0 });
  });
});

describe('habits and rules', () => {
  test('airing by readings, after activities and on waking', () => {
    const { airings } = automation(`household:
  activities: [{ what: shower, at: ["07:00"] }, { what: cooking }]
  airing:
    - { room: living, at: "07:00" }
    - { room: bedroom, on waking: bedroom, probability: 50 %, delay: 10 min, drier by: 1.5, not below: -5 }
    - { room: living, after: [shower, cooking], lasts: 20 }
    - { name: stuffy, room: living, when: [{ room: living, reading: co2, over: 1000, under: 4000 }], until: [{ room: living, reading: co2, under: 700 }] }`);
    expect(airings.map(({ name, after }) => [name, after.by])).toEqual([
      ['bedroom on waking', 'waking'],
      ['living after shower, cooking', 'activity'],
      ['living after shower, cooking', 'activity'],
      ['stuffy', 'readings'],
    ]);
    expect(airings[0]).toMatchObject({
      ...{ openings: [1], openShare: 1, lasts: 600, probability: 0.5, delay: 600 },
      ...{ drierBy: 1.5, notBelow: -5, after: { room: 1 } },
    });
    expect(airings.slice(1, 3).map(({ after }) => after)).toMatchObject([
      { activity: 0 },
      { activity: 1 },
    ]);
    expect(airings[3]).toMatchObject({
      after: {
        all: [
          { is: 'above', value: 1000 },
          { is: 'below', value: 4000 },
        ],
      },
      until: [{ is: 'below', value: 700 }],
    });
  });

  test('a rule with every kind of deed', () => {
    const { rules } = automation(`devices: { drier: { kind: dehumidifier, room: bedroom } }
rules:
  - name: all
    when: [{ room: living, reading: pm25, over: 0.05 mg/m3 }]
    on delay: 1 h
    gate: when somebody is home
    response:
      - { tell: hello }
      - { lamp: red }
      - { stop: drier }
      - { open: living, open share: 50 %, lasts: 5 min, probability: 1, delay: 0 }
      - { close: bedroom window, lasts: 2 h, probability: 1, delay: 1 }
      - { setpoint: off, room: bedroom }`);
    expect(rules[0]).toMatchObject({
      all: [{ value: 50 }],
      onDelay: 3600,
      gate: { present: 'at home', windowsShut: false },
    });
    expect(rules[0]!.actions).toEqual([
      { do: 'tell', what: 'hello' },
      { do: 'lamp', what: 'red' },
      { do: 'device', device: 0, on: false },
      { do: 'window', openings: [0], openShare: 0.5, lasts: 300, probability: 1, delay: 0 },
      { do: 'window', openings: [1], openShare: 0, lasts: 7200, probability: 1, delay: 60 },
      { do: 'setpoint', room: 1, setpoint: 5 },
    ]);
  });

  test('one seed for people and for everything else', () => {
    const { household, automation: acts } = prepared('seed: 7');
    expect([household.seed, acts.seed]).toEqual([7, 7]);
  });
});
