import { nearestName } from './nearest-name.ts';
import { DIMENSIONS, UNITS, type UnitMeaning } from './unit-table.ts';
import { meaning } from './unit-words.ts';

/** Ends of the sentences "expected ...", "got ..." and a next step, empty for none. */
interface QuantityRefusal {
  readonly expected: string;
  readonly got: string;
  readonly hint: string;
}

export type QuantityResult = { readonly value: number } | { readonly refused: QuantityRefusal };

/**
 * A number with or without its unit, in the unit that the field documents.
 *
 * A plain number already has that unit. Text such as "66 °F", "1.2 kW", "25 pint/day", "0.3 W/m2K",
 * "80 mm" or "1 h 30 min" is converted; a unit of another kind is refused in words, and so is a
 * temperature where a temperature difference belongs ("K" against "°C").
 *
 * @param written     what the person wrote
 * @param documented  the field's unit, a key of UNITS such as "°C", "W", "m2", "%", "-"
 *
 * @example readQuantity('66 °F', '°C') // { value: 18.888… }
 */
export function readQuantity(written: string | number, documented: string): QuantityResult {
  const target = meaning(documented);
  if (target === null) throw new RangeError(`readQuantity: no unit is called "${documented}"`);
  if (typeof written === 'number') {
    if (Number.isFinite(written)) return { value: written };
    return refuse(documented, target, `${written}`, '');
  }
  const shown = JSON.stringify(written);
  const parts = split(written);
  if (parts === null) return refuse(documented, target, shown, numberHint(written));
  let sum = 0;
  for (const { number, unit } of parts) {
    if (unit === '' && parts.length === 1) return { value: number };
    const given = meaning(unit);
    if (given === null) {
      const nearest = nearestName(unit, unitsOf(target));
      const hint =
        nearest === null
          ? `known here: ${unitsOf(target).join(', ')}`
          : `did you mean "${number} ${nearest}"?`;
      return refuse(documented, target, `${shown}, whose unit is not known`, hint);
    }
    if (given.dimension !== target.dimension) {
      const got = `${shown}, which is ${DIMENSIONS[given.dimension]}`;
      return refuse(documented, target, got, mixHint(number, given, target));
    }
    if (parts.length > 1 && !COMPOUND.has(given.dimension)) {
      return refuse(documented, target, shown, 'one number with one unit');
    }
    const base = number * given.factor + (given.offset ?? 0);
    sum += exactly(base, target, unit === documented ? number : null);
  }
  return { value: sum };
}

/** "an area in m2", "a temperature in °C or °F": how a field of this unit is described. */
export function quantityWords(documented: string): string {
  const target = meaning(documented);
  if (target === null) throw new RangeError(`quantityWords: no unit is called "${documented}"`);
  if (target.dimension === 'ratio') return documented === '%' ? 'a percentage' : 'a share of 1';
  const others = target.dimension === 'temperature' ? ' or °F' : '';
  return `${DIMENSIONS[target.dimension]} in ${documented}${others}`;
}

/** "1 h 30 min" into its numbers and units; null where the text is not that. */
function split(text: string): { number: number; unit: string }[] | null {
  const parts: { number: number; unit: string }[] = [];
  let rest = text.trim().replaceAll('−', '-');
  while (rest !== '') {
    const match = PART.exec(rest);
    if (match === null) return null;
    parts.push({ number: Number(match[1]), unit: (match[2] ?? '').trim() });
    rest = rest.slice(match[0].length);
  }
  return parts.length === 0 ? null : parts;
}

/** From the base unit to the target's, without losing a digit where the unit was the target's own. */
function exactly(base: number, target: UnitMeaning, same: number | null): number {
  if (same !== null) return same;
  const value = (base - (target.offset ?? 0)) / target.factor;
  return Number(value.toPrecision(15));
}

function refuse(
  documented: string,
  target: UnitMeaning,
  got: string,
  hint: string,
): QuantityResult {
  const example = EXAMPLES[target.dimension];
  const expected =
    quantityWords(documented) + (example === undefined ? '' : `, such as ${example}`);
  return { refused: { expected, got, hint } };
}

function mixHint(number: number, given: UnitMeaning, target: UnitMeaning): string {
  if (given.dimension === 'difference' && target.dimension === 'temperature') {
    return `K is a difference here; a temperature is written ${number} °C`;
  }
  if (given.dimension === 'temperature' && target.dimension === 'difference') {
    return `°C is a temperature here; a difference is written ${number} K`;
  }
  if (given.dimension === 'angle' && target.dimension === 'temperature') {
    return `write "${number} °C" or "${number} °F"`;
  }
  if (given.dimension === 'length' && target.dimension === 'time') return `write "${number} min"`;
  return '';
}

const numberHint = (text: string): string =>
  decimalCommaHint(text) ||
  (/^\s*[-+]?\d+,\d+/.test(text)
    ? 'decimals are written with a point, thousands without a comma'
    : '');

/** What to write in place of a number with a decimal comma, such as "0,30"; empty where it is none. */
export function decimalCommaHint(text: string): string {
  const [, whole, digits] = DECIMAL_COMMA.exec(text) ?? [];
  return whole === undefined ? '' : `write ${whole}.${digits} with a point`;
}

/** Three digits behind a comma may be thousands, unless a nought stands before it. */
const DECIMAL_COMMA = /^\s*([-+]?(?:\d+(?=,\d{1,2}(?!\d))|0(?=,\d)|\d+(?=,\d{4}))),(\d+)(?![\d,])/;

const unitsOf = (target: UnitMeaning): string[] =>
  Object.keys(UNITS).filter((name) => UNITS[name]!.dimension === target.dimension);

// A number, then everything up to the next number that follows white space.
const PART = /^([-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?)(?![\d,])\s*(.*?)(?:\s+(?=[-+]?\.?\d)|$)/;
const COMPOUND: ReadonlySet<string> = new Set(['time', 'length']);
const EXAMPLES: Readonly<Record<string, string>> = {
  temperature: '20 or "68 °F"',
  difference: '2 or "2 K"',
  length: '2.4 or "80 mm"',
  area: '12 or "130 ft2"',
  time: '10 or "10 min"',
  power: '1200 or "1.2 kW"',
  ratio: '0.86 or "86 %"',
  transmittance: '0.3 or "0.3 W/m2K"',
  'water rate': '12 or "12 L/day"',
};
