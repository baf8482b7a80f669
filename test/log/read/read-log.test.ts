import { describe, expect, test } from 'vitest';
import { seriesOf } from '../../../src/log/log.ts';
import { longestGap } from '../../../src/log/longest-gap.ts';
import { meansOverSteps } from '../../../src/log/onto-steps.ts';
import { type LogOptions, NOTHING_SAID } from '../../../src/log/read/log-options.ts';
import { readLog } from '../../../src/log/read/read-log.ts';
import { zoneClock } from '../../../src/scenario/zone-clock.ts';
import { InputProblems } from '../../../src/units/problem.ts';

// Instants are worked out by hand from the text of each file.
describe('how times are written', () => {
  const noon = Date.UTC(2025, 0, 31, 12) / 1000;
  const same: [string, string, string][] = [
    ['ISO with T and Z', '2025-01-31T12:00Z', '2025-01-31T12:10:00Z'],
    ['an offset', '2025-01-31T13:00:00+01:00', '2025-01-31T13:10:00+01:00'],
    ['a blank and no seconds', '2025-01-31 12:00', '2025-01-31 12:10'],
    ['comma-milliseconds', '2025-01-31 12:00:00,000', '2025-01-31 12:10:00,123'],
    ['day first with slashes', '31/01/2025 12:00', '31/01/2025 12:10'],
    ['month first, AM and PM', '1/31/2025 12:00 PM', '1/31/2025 12:10 PM'],
    ['day first with points', '31.01.2025 12:00:00', '31.01.2025 12:10:00'],
    ['two figures for the year', '31.01.25 12:00', '31.01.25 12:10'],
    ['a month in letters', '31 Jan 2025 12:00', '31 Jan 2025 12:10'],
    ['seconds since 1970', `${noon}`, `${noon + 600}`],
    ['milliseconds since 1970', `${noon * 1000}`, `${(noon + 600) * 1000}`],
  ];
  test.each(same)('%s', (_, first, second) => {
    const quote = first.includes(',') ? '"' : '';
    const { log } = readLog(
      [
        {
          file: 'living.csv',
          text: `Time,Temperature (°C)\n${quote}${first}${quote},20.5\n${quote}${second}${quote},21\n`,
        },
      ],
      NOTHING_SAID,
    );
    const [series] = log.series;
    expect(series).toMatchObject({ quantity: 'temperature', place: 'room', room: 'living' });
    expect([...series!.times]).toEqual([noon, noon + 600]);
    expect([...series!.values]).toEqual([20.5, 21]);
  });

  test('midnight is 12 AM and hour 24 of the day before', () => {
    const midnight = Date.UTC(2025, 0, 31) / 1000;
    expect(timesOf('Time;T\n1/31/2025 12:00 AM;20\n')).toEqual([midnight]);
    expect(timesOf('Time;T\n2025-01-30 24:00;20\n')).toEqual([midnight]);
  });

  test('a date and a time of day in two columns', () => {
    expect(timesOf('Date;Time;T\n31.01.2025;12:00;20\n')).toEqual([noon]);
  });

  test('dates that can be read both ways are refused with the way out', () => {
    const text = 'Time,T\n03/04/2025 12:00,20\n04/04/2025 12:00,20\n';
    expect(refusal(text)).toBe(
      'living.csv:2:1: Time: expected dates of which it is plain whether the day or the month comes ' +
        'first, got numbers up to 12 in both places of every row (say it: --dates day-first or ' +
        '--dates month-first, or "dates: day first" under "log:" of the scenario)',
    );
    const told = read(text, { dates: 'month first' });
    expect(told.log.start).toBe(Date.UTC(2025, 2, 4, 12) / 1000);
  });
});

