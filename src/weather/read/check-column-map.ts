import { nearestName } from '../../units/nearest-name.ts';
import type { Problem } from '../../units/problem.ts';
import { QUANTITIES, QUANTITY_NAMES, type Quantity } from '../quantity.ts';
import type { ColumnMap } from './column-map.ts';
import { conversionFrom, unitsOf } from './quantity-units.ts';
import { timeReader } from './time-format.ts';

/** Everything wrong with a column map that can be told without the file it is for. */
export function checkColumnMap(map: ColumnMap, problems: Problem[]): void {
  const complain = (
    path: readonly string[],
    expected: string,
    got: string,
    near: string | null = null,
  ) => {
    const hint = near === null ? '' : `did you mean "${near}"?`;
    const place = { file: 'column map', line: 0, column: 0, where: path.join('.'), path };
    problems.push({ ...place, expected, got, hint });
  };
  const { format = 'iso', utcOffset = 0, stamp = 'beginning' } = map.time;
  if (timeReader(format) === null) complain(['time', 'format'], FORMATS, `"${format}"`);
  if (!(utcOffset >= -13 && utcOffset <= 14)) {
    complain(['time', 'utcOffset'], 'hours ahead of UTC, -13 to 14', `${utcOffset}`);
  }
  if (!STAMPS.includes(stamp)) {
    complain(['time', 'stamp'], STAMPS.join(', '), `"${stamp}"`, nearestName(stamp, STAMPS));
  }
  for (const [name, column] of Object.entries(map.quantities)) {
    const path = ['quantities', name];
    if (!(QUANTITY_NAMES as readonly string[]).includes(name)) {
      complain(path, QUANTITY_NAMES.join(', '), `"${name}"`, nearestName(name, QUANTITY_NAMES));
      continue;
    }
    const quantity = name as Quantity;
    const unit = column.unit ?? QUANTITIES[quantity].unit;
    if (conversionFrom(quantity, unit) === null) {
      const known = unitsOf(quantity);
      complain([...path, 'unit'], known.join(', '), `"${unit}"`, nearestName(unit, known));
    }
  }
}

const STAMPS: readonly string[] = ['beginning', 'ending', 'instant'];
const FORMATS = '"iso", "epoch s", "epoch ms", or a pattern with YYYY, MM, DD and hh';
