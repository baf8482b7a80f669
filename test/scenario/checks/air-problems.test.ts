import { describe, expect, test } from 'vitest';
import { readingProblems } from '../problems-of.ts';

/** Problems of a home whose one room and what follows it are given. */
const problemsOfRoom = (room: string, more = ''): string[] =>
  readingProblems(`title: Test
weather: w.csv
site: { latitude: 54, longitude: -2, elevation: 30, timezone: Europe/London }
home:
  rooms:
    den: { floor area: 16, ${room} }
${more}`);

describe('a part that does not say where it looks while others do', () => {
  test('is refused among outer walls, panes, openings and walls by element', () => {
    expect(problemsOfRoom('outer walls: [{ area: 9, faces: S }, { area: 6 }]')).toEqual([
      'h.yaml:6:65: home.rooms.den.outer walls #2: expected faces, as other outer walls of the room have it, got none',
    ]);
    expect(problemsOfRoom('panes: [{ area: 1 }, { area: 1, faces: S }, { area: 1 }]')).toEqual([
      'h.yaml:6:36: home.rooms.den.panes #1: expected faces, as other panes of the room have it, got none',
      'h.yaml:6:72: home.rooms.den.panes #3: expected faces, as other panes of the room have it, got none',
    ]);
    expect(problemsOfRoom('openings: [{ area: 1, faces: S }, { area: 1 }]')).toEqual([
      'h.yaml:6:62: home.rooms.den.openings #2: expected faces, as other openings of the room have it, got none',
    ]);
    const wall = 'kind: wall, area: 6, u-value: 1';
    expect(problemsOfRoom(`elements: [{ ${wall}, faces: S }, { ${wall} }]`)).toEqual([
      'h.yaml:6:86: home.rooms.den.elements #2: expected faces, as other walls of the room have it, got none',
    ]);
  });

  test('may be one that no wind blows on', () => {
    const wall = 'kind: wall, area: 6, u-value: 1, faces: S';
    const inner = [
      '{ kind: roof, area: 16, u-value: 0.3 }',
      '{ kind: wall, area: 6, u-value: 1, to: nothing }',
      '{ kind: wall, area: 6, u-value: 1, to: { neighbour: 18 } }',
    ].join(', ');
    expect(problemsOfRoom(`elements: [{ ${wall} }, ${inner}]`)).toEqual([]);
    expect(problemsOfRoom('panes: [{ area: 1, faces: S }, { area: 1, tilt: 0 }]')).toEqual([]);
  });

  test('is taken to look where its room does, or where all are assumed to', () => {
    expect(problemsOfRoom('faces: N, panes: [{ area: 1, faces: S }, { area: 1 }]')).toEqual([]);
    expect(problemsOfRoom('panes: [{ area: 1 }, { area: 1 }]')).toEqual([]);
  });
});

describe('heights outside the room', () => {
  test('a window head above the ceiling or below the height of its own opening', () => {
    expect(problemsOfRoom('height: 2.4 m, openings: [{ height: 1.2, head: 2.6 }]')).toEqual([
      'h.yaml:6:75: home.rooms.den.openings #1.head: expected between the height of the opening (1.2 m) and that of the room (2.4 m), got 2.6 m',
    ]);
    expect(problemsOfRoom('height: 2.4 m, openings: [{ height: 1.2, head: 1 }]')).toEqual([
      'h.yaml:6:75: home.rooms.den.openings #1.head: expected between the height of the opening (1.2 m) and that of the room (2.4 m), got 1 m',
    ]);
    expect(problemsOfRoom('height: 2.4 m, openings: [{ height: 1.2, head: 2.4 }]')).toEqual([]);
  });

  test('an opening that is higher than its room is told once, whatever its head', () => {
    expect(problemsOfRoom('height: 2.4 m, openings: [{ height: 2.5, head: 2.6 }]')).toEqual([
      'h.yaml:6:64: home.rooms.den.openings #1.height: expected no more than the height of the room (2.4 m), got 2.5 m',
    ]);
  });
});

test('vents larger than the walls they sit in', () => {
  const room = 'panes: [], outer walls: [{ area: 0.8, faces: S }]';
  expect(problemsOfRoom(room, '  background vents: 850000')).toEqual([
    'h.yaml:7:21: home.background vents: expected vents no larger than the outer walls (0.80 m2), got 0.85 m2',
  ]);
  expect(problemsOfRoom(room, '  background vents: 790000')).toEqual([]);
});
