import type { FittedValue } from '../../scenario/read-scenario.ts';
import { figureText } from '../../units/figure-text.ts';
import { unitBehind } from '../../units/unit-behind.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** Words for a pointer. */
type Named = (pointer: string) => string;

/**
 * What a log told: the values that it found, each with its range and what held before; the factors that
 * it found, with what each of them scales; what was only moved along.
 *
 * @param named  words for a pointer
 */
export function fittedTable(fitted: readonly FittedValue[], named: Named, width: number): string {
  const told = fitted.filter((one) => one.told);
  const own = told.filter(({ by }) => by === null);
  const factors = [...new Set(told.flatMap(({ by }) => by ?? []))];
  const untold = fitted.filter((one) => !one.told);
  const logs = [...new Set(fitted.map(({ log }) => visibleProse(log)))];
  return [
    ...logs.map((log) => wrapText(log, '', width)),
    ...(own.length === 0 ? [] : [ownTable(own, named, width)]),
    ...factors.map((by) =>
      factorWords(
        by,
        told.filter((one) => one.by === by),
        named,
        width,
      ),
    ),
    ...(untold.length === 0 ? [] : [wrapText(untoldWords(untold, named), '', width)]),
  ].join('\n');
}

function ownTable(values: readonly FittedValue[], named: Named, width: number): string {
  const { figures, words } = columnsOf(values);
  return textTable(
    [
      words('', ({ path }) => named(path)),
      figures('value', ({ value }) => figureText(value)),
      words('unit', ({ unit }) => unit),
      figures('low', ({ low }) => figureText(low)),
      figures('high', ({ high }) => figureText(high)),
      figures('before', ({ from }) => figureText(from)),
    ],
    width,
    1,
  );
}

/** One factor was found, and what it scales was not told apart. */
function factorWords(
  by: string,
  values: readonly FittedValue[],
  named: Named,
  width: number,
): string {
  const [first] = values;
  const factor =
    first === undefined || first.from === null || first.from === 0
      ? ''
      : ` ${figureText(first.value / first.from, 2)} (${figureText(first.low / first.from, 2)} to ${figureText(first.high / first.from, 2)})`;
  const each = values.map(({ path, value, from, unit }) => {
    const now = `${figureText(value)}${unitBehind(unit)}`;
    const before = from === null ? '' : ` (before ${figureText(from)})`;
    return `${named(path)} ${now}${before}`;
  });
  const what = `${visibleProse(by)}${factor}: one factor, found for all of these together, none of them by itself`;
  return wrapText(`${what}: ${each.join('; ')}`, '', width);
}

const untoldWords = (values: readonly FittedValue[], named: Named): string =>
  `Not told by the log, moved along with the rest and as uncertain as before: ${values
    .map(({ path, value, unit }) => {
      const name = named(path);
      return `${name} ${figureText(value)}${unitBehind(unit)}`;
    })
    .join('; ')}.`;
