import * as z from 'zod';
import {
  choice,
  either,
  list,
  named,
  plainNumber,
  section,
  text,
} from '../../scenario/model/fields.ts';
import { InputProblems, type Problem } from '../../units/problem.ts';
import type { Quantity } from '../../weather/quantity.ts';
import { checkColumnMap } from '../../weather/read/check-column-map.ts';
import type { ColumnMap } from '../../weather/read/column-map.ts';
import { checkedYaml } from './checked-yaml.ts';

/**
 * A column map from its YAML.
 *
 * @throws InputProblems with everything that is wrong, each with its place
 */
export function readColumnMap(yaml: string, file: string): ColumnMap {
  return checkedYaml(yaml, file, mapModel, (data) => {
    const map = mapOf(data);
    const problems: Problem[] = [];
    checkColumnMap(map, problems);
    if (problems.length > 0) throw new InputProblems(problems.map((p) => ({ ...p, file })));
    return map;
  });
}

const yesNo = () => z.boolean({ error: () => 'true or false' });
const column = () => text('Header of the column');

const mapModel = section(
  {
    time: section(
      {
        column: either(
          [column(), list(column(), 'a list of headers', 'Date and time of day apart')],
          'the header of the time column, or a list of two',
          'Which column is the time',
        ),
        format: text('iso, epoch s, epoch ms, or a pattern').optional(),
        'utc offset': plainNumber({ min: -13, max: 14 }, 'Hours ahead of UTC').optional(),
        stamp: choice(['beginning', 'ending', 'instant'], 'What a time stands for').optional(),
        'air is mean': yesNo().optional(),
      },
      'The time of a row',
    ),
    quantities: named(
      section({ column: column(), unit: text('Of its numbers').optional() }, 'One column'),
      'a mapping from quantities to columns',
      'What is in which column',
    ),
    delimiter: text('Between cells').optional(),
    'decimal comma': yesNo().optional(),
    'skip lines': plainNumber({ min: 0, whole: true }, 'Lines above the header').optional(),
    missing: list(
      either([z.string(), z.number()], 'a text or number', 'One code'),
      'a list of texts or numbers',
      'Codes of a missing reading',
    ).optional(),
    typical: yesNo().optional(),
  },
  'How to read a CSV',
);

function mapOf(data: z.output<typeof mapModel>): ColumnMap {
  const { time } = data;
  return {
    time: {
      column: time.column,
      ...given('format', time.format),
      ...given('utcOffset', time['utc offset']),
      ...given('stamp', time.stamp),
      ...given('airIsMean', time['air is mean']),
    },
    quantities: Object.fromEntries(
      Object.entries(data.quantities).map(([name, { column, unit }]) => [
        name,
        { column, ...given('unit', unit) },
      ]),
    ) as Partial<Record<Quantity, { column: string }>>,
    ...given('delimiter', data.delimiter),
    ...given('decimalComma', data['decimal comma']),
    ...given('skipLines', data['skip lines']),
    ...given('missing', data.missing),
    ...given('typical', data.typical),
  };
}

/** A key only where there is a value, as optional keys want it. */
function given<K extends string, V>(key: K, value: V | undefined): { readonly [k in K]?: V } {
  return value === undefined ? {} : ({ [key]: value } as { [k in K]: V });
}