describe('how numbers and columns are written', () => {
  test('decimal commas, a preamble, a byte order mark, units in a line of their own', () => {
    const text =
      '\ufeffSerial 12\nFirmware 3\n\nZeit;Temperatur Bad;Feuchte Bad\n;°C;%\n' +
      '31.01.2025 12:00;20,5;55,25\n31.01.2025 12:10;20,6;55,50\n';
    const { log, files } = read(text, {});
    expect(files[0]).toMatchObject({ separator: 'semicolon', decimal: 'comma', head: 5, rows: 2 });
    expect([...seriesOf(log, 'temperature', 'bad')!.values]).toEqual([20.5, 20.6]);
    expect([...seriesOf(log, 'relative humidity', 'bad')!.values]).toEqual([55.25, 55.5]);
  });

  test('a date in the preamble is no row, and a unit of another kind leaves its column out', () => {
    const text =
      'Serial;7\nExport;01.02.2025\n\nDatum;Uhrzeit;Temp Bad;TVOC (ppb)\n31.01.2025;12:00;20,5;300\n31.01.2025;12:10;20,6;310\n';
    const { log, files } = read(text, {});
    expect(log.start).toBe(Date.UTC(2025, 0, 31, 12) / 1000);
    expect(log.series.map(({ room }) => room)).toEqual(['bad']);
    expect(files[0]!.leftOut).toEqual([
      { name: 'TVOC (ppb)', why: 'expected a unit of TVOC, such as µg/m3, got "ppb"' },
    ]);
  });

  test.each([
    ['Namn;Tid;Värde;Enhet', 'Sovrum temperatur'],
    ['Nom;Date;Valeur;Unité', 'Sovrum température'],
    ['Nombre;Fecha;Valor;Unidad', 'Sovrum temperatura'],
    ['Nome;Ora;Valore;Unità', 'Sovrum temperatura'],
    ['Naam;Tijd;Waarde;Eenheid', 'Sovrum temperatuur'],
    ['Bezeichnung;Zeit;Messwert;Einheit', 'Sovrum Temperatur'],
  ])('a long file headed %s', (head, name) => {
    const text = `${head}\n${name};2025-01-31 12:00:00;18,5;°C\n${name};2025-01-31 12:20:00;18,4;°C\n`;
    const { log, files } = read(text, {});
    expect(files[0]!.form).toBe('long');
    expect(log.series).toMatchObject([{ quantity: 'temperature', room: 'sovrum' }]);
    expect([...log.series[0]!.values]).toEqual([18.5, 18.4]);
  });

  test('a long file, only on change, with readings that are not there', () => {
    const text = [
      'name,state,time',
      'bedroom_temperature,18.5,2025-01-31T12:00:00Z',
      'bedroom_window,off,2025-01-31T12:01:00Z',
      'bedroom_temperature,unavailable,2025-01-31T12:05:00Z',
      'bedroom_window,on,2025-01-31T12:07:00Z',
      'bedroom_window,unknown,2025-01-31T12:09:00Z',
      'bedroom_temperature,18.4,2025-01-31T12:20:00Z',
      'battery_state,ok,2025-01-31T12:20:00Z',
    ].join('\n');
    const { log, files } = read(text, {});
    expect(files[0]!.form).toBe('long');
    expect([...seriesOf(log, 'temperature', 'bedroom')!.values]).toEqual([18.5, 18.4]);
    expect([...seriesOf(log, 'window', 'bedroom')!.values]).toEqual([0, 1, Number.NaN]);
    expect(files[0]!.leftOut).toEqual([{ name: 'battery_state', why: 'speaks of battery' }]);
  });

  test('names and states in German', () => {
    const { log } = read(
      'Zeit;Luftfeuchtigkeit Bad;Fenster Bad\n2025-01-01T00:00Z;55;zu\n2025-01-01T01:00Z;56;offen\n',
      {},
    );
    expect(log.series.map(({ quantity, values }) => [quantity, [...values]])).toEqual([
      ['relative humidity', [55, 56]],
      ['window', [0, 1]],
    ]);
  });

  test.each([
    ['Temperatura salón', 'temperature', 'salón'],
    ['Humedad relativa dormitorio', 'relative humidity', 'dormitorio'],
    ['Temperatura exterior', 'temperature', null],
    ['rel. Feuchte Wohnzimmer', 'relative humidity', 'wohnzimmer'],
    ['Außentemperatur', 'temperature', null],
    ['Außenluftfeuchte', 'relative humidity', null],
    ['Raumtemperatur Bad', 'temperature', 'bad'],
    ['Température chambre', 'temperature', 'chambre'],
    ['Humidité extérieure', 'relative humidity', null],
    ['Umidità bagno', 'relative humidity', 'bagno'],
    ['Luchtvochtigheid keuken', 'relative humidity', 'keuken'],
    ['Buitentemperatuur', 'temperature', null],
    ['Luftfuktighet sovrum', 'relative humidity', 'sovrum'],
    ['Gaszähler (m³)', 'gas', null],
    ['Stromverbrauch [kWh]', 'electricity', null],
    ['sensor.front_bedroom_humidity', 'relative humidity', 'front bedroom'],
    ['sensor 3 temperature', 'temperature', 'sensor 3'],
  ])('%s is %s', (name, quantity, room) => {
    const { log } = read(`Zeit;${name}\n2025-01-01T00:00Z;15\n2025-01-01T01:00Z;16\n`, {});
    expect(log.series.map((one) => [one.quantity, one.room])).toEqual([[quantity, room]]);
  });

  test('a meter reading that its neighbours belie is left out and told', () => {
    const counts = Array.from({ length: 20 }, (_, k) => (k === 7 ? 270 : 100 + 10 * k));
    const days = counts.map((kwh, k) => `2025-01-${String(k + 1).padStart(2, '0')}T00:00Z,${kwh}`);
    const { files } = read(`time,Gas [kWh]\n${days.join('\n')}\n`, {});
    expect(files[0]!.notes).toEqual([
      '1 reading of "Gas [kWh]" cannot be, such as 270, which its neighbours belie, and was left out.',
    ]);
  });

  test('power that is reported on a change holds until the next word', () => {
    // On for an hour a day, at unlike times: 2000 W for 1/24 of the time, whatever lies between the words.
    const at = (hour: number) => new Date(Date.UTC(2025, 0, 1) + hour * 3_600_000).toISOString();
    const rows = Array.from({ length: 20 }, (_, day) => {
      const on = 24 * day + (day % 5);
      return `bath heater power (W),2000,${at(on)}\nbath heater power (W),0,${at(on + 1)}`;
    });
    const lost = `bath heater power (W),unavailable,${at(480)}\nbath heater power (W),0,${at(500)}`;
    const { log } = read(`name,state,time\n${rows.join('\n')}\n${lost}\n`, {});
    const [power] = log.series;
    const start = Date.UTC(2025, 0, 1) / 1000;
    const days = { start, step: 86_400, count: 20 };
    const means = [...meansOverSteps(power!, days, longestGap(power!))];
    expect(means.map(Math.round)).toEqual(Array(20).fill(83)); // 2000 W / 24
    const after = { start: start + 480 * 3600, step: 3600, count: 2 };
    expect([...meansOverSteps(power!, after, longestGap(power!))]).toEqual([
      Number.NaN,
      Number.NaN,
    ]);
  });

  test('power that is reported by the clock lies on straight lines, and holds no longer than it was told', () => {
    const at = (hour: number) => new Date(Date.UTC(2025, 0, 1) + hour * 3_600_000).toISOString();
    const rows = (hours: readonly number[]) =>
      hours.map((hour) => `bath heater power (W),${hour % 7},${at(hour)}`).join('\n');
    const kind = (hours: readonly number[]) =>
      read(`name,state,time\n${rows(hours)}\n`, {}).log.series[0]!.reading;
    const hours = [...Array(24).keys()];
    expect(kind(hours)).toBe('instant');
    expect(kind(hours.map((hour) => hour ** 2))).toBe('state');
    // A heater that was used on two evenings of a month; five readings by the clock of which one is missing.
    expect(kind([0, 90, 92, 500, 503, 720])).toBe('state');
    expect(kind([0, 1, 2, 4, 5])).toBe('instant');
  });

  test('a counter that was away for a reading tells the mean from the one before to the one after', () => {
    const at = '2025-01-31T12:';
    const text = `Time,Gas (kWh)\n${at}00Z,10\n${at}20Z,unavailable\n${at}40Z,12\n`;
    const [gas] = read(text, {}).log.series;
    expect(gas!.times).toHaveLength(2);
    expect(gas!.values[1]).toBeCloseTo(3000, 9); // 2 kWh in 40 minutes
  });

  test('a tilted window is open by a tenth; words that say nothing are told', () => {
    const at = '2025-01-01T0';
    const rows = ['0:00Z,tilted', '1:00Z,gekippt', '2:00Z,offen', '3:00Z,strange'];
    const text = `time,state,name\n${rows.map((row) => `${at}${row},bath window`).join('\n')}\n`;
    const { log, files } = read(text, {});
    expect([...log.series[0]!.values]).toEqual([0.1, 0.1, 1]);
    expect(files[0]!.notes).toEqual([
      '1 reading of "bath window" is no number and no state that is known, such as "strange", and was left out.',
    ]);
  });

  test('Fahrenheit is told by the unit, or by the numbers', () => {
    const said = read('Time,Bedroom [°F]\n2025-01-31T12:00Z,68\n', {});
    expect(said.log.series[0]!.values[0]).toBeCloseTo(20, 12);
    const seen = read('Time,Bedroom temp\n2025-01-31T12:00Z,68\n2025-01-31T12:10Z,66.2\n', {});
    expect(seen.log.series[0]!.values[1]).toBeCloseTo(19, 12);
    expect(seen.files[0]!.columns[0]).toMatchObject({ unit: '°F', unitBy: 'numbers' });
  });

  test('a counter of energy becomes the mean power between two readings', () => {
    const text =
      'Time,Electricity [kWh]\n2025-01-31T12:00Z,100\n2025-01-31T13:00Z,100.5\n2025-01-31T15:00Z,100.7\n';
    const [meter] = read(text, {}).log.series;
    expect(meter).toMatchObject({ place: 'home', reading: 'mean' });
    // 0.5 kWh in an hour, 0.2 kWh in two
    expect([...meter!.values].map((w) => Math.round(w * 1e6) / 1e6)).toEqual([
      Number.NaN,
      500,
      100,
    ]);
  });

  const daily = (counts: readonly number[]) =>
    `Time,Gas meter (m3)\n${counts.map((m3, d) => `2025-01-${String(d + 1).padStart(2, '0')}T07:00Z,${m3}\n`).join('')}`;
  const gasOf = (text: string) => [...read(text, {}).log.series[0]!.values].map(Math.round);

  test('a counter that is read daily may begin again once: that day is unknown', () => {
    // 1 m3 a day of 10.77 kWh (or so): the same power on every day but that of the new beginning
    const values = gasOf(daily([4711, 4712, 4713, 4714, 4715, 4716, 4717, 0, 1, 2, 3, 4, 5]));
    const known = values.filter((w) => !Number.isNaN(w));
    expect(values).toHaveLength(13);
    expect(known).toHaveLength(11);
    expect(new Set(known).size).toBe(1);
    expect(values[7]).toBeNaN();
  });

  test('a counter that begins again every few readings is one, amounts are not', () => {
    const today = gasOf(daily([0, 1, 2, 3, 0, 1, 2, 3, 0, 1, 2, 3]));
    const one = gasOf(daily([10, 11]))[1]!;
    expect(today.filter((w) => !Number.isNaN(w))).toEqual(Array(9).fill(one));
    const amounts = gasOf(daily([3, 1, 2, 1, 3, 2, 3, 1, 3]));
    expect(amounts.slice(1)).toEqual(
      [1, 2, 1, 3, 2, 3, 1, 3].map((m3) => expect.closeTo(m3 * one, -1)),
    );
  });

  test('a meter that failed for a reading is told, one that cannot be is refused', () => {
    const counts = Array.from({ length: 20 }, (_, d) => (d === 9 ? 0 : 102_345 + d));
    const { log, files } = read(daily(counts), {});
    expect(log.series[0]!.values.filter(Number.isNaN)).toHaveLength(3);
    expect(files[0]!.notes[0]).toMatch(
      /^1 reading of "Gas meter \(m3\)" cannot be, such as a mean of \d+\.?\d* W, and was left out\.$/,
    );
    expect(refusal(daily(counts.map((m3) => 1000 * m3)))).toContain(
      'expected a meter whose mean between readings is 0 to 100000 W',
    );
  });

  test('a reading that cannot be is left out and told', () => {
    const rows = Array.from({ length: 9 }, (_, k) => `2025-01-31T12:0${k}Z,${k === 4 ? -127 : 20}`);
    const { log, files } = read(`Time,T\n${rows.join('\n')}\n`, {});
    expect(log.series[0]!.times).toHaveLength(8);
    expect(files[0]!.notes).toEqual([
      '1 reading of "T" cannot be, such as -127, and was left out.',
    ]);
  });
});

