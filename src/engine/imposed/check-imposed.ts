import { nearestHint } from '../../units/nearest-name.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import { SECONDS_PER_HOUR } from '../../units/time-units.ts';
import type { RunInput } from '../run.ts';
import { NOT_NEGATIVE, problem, problemsOfSeries, RANGES } from './check-series.ts';
import type { HeldStart, ImposedSeries, Series } from './imposed.ts';

/** @throws InputProblems with everything that is wrong with imposed series and a held start */
export function requireImposable(input: RunInput): void {
  const problems = [
    ...Object.entries(input.imposed ?? {}).flatMap(([room, series]) =>
      problemsOfRoom(input, room, series),
    ),
    ...Object.entries(input.devicePower ?? {}).flatMap(([device, series]) =>
      problemsOfDevice(input, device, series),
    ),
    ...(input.heldStart === undefined ? [] : problemsOfStart(input, input.heldStart)),
  ];
  if (problems.length > 0) throw new InputProblems(problems);
}

function problemsOfRoom(input: RunInput, room: string, imposed: ImposedSeries): Problem[] {
  const { home, household, dt, hours } = input;
  const known = roomProblem(input, 'imposed', room);
  if (known.length > 0) return known;
  const steps = (hours * SECONDS_PER_HOUR) / dt;
  const problems: Problem[] = [];
  const { peopleSpecies = {}, ...plain } = imposed;
  for (const [name, series] of Object.entries(plain) as [string, Series | undefined][]) {
    const where = `${room}.${name}`;
    if (!Object.hasOwn(RANGES, name)) problems.push(unknownSeries('imposed', where, name));
    else if (series !== undefined) {
      problems.push(...problemsOfSeries('imposed', where, series, steps, rangeOf(name)));
    }
  }
  const species = home.species.map((s) => s.name);
  for (const [name, series] of Object.entries(peopleSpecies)) {
    const where = `${room}.peopleSpecies.${name}`;
    if (species.includes(name)) {
      problems.push(...problemsOfSeries('imposed', where, series, steps, NOT_NEGATIVE));
    } else problems.push(unknownName('imposed', where, 'a species of the home', name, species));
  }
  for (const pair of EXCLUSIVE) problems.push(...bothOf('imposed', room, imposed, pair));
  if (imposed.people !== undefined && household.people.length === 0) {
    const got = 'a household without people';
    const hint = 'give peopleHeat, peopleVapour and peopleSpecies instead';
    problems.push({
      ...problem('imposed', `${room}.people`, 'a household whose people say what one gives', got),
      hint,
    });
  }
  return problems;
}

function problemsOfDevice({ home, dt, hours }: RunInput, name: string, series: Series): Problem[] {
  const electric = home.devices.filter(({ does }) => does.kind !== 'stove').map((d) => d.name);
  if (!electric.includes(name)) {
    const expected = 'a device of the home that draws electricity';
    return [unknownName('devicePower', name, expected, name, electric)];
  }
  return problemsOfSeries(
    'devicePower',
    name,
    series,
    (hours * SECONDS_PER_HOUR) / dt,
    NOT_NEGATIVE,
  );
}

function problemsOfStart(input: RunInput, { until, rooms }: HeldStart): Problem[] {
  const { start, hours, dt } = input;
  const end = start + hours * SECONDS_PER_HOUR;
  const steps = (until - start) / dt;
  const inside = until > start && until <= end;
  const problems: Problem[] = [];
  if (!inside) {
    const within = `an instant after ${instant(start)} and not after ${instant(end)}, within the run`;
    problems.push(problem('heldStart', 'until', within, instant(until)));
  } else if (!Number.isInteger(steps)) {
    const whole = `the end of a step of ${dt} s`;
    problems.push(problem('heldStart', 'until', whole, instant(until)));
  }
  for (const [room, held] of Object.entries(rooms)) {
    const known = roomProblem(input, 'heldStart', room);
    problems.push(...known);
    if (known.length > 0) continue;
    for (const [name, series] of Object.entries(held) as [string, Series | number | undefined][]) {
      const where = `${room}.${name}`;
      if (!HELD.includes(name)) {
        problems.push(unknownSeries('heldStart', where, name, HELD));
      } else if (series !== undefined) {
        const list = typeof series === 'number' ? [series] : series;
        const length = typeof series === 'number' || !inside ? list.length : steps;
        problems.push(...problemsOfSeries('heldStart', where, list, length, rangeOf(name)));
        const twice = HUMIDITIES.includes(name) ? HUMIDITIES : [name];
        const own = input.imposed?.[room];
        const other = twice.find((key) => own?.[key as keyof ImposedSeries] !== undefined);
        if (other !== undefined) {
          problems.push(problem('heldStart', where, 'one series', `imposed ${other} besides`));
        }
      }
    }
    problems.push(...bothOf('heldStart', room, held, HUMIDITIES));
  }
  return problems;
}

function roomProblem({ home }: RunInput, file: string, room: string): Problem[] {
  const names = home.rooms.map(({ name }) => name);
  return names.includes(room) ? [] : [unknownName(file, room, 'a room of the home', room, names)];
}

const unknownSeries = (
  file: string,
  where: string,
  name: string,
  known: readonly string[] = Object.keys(RANGES),
) => unknownName(file, where, 'a series that can be given', name, known);

function unknownName(
  file: string,
  where: string,
  expected: string,
  name: string,
  known: readonly string[],
): Problem {
  const hint = nearestHint(name, known) || `known: ${known.join(', ')}`;
  return { ...problem(file, where, expected, `"${name}"`), hint };
}

function bothOf(file: string, room: string, given: object, names: readonly string[]): Problem[] {
  const all = names.filter((name) => (given as Record<string, unknown>)[name] !== undefined);
  if (all.length < 2) return [];
  return [problem(file, room, `only one of ${names.join(', ')}`, all.join(' and '))];
}

function instant(utc: number): string {
  const ms = utc * 1000;
  return Math.abs(ms) <= LAST_DATE ? new Date(ms).toISOString() : `${utc}`;
}

const rangeOf = (name: string) => RANGES[name as keyof typeof RANGES];

const HUMIDITIES: readonly string[] = ['humidityRatio', 'relativeHumidity'];
const HELD: readonly string[] = ['airTemperature', ...HUMIDITIES];
/** Each says what another says too. */
const EXCLUSIVE: readonly (readonly string[])[] = [
  HUMIDITIES,
  ['windows', 'airChange', 'outdoorAir'],
  ['people', 'presence'],
];

const LAST_DATE = 8.64e15; // ms
