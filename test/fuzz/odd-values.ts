import type { Chooser } from './chooser.ts';

/** A plain value that no careful person would write: extreme, empty, deep, or named like a built-in. */
export function oddValue(choose: Chooser, depth = 0): unknown {
  const kind = choose.index(depth > 3 ? 3 : 6);
  if (kind === 0) return choose.pick(ODD_NUMBERS);
  if (kind === 1) return choose.pick(ODD_TEXTS);
  if (kind === 2) return choose.pick([null, true, false, [], {}]);
  if (kind === 3) return Array.from({ length: choose.index(4) }, () => oddValue(choose, depth + 1));
  if (kind === 4) return choose.pick(ODD_TEXTS).repeat(choose.pick([1, 2, 300]));
  const entries = Array.from({ length: 1 + choose.index(3) }, () => [
    oddName(choose),
    oddValue(choose, depth + 1),
  ]);
  return Object.fromEntries(entries);
}

/** A key or name that trips careless code. */
export const oddName = (choose: Chooser): string => choose.pick(ODD_NAMES);

/** A quantity as text, of a unit that may not be the one that is asked for. */
export const oddQuantity = (choose: Chooser): string =>
  `${choose.pick(ODD_NUMBERS)} ${choose.pick(UNITS)}`;

const UNITS = ['°C', '°F', 'K', 'W', 'kW', 'm2', 'm3/h', 'L/day', 'pint/day', '%', 'min', 'h', 'x'];

const ODD_NUMBERS = [
  ...[0, -0, 1, -1, 0.5, 1e-9, 1e-300, 1e9, 1e300, -1e300, 1 / 3, 24, 60, 366, 1e15, 2 ** 53],
  ...[Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY],
];

const ODD_NAMES = [
  ...['__proto__', 'constructor', 'toString', 'prototype', 'hasOwnProperty', 'valueOf', 'length'],
  ...['', ' ', 'a/b', 'a~b', 'a=b', 'null', 'outdoors', 'all', '0', '-1', '\u202ename', 'é', '名'],
  ...[
    'x'.repeat(5000),
    'line\nbreak',
    'tab\there',
    '\u0000',
    '\u009b2J',
    "quote'",
    '"',
    '<b>',
    '#',
  ],
];

const ODD_TEXTS = [
  ...ODD_NAMES,
  ...['24:00', '00:00', '25:61', 'Mon-Sun', 'weekdays', '02-29', '12-31', '1e400', '0x10', '1_000'],
  ...['°C', '5 °C', '-300 °C', '100 %', '1e5 W', 'NaN', '.inf', '~', 'yes', '010', '2023-01-01'],
];
