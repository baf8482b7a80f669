import type { Chooser } from './chooser.ts';
import { oddName, oddQuantity, oddValue } from './odd-values.ts';

/** A text with one to three changes of lines, characters or numbers. */
export function mutateText(text: string, choose: Chooser): string {
  let changed = text;
  for (let k = 1 + choose.index(3); k > 0; k--)
    changed = choose.pick(TEXT_CHANGES)(changed, choose);
  return changed;
}

type TextChange = (text: string, choose: Chooser) => string;

const inLines =
  (change: (lines: string[], at: number, choose: Chooser) => void): TextChange =>
  (text, choose) => {
    const lines = text.split('\n');
    change(lines, choose.index(lines.length), choose);
    return lines.join('\n');
  };

const TEXT_CHANGES: readonly TextChange[] = [
  inLines((lines, at) => lines.splice(at, 1)),
  inLines((lines, at, choose) => lines.splice(at, 0, lines[choose.index(lines.length)]!)),
  inLines((lines, at, choose) => {
    lines[at] = choose.pick(['  ', '\t', ' ', '- ', '# ', '? ', '& ', '"', '{', ']']) + lines[at];
  }),
  inLines((lines, at, choose) => {
    const line = lines[at]!;
    const cut = choose.index(line.length + 1);
    lines[at] = line.slice(0, cut) + choose.pick(SCRAPS) + line.slice(cut + choose.index(3));
  }),
  inLines((lines, at, choose) => {
    lines[at] = lines[at]!.replace(/-?\d+(?:\.\d+)?/, () => `${choose.pick(NUMBERS)}`);
  }),
  inLines((lines, at, choose) => {
    lines[at] = lines[at]!.replace(/: .*$/, () => `: ${JSON.stringify(oddValue(choose)) ?? ''}`);
  }),
  inLines((lines, at, choose) => {
    lines[at] = lines[at]!.replace(/[\w ]+:/, () => `${JSON.stringify(oddName(choose))}:`);
  }),
  inLines((lines, at, choose) => lines.splice(at, choose.index(lines.length))),
  (text, choose) => text.slice(0, choose.index(text.length + 1)),
  (text, choose) => text.replaceAll('\n', choose.pick(['\r\n', '\r', '\n\n'])),
  (text, choose) =>
    `${choose.pick(['\ufeff', '%YAML 1.1\n', '---\n', '\u0000', 'PK\u0003'])}${text}`,
];

const NUMBERS = [
  0,
  -1,
  1e-9,
  1e9,
  1e308,
  -1e308,
  '1e400',
  '.nan',
  '.inf',
  '-0',
  '0x1F',
  '١٢',
  '1,5',
];
const SCRAPS = [
  ...[
    '',
    ',',
    ':',
    ';',
    '"',
    "'",
    '*a',
    '&a',
    '<<: ',
    '!!',
    '|',
    '>',
    '#',
    '\t',
    '\u0000',
    '\u202e',
  ],
  ...['\ud800', '\u009b', 'é', '-9999', '9'.repeat(400), ', , ,', '{}', '[]', 'null', '~', '%'],
];

/** Plain values with one to three of them, or of their keys, changed into odd ones. */
export function mutateTree(value: unknown, choose: Chooser): unknown {
  let changed = value;
  for (let k = 1 + choose.index(3); k > 0; k--) changed = changeOne(changed, choose);
  return changed;
}

function changeOne(value: unknown, choose: Chooser): unknown {
  const nested = typeof value === 'object' && value !== null;
  if (!nested || choose.chance(0.12)) {
    return choose.chance(0.3) ? oddQuantity(choose) : oddValue(choose);
  }
  if (Array.isArray(value)) {
    if (value.length === 0) return [oddValue(choose)];
    const at = choose.index(value.length);
    return value.map((item, k) => (k === at ? changeOne(item, choose) : item));
  }
  const entries = Object.entries(value);
  if (entries.length === 0 || choose.chance(0.1)) {
    return Object.fromEntries([...entries, [oddName(choose), oddValue(choose)]]);
  }
  const at = choose.index(entries.length);
  if (choose.chance(0.1)) return Object.fromEntries(entries.filter((_, k) => k !== at));
  return Object.fromEntries(
    entries.map(([key, item], k) => {
      if (k !== at) return [key, item];
      return choose.chance(0.1) ? [oddName(choose), item] : [key, changeOne(item, choose)];
    }),
  );
}
