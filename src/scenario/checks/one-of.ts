import { USUAL } from '../choices.ts';
import { daysOf, EVERY_DAY } from '../clock-words.ts';
import { FUELS } from '../model/money.ts';
import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { valueAt } from '../yaml/path-words.ts';
import type { Path } from '../yaml/place-of.ts';
import { everyAt, items, mapping, textOf, type UncheckedMapping } from './tolerant-readers.ts';

/** Mappings that take exactly one of several forms, and what does not go beside something else. */
export function oneOfFindings(raw: UncheckedMapping): Finding[] {
  return [
    ...FORMS.flatMap(([pattern, forms]) =>
      everyAt(raw, pattern).flatMap(({ path, value }) => formFindings(value, path, forms)),
    ),
    ...FUELS.flatMap((fuel) => fuelFindings(mapping(raw['money'])[fuel], ['money', fuel])),
    ...BESIDE.flatMap(([pattern, key, other, words]) =>
      everyAt(raw, pattern)
        .filter(({ value }) => key in mapping(value) && valueAt(value, other) !== undefined)
        .map(({ path }) => ({ path: [...path, key], ...words })),
    ),
    ...everyAt(raw, 'household/airing/#').flatMap(({ path, value }) =>
      value === USUAL ? [] : clockHabitFindings(mapping(value), path),
    ),
    ...everyAt(raw, 'household/people/#').flatMap(({ path, value }) =>
      dayRoomFindings(mapping(value), path),
    ),
  ];
}

type Forms = readonly (readonly string[])[];

function formFindings(value: unknown, path: Path, forms: Forms): Finding[] {
  if (!isMapping(value)) return [];
  const begun = forms.filter((form) => form.some((key) => key in value));
  if (begun.length !== 1) {
    const words = forms.map((form) => form.join(' with ')).join('; or ');
    const given = forms.flat().filter((key) => key in value);
    const got = given.length === 0 ? 'none of them' : given.join(' with ');
    return [{ path, expected: `exactly one of: ${words}`, got }];
  }
  const [here, missing] = [true, false].map((given) =>
    begun[0]!.filter((key) => key in value === given).join(' and '),
  );
  return missing === '' ? [] : [{ path, expected: `${missing} beside ${here}`, got: 'none' }];
}

/** A fuel of which nothing is said has the usual price. */
function fuelFindings(value: unknown, path: Path): Finding[] {
  const given = mapping(value);
  const isUnsaid = PRICES.flat().every((key) => !(key in given));
  const findings = isUnsaid ? [] : formFindings(value, path, PRICES);
  if (!('blocks' in given) || 'price' in given) return findings;
  const expected = 'blocks only beside a price, which holds at all other hours';
  return [...findings, { path: [...path, 'blocks'], expected, got: 'none' }];
}

const PRICES: Forms = [['price'], ['day', 'night', 'night hours'], ['prices']];
const FORMS: readonly (readonly [pattern: string, forms: Forms])[] = [
  ['home/leakage', [['ach50'], ['air changes'], ['area']]],
  ['home/rooms/*/elements/#', [['u-value'], ['layers']]],
  ['blinds/#', [['pane'], ['room'], ['rooms']]],
  ['household/airing/#', [['room'], ['rooms'], ['opening']]],
  ['household/airing/#', [['at'], ['when'], ['after'], ['on waking']]],
];

/** Places of mappings, each with a key, what that does not go beside, and how it is said. */
const BESIDE: readonly (readonly [string, string, Path, Pick<Finding, 'expected' | 'got'>])[] = [
  [
    'home',
    'background vents',
    ['leakage', 'air changes'],
    { expected: 'no vents beside steady air changes, which already count them' },
  ],
  [
    'home/rooms/*/elements/#',
    'heat capacity',
    ['layers'],
    { expected: 'no heat capacity beside layers, which have their own' },
  ],
  [
    'home/rooms/*',
    'outer sides',
    ['outer walls'],
    { expected: 'either outer sides or outer walls', got: 'both' },
  ],
  [
    'household/people/#',
    'pattern',
    ['schedule'],
    { expected: 'either a pattern or a schedule', got: 'both' },
  ],
];

/** A room to work in asks for somebody who works at home; a day of the week has one room. */
function dayRoomFindings(person: UncheckedMapping, path: Path): Finding[] {
  const { pattern, 'works in': works, 'lives in': lives } = person;
  const findings: Finding[] = [];
  if (works !== undefined && (('pattern' in person && pattern !== DESK) || 'schedule' in person)) {
    const got = 'schedule' in person ? 'a schedule' : JSON.stringify(pattern);
    const expected = `a room to work in only beside the pattern ${DESK}`;
    findings.push({ path: [...path, 'works in'], expected, got });
  }
  let known = 0;
  items(lives).forEach((one, k) => {
    const days = daysNamed(mapping(one)['days']);
    if ((days & known) !== 0) {
      const expected = 'every day of the week in one room';
      findings.push({ path: [...path, 'lives in', k], expected, got: 'a day named before' });
    }
    known |= days;
  });
  return findings;
}

/** Bits of days that are named well, all where none is; 0 for names that the model refuses. */
function daysNamed(written: unknown): number {
  if (written === undefined) return EVERY_DAY;
  const days = daysOf([written].flat().map(textOf));
  return Number.isNaN(days) ? 0 : days;
}

/** What people decide by when they come to it has no place in a habit by the clock, and vice versa. */
function clockHabitFindings(habit: UncheckedMapping, path: Path): Finding[] {
  const byClock = 'at' in habit;
  const out = byClock ? DECIDED : ['days', 'months', 'by'];
  const expected = byClock
    ? 'this only in a habit with when, after or on waking'
    : 'this only in a habit by the clock, with at';
  return out
    .filter((key) => key in habit)
    .map((key) => ({ path: [...path, key], expected, key: true, got: JSON.stringify(key) }));
}

const DECIDED = ['until', 'probability', 'delay', 'drier by', 'not below'];

/** Pattern that has a desk. */
const DESK = 'works at home';