describe('readings that cannot be are few', () => {
  /** 1000 readings of which so many are none. */
  const some = (name: string, odd: number, is: (k: number, odd: boolean) => number) =>
    `Time,${name}\n${Array.from({ length: 1000 }, (_, k) => {
      const time = new Date(Date.UTC(2025, 0, 1, k)).toISOString().slice(0, 16);
      return `${time}Z,${is(k, k % 40 === 1 && k < 40 * odd)}\n`;
    }).join('')}`;

  test.each([
    ['T', (k: number, odd: boolean) => (odd ? -127 : 20 + (k % 2))],
    // Amounts of each hour, up and down, of which some would be 200 kW.
    ['Electricity [kWh]', (k: number, odd: boolean) => (odd ? 200 : 1 + (k % 2))],
  ])('up to one in fifty of %s', (name, is) => {
    expect(read(some(name, 20, is), {}).files[0]!.notes[0]).toMatch(/^20 readings of /);
    expect(refusal(some(name, 21, is))).toContain('and 20 more beyond');
  });
});

describe('what draws and what gives power', () => {
  const rooms = ['bedroom', 'living room', 'bath'];
  const devices = [
    { name: 'drier', kind: 'dehumidifier', room: 'bath' },
    { name: 'oil radiator', kind: 'heater', room: 'bedroom' },
  ];
  const taken = (name: string, more: Partial<LogOptions> = { rooms, devices }) => {
    const text = `Time,${name}\n2025-01-31T12:00Z,1\n2025-01-31T13:00Z,2\n`;
    const { series } = read(text, more).log;
    const { quantity, place, room, device } = series[0]!;
    return [quantity, room ?? device ?? place];
  };

  test.each([
    // of the scenario's own devices: by name, or by what they are and where
    ['Oil radiator power (W)', 'device power', 'oil radiator'],
    ['Bedroom heater (W)', 'device power', 'oil radiator'],
    ['bath dehumidifier energy [kWh]', 'device power', 'drier'],
    ['Dehumidifier power (W)', 'device power', 'drier'],
    // what heats a room without one
    ['Living room heater (W)', 'heating power', 'living room'],
    ['living room radiators (kWh)', 'heating power', 'living room'],
    ['Living room electric heater (W)', 'heating electricity', 'living room'],
    // what heats the home: what goes in, and what comes out
    ['Heat pump energy (kWh)', 'heating electricity', 'home'],
    ['Heat pump (kW)', 'heating electricity', 'home'],
    ['Heat pump outdoor unit power (W)', 'heating electricity', 'home'],
    ['Heating electricity (kWh)', 'heating electricity', 'home'],
    ['Heat pump heat (kWh)', 'heating power', 'home'],
    ['Heat meter (kWh)', 'heating power', 'home'],
    // what is neither of the home as a whole nor anything that heats it
    ['Bedroom purifier power (W)', 'device power', 'bedroom purifier'],
    ['Fridge plug power (W)', 'device power', 'fridge'],
    ['Fridge plug (W)', 'device power', 'fridge'],
    ['Solar power (W)', 'device power', 'solar'],
    ['Smart meter electricity total (kWh)', 'electricity', 'home'],
    ['House power (W)', 'electricity', 'home'],
  ])('%s is %s of %s', (name, quantity, whose) => {
    expect(taken(name)).toEqual([quantity, whose]);
  });

  test('what heats water is no heater of a room, though it is called one', () => {
    const heater = { name: 'heater', kind: 'heater', room: 'bedroom' };
    const text = 'Time,Water heater (kWh),T\n2025-01-31T12:00Z,1,20\n2025-01-31T13:00Z,2,20\n';
    const some = { rooms: ['bedroom'], devices: [heater] };
    expect(read(text, some).files[0]!.leftOut).toEqual([
      { name: 'Water heater (kWh)', why: 'no room is called "water"' },
    ]);
    const tank = { name: 'water heater', kind: 'heater', room: 'bath' };
    const both = { rooms, devices: [heater, tank] };
    expect(taken('Water heater (kWh)', both)).toEqual(['device power', 'water heater']);
  });

  test('percentages of a fan are no humidity, nor what a room feels like its temperature', () => {
    const text = 'Time,Bath fan (%),Bath heat index (°C),Bath (%)\n2025-01-31T12:00Z,40,21,60\n';
    const { log, files } = read(text, { rooms });
    expect(log.series.map(({ from }) => from)).toEqual(['living.csv, Bath (%)']);
    expect(files[0]!.leftOut.map(({ name }) => name)).toEqual([
      'Bath fan (%)',
      'Bath heat index (°C)',
    ]);
  });

  test('what stands in brackets need be no unit', () => {
    for (const word of ['constructor', 'toString', '__proto__']) {
      expect(taken(`Bath T (${word})`)).toEqual(['temperature', 'bath']);
    }
  });

  test('what feeds power in is no reason to refuse a file', () => {
    const rows = Array.from({ length: 9 }, (_, k) => `2025-01-31T12:0${k}Z,${k - 5},20`);
    const { log } = read(`Time,Solar power (W),Bath T\n${rows.join('\n')}\n`, { rooms });
    expect(log.series[0]).toMatchObject({ quantity: 'device power', device: 'solar' });
    expect(log.series[0]!.values[0]).toBe(-5);
  });

  test('without a scenario a room is what its name leaves', () => {
    expect(taken('Bedroom heater (W)', {})).toEqual(['heating power', 'bedroom']);
    expect(taken('Study heat pump power (W)', {})).toEqual(['heating electricity', 'study']);
  });

  test('temperature, humidity and states of what heats or dries stay what they are', () => {
    expect(taken('Bath dehumidifier humidity (%)')).toEqual(['relative humidity', 'bath']);
    expect(taken('Living room radiator temperature (°C)')).toEqual(['temperature', 'living room']);
    const text = 'Time,Bath dehumidifier,Bath T\n2025-01-31T12:00Z,on,20\n';
    expect(read(text, { rooms, devices }).files[0]!.leftOut).toEqual([
      { name: 'Bath dehumidifier', why: 'its name says no quantity that is known' },
    ]);
  });
});

