import { expect, test } from 'vitest';
import { main } from '../../../src/cli/main.ts';
import { fakeIo } from '../fake-io.ts';

test('log describe shows what was understood, a table and what speaks against it', async () => {
  const rows = Array.from({ length: 48 }, (_, h) => {
    const stamp = new Date(Date.UTC(2025, 0, 13, h)).toISOString().slice(0, 16);
    return `${stamp.slice(8, 10)}/01/2025 ${stamp.slice(11)};${(20 + Math.sin(h)).toFixed(2).replace('.', ',')}`;
  });
  const { io, said } = fakeIo({ 'hall.csv': `Time;Temp\n${rows.join('\n')}\n` });
  expect(await main(['log', 'describe', 'hall.csv', '--zone', 'Europe/Berlin'], io)).toBe(0);
  expect(
    said.out,
  ).toBe(`hall.csv: 48 rows, semicolon between cells, decimal comma, one line above them;
a column for each reading.
Time in "Time", day first; zone: Europe/Berlin.
Taken: "Temp" as temperature of hall [°C].
No air change can be seen: that takes at least three evenings or mornings on
which the air of a room clears by itself, read every quarter of an hour or
oftener.

2025-01-12T23:00Z to 2025-01-14T22:00Z

                                   longest
where  what       readings  every  gap [h]  lowest  mean  highest
hall   temp [°C]        48  1 h        1.0    19.0  20.0     21.0

note: The log spans 2 days. Less than three weeks tell little of a home: habits
      and weather hardly vary.
`);
});

test('--json holds the same figures', async () => {
  const { io, said } = fakeIo({
    'a.csv': 'Time,Hall T\n2025-01-01T00:00Z,20\n2025-01-01T01:00Z,21\n',
  });
  expect(await main(['log', 'describe', 'a.csv', '--json'], io)).toBe(0);
  expect(JSON.parse(said.out)).toMatchObject({
    from: '2025-01-01T00:00Z',
    series: [{ quantity: 'temperature', room: 'hall', readings: 2, every_minutes: 60, mean: 20.5 }],
  });
});

test('words of the call that do not fit are refused', async () => {
  const { io, said } = fakeIo({ 'a.csv': 'Time,T\n2025-01-01T00:00Z,20\n' });
  expect(await main(['log', 'describe', 'a.csv', '--zone', 'Europe/Berlinn'], io)).toBe(1);
  expect(said.err).toContain(
    'error: no time zone is called \'Europe/Berlinn\' (did you mean "Europe/Berlin"?)',
  );
});

test('problems of all files are told at once', async () => {
  const { io, said } = fakeIo({ 'a.csv': '', 'b.csv': 'Time,T\n03/04/2025 10:00,20\n' });
  expect(await main(['log', 'describe', 'a.csv', 'b.csv', 'c.csv'], io)).toBe(2);
  expect(said.err).toContain('a.csv: expected the text of a log, got nothing: the file is empty');
  expect(said.err).toContain('b.csv:2:1: Time: expected dates of which it is plain');
  expect(said.err).toContain('c.csv: expected a file to read, got nothing of that name');
});
