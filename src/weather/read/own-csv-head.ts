import { nearestName } from '../../units/nearest-name.ts';
import type { Problem } from '../../units/problem.ts';
import type { Place } from '../raw-series.ts';
import type { TextTable } from '../text-table.ts';
import type { SunOrigin } from '../weather.ts';

/** What the `# key: value` lines of the project's own layout say. */
export interface OwnCsvHead {
  /** How many lines they are. */
  readonly head: number;
  readonly place: Place;
  readonly typical: boolean;
  /** Where the irradiances come from; undefined where nobody said. */
  readonly sun: SunOrigin | undefined;
}

export function readOwnCsvHead(table: TextTable, problems: Problem[]): OwnCsvHead {
  const said = new Map<string, Said>();
  let head = 0;
  while (table.lines[head]?.startsWith('#')) readKey(table, head++, said, problems);
  const number = (key: string) => numberSaid(table, said.get(key), key, problems);
  return {
    head,
    place: {
      title: said.get('title')?.text ?? '',
      latitude: number('latitude'),
      longitude: number('longitude'),
      elevation: number('elevation'),
    },
    typical: yes(table, said.get('typical'), problems),
    sun: sunOrigin(table, said.get('sun'), problems),
  };
}

/** A `# key: value` line and where it stands. */
interface Said {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

function readKey(table: TextTable, k: number, said: Map<string, Said>, problems: Problem[]) {
  const line = table.lines[k]!;
  const found = /^#\s*([^:]+?)\s*:\s*/.exec(line);
  if (found === null) return;
  const key = found[1]!.toLowerCase();
  const here = {
    text: line.slice(found[0].length).trim(),
    line: k + 1,
    column: found[0].length + 1,
  };
  if (said.has(key) && KEYS.includes(key)) {
    const first = `a single "${key}", already in line ${said.get(key)!.line}`;
    problems.push(saidProblem(table, here, key, first, `"${here.text}" too`));
  }
  const near = KEYS.includes(key) ? null : nearestName(key, KEYS);
  if (near !== null) {
    problems.push({
      ...saidProblem(table, here, key, `one of ${KEYS.join(', ')}`, `"${key}"`),
      column: line.indexOf(found[1]!) + 1,
      hint: `did you mean "${near}"?`,
    });
  }
  said.set(key, here);
}

function numberSaid(
  table: TextTable,
  said: Said | undefined,
  key: string,
  problems: Problem[],
): number {
  if (said === undefined) return Number.NaN;
  const value = said.text === '' ? Number.NaN : Number(said.text);
  if (!Number.isFinite(value)) {
    problems.push(saidProblem(table, said, key, 'a number', `"${said.text}"`));
  }
  return value;
}

function yes(table: TextTable, said: Said | undefined, problems: Problem[]): boolean {
  const text = said?.text.toLowerCase() ?? 'false';
  if (text !== 'true' && text !== 'false') {
    problems.push(saidProblem(table, said!, 'typical', 'true or false', `"${said!.text}"`));
  }
  return text === 'true';
}

function sunOrigin(
  table: TextTable,
  said: Said | undefined,
  problems: Problem[],
): SunOrigin | undefined {
  const origin = ORIGINS.find((known) => known === said?.text.toLowerCase());
  if (said !== undefined && origin === undefined) {
    problems.push(saidProblem(table, said, 'sun', ORIGINS.join(', '), `"${said.text}"`));
  }
  return origin;
}

function saidProblem(
  table: TextTable,
  said: Said,
  where: string,
  expected: string,
  got: string,
): Problem {
  const { line, column } = said;
  return { file: table.file, line, column, where, expected, got, hint: '' };
}

const KEYS: readonly string[] = ['title', 'latitude', 'longitude', 'elevation', 'typical', 'sun'];
const ORIGINS = [
  'measured',
  'split from global',
  'made from cloud',
  'invented',
] as const satisfies readonly SunOrigin[];