describe('clock changes', () => {
  const london: Partial<LogOptions> = {
    clock: zoneClock('Europe/London')!,
    zone: 'Europe/London',
  };
  const half = (text: string) =>
    `Time,T\n${text
      .split(' ')
      .map((t) => `2024-10-27 ${t},20`)
      .join('\n')}\n`;

  test('an hour that is shown twice is two hours where the file has it twice', () => {
    // Summer time ended on 27 October 2024 at 01:00 UTC: 01:00 and 01:30 come first as 00:00 and 00:30 UTC.
    const { log, files } = read(half('00:30 01:00 01:30 01:00 01:30 02:00'), london);
    const zero = Date.UTC(2024, 9, 26, 23, 30) / 1000;
    expect([...log.series[0]!.times]).toEqual([0, 1, 2, 3, 4, 5].map((k) => zero + k * 1800));
    expect(files[0]!.notes[0]).toContain('Once the readings run through an hour twice');
  });

  test('an hour that is written once leaves an hour unknown', () => {
    const { log } = read(half('00:30 01:00 01:30 02:00'), london);
    const times = [...log.series[0]!.times];
    expect(times.map((t) => (t - times[0]!) / 1800)).toEqual([0, 1, 2, 5]);
  });

  test('an hour that is skipped is no gap', () => {
    // Summer time began on 31 March 2024 at 01:00 UTC, when clocks went from 01:00 to 02:00.
    const { log } = read('Time,T\n2024-03-31 00:30,20\n2024-03-31 02:00,20\n', london);
    expect(log.end - log.start).toBe(1800);
  });

  test('readings at times that are skipped show a clock that keeps winter time', () => {
    const text =
      'Time,T\n2024-03-31 00:30,20\n2024-03-31 01:30,20\n2024-03-31 02:30,20\n2024-07-01 12:00,20\n';
    const { log, files } = read(text, london);
    expect(log.end).toBe(Date.UTC(2024, 6, 1, 12) / 1000);
    expect(files[0]!.zone).toBe('UTC+00:00 all year');
    expect(files[0]!.notes[0]).toBe(
      '1 reading at times that Europe/London skips, first 2024-03-31 01:30: so the logger keeps winter time, UTC+00:00, all year.',
    );
  });

  test('winter time is found wherever in summer a log begins', () => {
    // Of a log from April on summer time is still on half a year later.
    const text = 'Time,T\n2023-04-10 12:00,20\n2024-03-31 01:30,21\n2024-03-31 02:30,20\n';
    const { log, files } = read(text, london);
    expect(files[0]!.zone).toBe('UTC+00:00 all year');
    expect(log.start).toBe(Date.UTC(2023, 3, 10, 12) / 1000);
  });

  test('a clock that was said to change is asked about, with what would say otherwise', () => {
    const text = 'Time,T\n2024-03-31 01:30,20\n2024-03-31 02:30,21\n';
    const berlin = {
      clock: zoneClock('Europe/Berlin')!,
      zone: 'Europe/Berlin',
      zoneIsLoggers: true,
    };
    expect(read(text, berlin).files[0]!.notes).toEqual([
      '1 reading at times that Europe/Berlin skips, first 2024-03-31 02:30: taken as the instant of the jump. Does this logger change its clock? If it keeps winter time all year, say --zone +01:00.',
    ]);
  });

  test('without a zone the second pass of an hour is left out', () => {
    const { log, files } = read(half('00:30 01:00 01:30 01:00 01:30 02:00'), {});
    expect(log.series[0]!.times).toHaveLength(4);
    expect(files[0]!.notes.join(' ')).toContain('2 readings run through an hour a second time');
  });
});

