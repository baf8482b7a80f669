import { USUAL } from '../choices.ts';
import { daysOf, EVERY_DAY } from '../clock-words.ts';
import { FUELS } from '../model/money.ts';
import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import type { Path } from '../yaml/place-of.ts';
import { items, mapping, textOf, type UncheckedMapping } from './tolerant-readers.ts';

/** Mappings that take exactly one of several forms. */
export function oneOfFindings(raw: UncheckedMapping): Finding[] {
  const home = mapping(raw['home']);
  const findings: Finding[] = [];
  const oneOf = (value: unknown, path: Path, forms: readonly (readonly string[])[]) => {
    if (!isMapping(value)) return;
    const begun = forms.filter((form) => form.some((key) => key in value));
    const whole = begun.length === 1 && begun[0]!.every((key) => key in value);
    if (whole) return;
    if (begun.length === 1) {
      const [here, missing] = [true, false].map((given) =>
        begun[0]!.filter((key) => key in value === given).join(' and '),
      );
      findings.push({ path, expected: `${missing} beside ${here}`, got: 'none' });
      return;
    }
    const words = forms.map((form) => form.join(' with ')).join('; or ');
    const given = forms.flat().filter((key) => key in value);
    const got = given.length === 0 ? 'none of them' : given.join(' with ');
    findings.push({ path, expected: `exactly one of: ${words}`, got });
  };

  oneOf(home['leakage'], ['home', 'leakage'], [['ach50'], ['air changes'], ['area']]);
  if ('background vents' in home && 'air changes' in mapping(home['leakage'])) {
    findings.push({
      path: ['home', 'background vents'],
      expected: 'no vents beside steady air changes, which already count them',
    });
  }
  for (const [name, room] of Object.entries(mapping(home['rooms']))) {
    items(mapping(room)['elements']).forEach((element, k) => {
      const path = ['home', 'rooms', name, 'elements', k];
      oneOf(element, path, [['u-value'], ['layers']]);
      if ('layers' in mapping(element) && 'heat capacity' in mapping(element)) {
        const expected = 'no heat capacity beside layers, which have their own';
        findings.push({ path: [...path, 'heat capacity'], expected });
      }
    });
    if ('outer sides' in mapping(room) && 'outer walls' in mapping(room)) {
      const path = ['home', 'rooms', name, 'outer sides'];
      findings.push({ path, expected: 'either outer sides or outer walls', got: 'both' });
    }
  }
  for (const fuel of FUELS) {
    const forms = [['price'], ['day', 'night', 'night hours'], ['prices']];
    const given = mapping(raw['money'])[fuel];
    const unsaid = isMapping(given) && forms.flat().every((key) => !(key in given));
    if (!unsaid) oneOf(given, ['money', fuel], forms);
    if ('blocks' in mapping(given) && !('price' in mapping(given))) {
      const expected = 'blocks only beside a price, which holds at all other hours';
      findings.push({ path: ['money', fuel, 'blocks'], expected, got: 'none' });
    }
  }
  items(raw['blinds']).forEach((entry, k) => {
    oneOf(entry, ['blinds', k], [['pane'], ['room'], ['rooms']]);
  });
  const household = mapping(raw['household']);
  items(household['airing']).forEach((habit, k) => {
    const path = ['household', 'airing', k];
    if (habit === USUAL) return;
    oneOf(habit, path, [['room'], ['rooms'], ['opening']]);
    oneOf(habit, path, [['at'], ['when'], ['after'], ['on waking']]);
    findings.push(...clockHabitFindings(mapping(habit), path));
  });
  items(household['people']).forEach((person, k) => {
    findings.push(...dayRoomFindings(mapping(person), ['household', 'people', k]));
    if (!('schedule' in mapping(person) && 'pattern' in mapping(person))) return;
    const path = ['household', 'people', k, 'pattern'];
    findings.push({ path, expected: 'either a pattern or a schedule', got: 'both' });
  });
  return findings;
}

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
