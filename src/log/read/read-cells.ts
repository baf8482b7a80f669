import { UNAVAILABLE } from './raw-rows.ts';

/**
 * The number in a cell: NaN for an empty one, UNAVAILABLE where it says that nothing is known, null
 * where it is neither. States in words count as 1 and 0, a tilted window as a tenth.
 *
 * @param decimalComma  whether a comma is the decimal mark, or else parts thousands
 */
export function cellNumber(cell: string, decimalComma: boolean): number | null {
  if (cell === '') return Number.NaN;
  const number = Number(cell);
  if (!Number.isNaN(number)) return Number.isFinite(number) ? number : null;
  if (cell.includes(','))
    return Number(withPoint(cell, decimalComma)) || zeroOrNull(cell, decimalComma);
  const word = cell.toLowerCase();
  if (NOTHING.has(word)) return UNAVAILABLE;
  const state = STATES.get(word);
  if (state !== undefined) return state;
  const unitBehind = /^([-+−]?\d+(?:[.]\d+)?) ?(°?[CF]|%|ppm|W|kW|kWh)$/.exec(cell);
  if (unitBehind !== null) return Number(unitBehind[1]!.replace('−', '-'));
  const minus = Number(cell.replace('−', '-'));
  return Number.isNaN(minus) ? null : minus;
}

function withPoint(cell: string, decimalComma: boolean): string {
  const bare = cell.replace('−', '-');
  if (decimalComma) return bare.replaceAll('.', '').replace(',', '.');
  return /^-?\d{1,3}(,\d{3})+(\.\d+)?$/.test(bare) ? bare.replaceAll(',', '') : 'no number';
}

function zeroOrNull(cell: string, decimalComma: boolean): number | null {
  return Number(withPoint(cell, decimalComma)) === 0 ? 0 : null;
}

const NOTHING = new Set([
  ...['nan', 'null', 'none', 'na', 'n/a', '#n/a', '-', '--', '---', 'unavailable', 'unknown'],
  ...['error', 'err', 'offline', 'missing', 'no data'],
]);
/** Names of columns are read in German too. */
const GERMAN = {
  yes: ['offen', 'geöffnet', 'an', 'ein', 'ja', 'anwesend', 'zuhause'],
  no: ['zu', 'geschlossen', 'aus', 'nein', 'abwesend'],
};
/** Open share of a tilted window, as in usual airing; own judgement. [-] */
const TILTED = 0.1;
const STATES: ReadonlyMap<string, number> = new Map([
  ...['on', 'open', 'opened', 'true', 'yes', 'home', 'detected', 'occupied', ...GERMAN.yes].map(
    (w) => [w, 1] as const,
  ),
  ...[
    'off',
    'closed',
    'close',
    'shut',
    'false',
    'no',
    'away',
    'not_home',
    'clear',
    'empty',
    ...GERMAN.no,
  ].map((w) => [w, 0] as const),
  ...['tilted', 'tilt', 'gekippt', 'kipp'].map((w) => [w, TILTED] as const),
]);