describe('order of rows', () => {
  test('newest first, doubled rows', () => {
    const text =
      'Time,T\n2025-01-31T12:20Z,22\n2025-01-31T12:10Z,21\n2025-01-31T12:10Z,21\n2025-01-31T12:00Z,20\n';
    const { log, files } = read(text, {});
    expect([...log.series[0]!.values]).toEqual([20, 21, 22]);
    expect(files[0]!.notes).toEqual([
      'The newest row comes first; rows were turned round.',
      '1 reading stands twice and counts once.',
    ]);
  });

  test('a logger that sets its clock anew is refused', () => {
    const text = 'Time,T\n2025-01-31T12:00Z,20\n2025-01-31T12:10Z,20\n2000-01-01T00:00Z,20\n';
    expect(refusal(text)).toBe(
      "living.csv:4:1: Time: expected a time after 2025-01-31 12:10, got 2000-01-01 00:00: the logger's " +
        'clock was set anew (put these rows right, or leave them out)',
    );
  });

  test('an export that begins again two hours earlier is laid over itself', () => {
    const hour = (h: number) => `2025-01-31T${String(h).padStart(2, '0')}:00Z,${10 + h}`;
    const rows = [0, 1, 2, 3, 4, 5, 3, 4, 5, 6, 7].map(hour);
    const { log, files } = read(`Time,T\n${rows.join('\n')}\n`, {});
    expect([...log.series[0]!.values]).toEqual([10, 11, 12, 13, 14, 15, 16, 17]);
    expect(files[0]!.notes).toEqual(['3 readings stand twice and count once.']);
  });

  test('two files of one sensor become one series', () => {
    const texts = [
      { file: 'a.csv', text: 'Time,Attic temp\n2025-02-01T00:00Z,5\n2025-02-01T01:00Z,6\n' },
      { file: 'b.csv', text: 'Time,Attic temp\n2025-01-31T23:00Z,4\n2025-02-01T00:00Z,5\n' },
    ];
    const { log } = readLog(texts, NOTHING_SAID);
    expect(log.series.map(({ values }) => [...values])).toEqual([[4, 5, 6]]);
  });
});

