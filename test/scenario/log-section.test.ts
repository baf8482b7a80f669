import { describe, expect, test } from 'vitest';
import { readLog } from '../../src/log/read/read-log.ts';
import { logOptionsOf } from '../../src/scenario/log-options-of.ts';
import { readScenario } from '../../src/scenario/read-scenario.ts';
import { UTC_CLOCK } from '../../src/units/local-clock.ts';

const scenario = (log: string) => `title: A
weather: w.csv
site: { latitude: 52, longitude: 0, timezone: Europe/London }
home: { rooms: { bedroom: { use: bedroom, floor area: 12 }, hall: { use: hall, floor area: 6 } } }
log:
${log}`;

describe('the section on logs', () => {
  test('maps columns to rooms and readings', () => {
    const read = readScenario(
      scenario(`  zone: "+01:00"
  readings:
    A: { quantity: temperature, room: bedroom, unit: °F }
    B: { quantity: electricity, unit: kW }
    C: leave out
`),
      'a.yaml',
    );
    const options = logOptionsOf([...read.checked.values()][0]!, UTC_CLOCK);
    const text = 'Time,A,B,C\n2025-01-31 12:00,68,1.5,9\n2025-01-31 12:10,68,1.5,9\n';
    const { log, files } = readLog([{ file: 'l.csv', text }], options);
    expect(log.start).toBe(Date.UTC(2025, 0, 31, 11) / 1000);
    expect(log.series.map(({ quantity, room, values }) => [quantity, room, values[0]])).toEqual([
      ['temperature', 'bedroom', expect.closeTo(20, 12)],
      ['electricity', null, 1500],
    ]);
    expect(files[0]!.leftOut).toEqual([{ name: 'C', why: 'the scenario leaves it out' }]);
  });

  test('knows the devices that draw electricity, which a stove does not', () => {
    const text = `${scenario('  zone: UTC\n')}devices:
  drier: { kind: dehumidifier, room: hall }
  fire: { kind: stove, room: hall }
  unit: { kind: balanced ventilation, supplies: { bedroom: 20 }, extracts: { hall: 20 } }
`;
    const read = readScenario(text, 'a.yaml');
    const { devices } = logOptionsOf([...read.checked.values()][0]!, UTC_CLOCK);
    expect(devices).toEqual([
      { name: 'drier', kind: 'dehumidifier', room: 'hall' },
      { name: 'unit', kind: 'balanced ventilation', room: null },
    ]);
  });

  test('a column may be a species that the scenario names itself, in its own unit', () => {
    const text = `${scenario(`  readings:
    Cellar tube: { quantity: radon, room: hall }
`)}air: { own species: { radon: { unit: Bq/m3, outdoors: 8 } } }
`;
    const read = readScenario(text, 'a.yaml');
    const options = logOptionsOf([...read.checked.values()][0]!, UTC_CLOCK);
    const rows = 'Time,Cellar tube\n2025-01-31 12:00,120\n2025-01-31 13:00,140\n';
    const { log, files } = readLog([{ file: 'l.csv', text: rows }], options);
    expect(log.series[0]).toMatchObject({ quantity: 'radon', room: 'hall', place: 'room' });
    expect([...log.series[0]!.values]).toEqual([120, 140]);
    expect(files[0]!.columns[0]).toMatchObject({ unit: 'Bq/m3', unitBy: 'usual' });
  });

  test('what is wrong with it is told, all at once', () => {
    const text = scenario(`  zone: Europe/Lundon
  dates: day
  readings:
    A: { quantity: temprature, room: bedroom }
    B: { quantity: temperature, room: bedrom }
    C: { quantity: temperature, room: hall, place: outdoors }
    D: { quantity: device power }
    E: { quantity: electricity, device: drier }
`);
    let said = '';
    try {
      readScenario(text, 'a.yaml');
    } catch (error) {
      said = (error as Error).message;
    }
    expect(said.split('\n')).toEqual([
      'a.yaml:6:9: log.zone: expected a zone such as Europe/London, UTC, or hours ahead such as +01:00, got "Europe/Lundon" (did you mean "Europe/London"?)',
      'a.yaml:7:10: log.dates: expected one of: day first, month first, year first, got "day" (did you mean "day first"?)',
      expect.stringMatching(
        /^a\.yaml:9:20: log\.readings\.A\.quantity: did you mean "temperature"\? Expected one of: .*, got "temprature"$/,
      ),
      'a.yaml:10:39: log.readings.B.room: expected the name of a room: bedroom, hall, got "bedrom" (did you mean "bedroom"?)',
      'a.yaml:11:52: log.readings.C.place: expected a room or a place, not both, got "outdoors"',
      'a.yaml:12:8: log.readings.D: expected `device`, whose power it is, got a mapping',
      'a.yaml:13:41: log.readings.E.device: expected none but of `device power`, got "drier"',
    ]);
  });
});
