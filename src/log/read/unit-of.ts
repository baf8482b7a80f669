import { meaning } from '../../units/unit-words.ts';
import type { LoggedQuantityFacts } from '../quantities.ts';
import { knownUnit } from './name-meaning.ts';

/** How numbers of a column become the unit of their quantity. */
export interface UnitTaken {
  readonly unit: string;
  readonly by: 'said' | 'numbers' | 'usual';
  readonly factor: number;
  readonly offset: number;
  /** Numbers are energy: a counter, or the amount since the reading before. [J after the factor] */
  readonly isEnergy: boolean;
}

/** Why numbers of a column cannot be taken: ends of "expected ..." and "got ...", and a next step. */
export interface UnitTrouble {
  readonly expected: string;
  readonly got: string;
  readonly hint: string;
  /** The unit is of another kind, whatever the numbers are. */
  readonly foreign?: true;
}

/** A few numbers of a column: least, the one in the middle, most. */
export interface Spread {
  readonly least: number;
  readonly middle: number;
  readonly most: number;
}

/** The unit of a column as said, or as its numbers show it. */
export function unitOf(
  facts: LoggedQuantityFacts,
  said: string | null,
  spread: Spread,
): UnitTaken | UnitTrouble {
  const spelled = said === null ? null : (knownUnit(said) ?? said);
  const wrong = wrongUnit(facts, spelled, spread);
  if (wrong !== null) return wrong;
  if (spelled === null) return fromNumbers(facts, spread);
  const tens = Object.hasOwn(SCALED, spelled) ? SCALED[spelled] : undefined;
  if (tens !== undefined && facts.unit === '°C') {
    return { unit: spelled, by: 'said', factor: tens, offset: 0, isEnergy: false };
  }
  const given = meaning(spelled);
  const own = meaning(facts.unit);
  if (given === null || own === null) {
    if (spelled === facts.unit) return usual(facts, 'said');
    return refused(facts, spelled);
  }
  if (facts.unit === 'W' && given.dimension === 'energy') {
    return { unit: spelled, by: 'said', factor: given.factor, offset: 0, isEnergy: true };
  }
  if (facts.name === 'gas' && given.dimension === 'volume') {
    const factor = given.factor * GAS_ENERGY;
    return { unit: spelled, by: 'said', factor, offset: 0, isEnergy: true };
  }
  if (given.dimension !== own.dimension) return refused(facts, spelled);
  const factor = given.factor / own.factor;
  const offset = ((given.offset ?? 0) - (own.offset ?? 0)) / own.factor;
  return { unit: spelled, by: 'said', factor, offset, isEnergy: false };
}

/** Numbers that speak against what was said of them, or against the usual unit. */
function wrongUnit(
  { unit, words }: LoggedQuantityFacts,
  said: string | null,
  { least, middle, most }: Spread,
): UnitTrouble | null {
  const got = `${short(least)} to ${short(most)}, half of them above ${short(middle)}`;
  const expected = `${words} in ${unit}`;
  const plain = said === null || said === unit;
  if (unit === '°C' && plain) {
    if (said !== null && middle > WARM && middle < HOT) {
      return {
        expected,
        got,
        hint: 'this looks like Fahrenheit: say "unit: °F"; or is it the column of the humidity?',
      };
    }
    if (middle > HOT) {
      const like = middle > 500 ? '0.01' : '0.1';
      return { expected, got, hint: `this may be in steps of ${like} °C: say "unit: ${like} °C"` };
    }
  }
  if (unit === '%' && plain && most <= 1 && middle > 0) {
    return { expected, got, hint: 'this looks like a share of 1: say "unit: share"' };
  }
  return null;
}

function fromNumbers(facts: LoggedQuantityFacts, { middle, most }: Spread): UnitTaken {
  if (facts.unit === '°C' && middle > WARM && middle < HOT) {
    const [factor, offset] = [5 / 9, -160 / 9];
    return { unit: '°F', by: 'numbers', factor, offset, isEnergy: false };
  }
  if (facts.unit === '-' && facts.range[1] === 1 && most > 1 && most <= 100) {
    return { unit: '%', by: 'numbers', factor: 0.01, offset: 0, isEnergy: false };
  }
  return usual(facts, 'usual');
}

const usual = ({ unit }: LoggedQuantityFacts, by: UnitTaken['by']): UnitTaken => ({
  ...{ unit, by, factor: 1, offset: 0, isEnergy: false },
});

const refused = ({ words, unit }: LoggedQuantityFacts, said: string): UnitTrouble => ({
  expected: `a unit of ${words}, such as ${unit}`,
  got: `"${said}"`,
  hint: '',
  foreign: true,
});

const short = (value: number): string => String(Math.round(value * 100) / 100);

const SCALED: Readonly<Record<string, number>> = { '0.1 °C': 0.1, '0.01 °C': 0.01 };
/** Rooms have no such median in °C, and no such in °F. */
const WARM = 45;
const HOT = 115;
/** Gross heat of a cubic metre of natural gas, 38 to 41 MJ; common practice. [J/m3] */
const GAS_ENERGY = 39e6;