describe('what cannot be used is refused in words', () => {
  const at = '2025-01-31T12:';
  test.each([
    ['', 'living.csv: expected the text of a log, got nothing: the file is empty'],
    [
      'PK\u0003\u0004abc',
      'living.csv: expected the text of a log, got a zip archive or spreadsheet (unpack archives and export spreadsheets as CSV first)',
    ],
    [
      'a,b\nc,d\n',
      'living.csv: expected rows of a time and readings, with comma, semicolon, tab or bar between, got lines such as "a,b" (times such as 2025-01-31 05:00, 31.01.2025 05:00 or seconds since 1970 are known)',
    ],
    [
      `Time,RH\n${at}00Z,0.55\n${at}10Z,0.6\n`,
      'living.csv:2:19: RH: expected relative humidity in %, got 0.55 to 0.6, half of them above 0.6 (this looks like a share of 1: say "unit: share")',
    ],
    [
      `Time,T\n${at}00Z,2150\n${at}10Z,2160\n`,
      'living.csv:2:19: T: expected temperature in °C, got 2150 to 2160, half of them above 2160 (this may be in steps of 0.01 °C: say "unit: 0.01 °C")',
    ],
    [
      `Time,T [°C]\n${at}00Z,68\n${at}10Z,70\n`,
      'living.csv:2:19: T [°C]: expected temperature in °C, got 68 to 70, half of them above 70 (this looks like Fahrenheit: say "unit: °F"; or is it the column of the humidity?)',
    ],
    [
      `Time,T\n${at}00Z,20\n31/01,20\n${at}20Z,2x\n${at}30Z,3x\n`,
      'living.csv:3:1: Time: expected a time such as 2025-01-31 05:00, got "31/01"\n' +
        'living.csv:4:19: T: expected a number, or a state such as on or open, got "2x", and 1 more like it',
    ],
    [
      `Time,bath T,bath temp\n${at}00Z,20,21\n`,
      'living.csv: columns and names: expected one for the temperature of bath, got "bath T" and "bath temp" (say under "log: readings:" which room each is of, or leave one out with "leave out")',
    ],
    [
      `Time,T\n${Array.from({ length: 30 }, (_, k) => `${at}${k + 10}Z,20`).join('\n')}`,
      'living.csv: expected readings that change, got one and the same value in all rows of every column (is the sensor stuck, or its battery empty?)',
    ],
    [
      `Time,battery,foo\n${at}00Z,20,21\n`,
      'living.csv: expected a column with readings of temperature, humidity or something else that is known, got none (battery: speaks of battery; foo: its name says no quantity that is known) (say what columns are under "log: readings:" of a scenario)',
    ],
    [
      `Time,Bath T\n${at}00Z,20,5\n${at}10Z,20,4\n`,
      'living.csv:2:22: expected 2 cells, as the header has, got 3, and 1 more like it (decimal commas between commas? save the table with semicolons, or with quotation marks around numbers)',
    ],
    [
      `Time,Bath T,Bath RH\n${at}00Z,20,5,45,1\n${at}10Z,20,4,45,3\n`,
      'living.csv:2:24: expected 3 cells, as the header has, got 5, and 1 more like it (decimal commas between commas? save the table with semicolons, or with quotation marks around numbers)',
    ],
  ])('%j', (text, words) => {
    expect(refusal(text)).toBe(words);
  });

  test('a name that no column has, with the one that was meant', () => {
    const what = {
      quantity: 'temperature',
      place: 'room',
      room: 'bath',
      device: null,
      unit: null,
    } as const;
    const text = `Time,Bath T\n${at}00Z,20\n`;
    expect(refusal(text, { readings: { 'Bth T': what } })).toBe(
      'living.csv: columns and names: expected "Bth T", as the scenario calls it, got Time, Bath T (did you mean "Bath T"?)',
    );
  });

  test('a name that is in a file which was not given', () => {
    const what = { quantity: 'gas', place: 'home', room: null, device: null, unit: null } as const;
    const text = `Time,Bath T\n${at}00Z,20\n`;
    const { log, files } = read(text, { readings: { Zähler: what } });
    expect(log.series.map(({ quantity, room }) => [quantity, room])).toEqual([
      ['temperature', 'bath'],
    ]);
    expect(files[0]!.notes.at(-1)).toBe(
      'The scenario also names "Zähler", which is in no file that was given.',
    );
    const meters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((letter) => `Zähler ${letter}`);
    const note = (names: string[]) =>
      read(text, {
        readings: Object.fromEntries(names.map((name) => [name, what])),
      }).files[0]!.notes.at(-1);
    expect(note(meters.slice(0, 2))).toBe(
      'The scenario also names "Zähler A" and "Zähler B", which are in no file that was given.',
    );
    expect(note(meters)).toMatch(/"Zähler A", .* and \d+ more, which are in no file/);
  });

  test('a name that is in another file is not taken for one that this scenario names too', () => {
    const room = (room: string) =>
      ({ quantity: 'temperature', place: 'room', room, device: null, unit: null }) as const;
    const readings = { 'T 1': room('bath'), 'T 2': room('hall') };
    expect(read(`Time,T 1\n${at}00Z,20\n`, { readings }).log.series).toHaveLength(1);
  });

  test('the unit of a reading that was said without one is that of its name', () => {
    const what = {
      quantity: 'heating electricity',
      place: 'home',
      room: null,
      device: null,
    } as const;
    const text = `Time,Zähler 2 (kWh)\n${at}00Z,100000\n2025-01-31T13:00Z,100001\n`;
    const power = (unit: string | null) =>
      read(text, { readings: { 'Zähler 2 (kWh)': { ...what, unit } } }).log.series[0]!.values[1];
    expect(power(null)).toBeCloseTo(1000, 9);
    expect(power('Wh')).toBeCloseTo(1, 9);
  });

  test('a room that the home does not have is left out with the reason', () => {
    const text = `Time,Bath T,Attic T\n${at}00Z,20,5\n`;
    const { files } = read(text, { rooms: ['bath', 'kitchen'] });
    expect(files[0]!.leftOut).toEqual([{ name: 'Attic T', why: 'no room is called "attic"' }]);
  });
});

function read(text: string, options: Partial<LogOptions>) {
  return readLog([{ file: 'living.csv', text }], { ...NOTHING_SAID, ...options });
}

const timesOf = (text: string): number[] => [...read(text, {}).log.series[0]!.times];

function refusal(text: string, options: Partial<LogOptions> = {}): string {
  try {
    read(text, options);
  } catch (error) {
    if (error instanceof InputProblems) return error.message;
    throw error;
  }
  return 'nothing wrong';
}
