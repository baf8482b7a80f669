import { isAlias, isMap, isPair, isScalar, isSeq, type Node, type Pair } from 'yaml';
import { InputProblems } from '../../units/problem.ts';
import { placeOf } from '../yaml/place-of.ts';
import { readYaml, type YamlFile } from '../yaml/read-yaml.ts';
import { indented, inline } from './yaml-text.ts';

/** What is put into a mapping (under a name) or at the end of a list (without one). */
export interface Insertion {
  /** Keys down to the mapping or list. */
  readonly path: readonly string[];
  /** Null in a list. */
  readonly name: string | null;
  readonly value: unknown;
  /** How it stands on lines of its own, where one line is not best. */
  readonly lines?: readonly string[];
}

/**
 * The text of a YAML file with something more in it: every other byte, its comments and order stay.
 *
 * What is new goes behind the last item of its mapping or list, in the way that is written in; a
 * section that is not there yet goes to the end of the file.
 *
 * @throws InputProblems where it is not YAML, or the place is no mapping or list written out there
 */
export function insertInto(text: string, file: string, insertion: Insertion): string {
  const yaml = readYaml(text, file);
  const newline = text.includes('\r\n') ? '\r\n' : '\n';
  let node = yaml.document.contents as Node | null;
  for (const [k, key] of insertion.path.entries()) {
    const pair = pairOf(node, key);
    if (pair === undefined) {
      const [missing] = insertion.path.slice(k);
      if (k > 0 || (isMap(node) && node.flow === true))
        throw notThere(yaml, insertion.path, 'nothing');
      const lines = [`${missing}:`, ...indented(blockLines(insertion))];
      const end = text === '' || text.endsWith('\n') ? '' : newline;
      return `${text}${end}${newline}${lines.join(newline)}${newline}`;
    }
    if (pair.value === null || (isScalar(pair.value) && pair.value.value === null)) {
      const at = lineEnd(text, (pair.key as Node).range![1]);
      const column = columnOf(text, (pair.key as Node).range![0]) + 2;
      return spliced(text, at, newline, column, blockLines(insertion));
    }
    node = pair.value as Node;
  }
  const fits = insertion.name === null ? isSeq(node) : isMap(node);
  if (!fits) throw notThere(yaml, insertion.path, isAlias(node) ? 'an alias' : 'something else');
  const items = (node as { items: (Node | Pair)[] }).items;
  const last = items.at(-1);
  if ((node as { flow?: boolean }).flow === true) {
    const close = node!.range![1] - 1;
    const comma = last === undefined || /,\s*$/.test(text.slice(endOf(last), close)) ? ' ' : ', ';
    const at = last === undefined ? close : endOf(last) + (comma === ' ' ? 1 : 0);
    const more = last === undefined ? ' ' : '';
    return `${text.slice(0, at)}${comma}${flowText(insertion)}${more}${text.slice(at)}`;
  }
  const first = items[0]!;
  const start = isPair(first) ? (first.key as Node).range![0] : dashBefore(text, first.range![0]);
  const at = lineEnd(text, endOf(last!));
  return spliced(text, at, newline, columnOf(text, start), blockLines(insertion));
}

function pairOf(node: Node | null, key: string): Pair | undefined {
  if (!isMap(node)) return undefined;
  return node.items.find((pair) => isScalar(pair.key) && pair.key.value === key);
}

/** Lines in a block: an item of a list, or a name with its value. */
function blockLines({ name, value, lines }: Insertion): readonly string[] {
  return lines ?? [name === null ? `- ${inline(value)}` : `${inline(name)}: ${inline(value)}`];
}

const flowText = ({ name, value }: Insertion): string =>
  name === null ? inline(value) : `${inline(name)}: ${inline(value)}`;

/** Where the text of a node ends, without blank lines and remarks behind it. */
function endOf(node: Node | Pair): number {
  if (isPair(node)) return endOf((node.value ?? node.key) as Node);
  if ((isMap(node) || isSeq(node)) && node.flow !== true && node.items.length > 0) {
    return endOf(node.items.at(-1) as Node | Pair);
  }
  return node.range![1];
}

/** The end of the line that a node ends on, before its line break. */
function lineEnd(text: string, offset: number): number {
  const from = text[offset - 1] === '\n' ? offset - 1 : offset;
  const end = text.indexOf('\n', from);
  const at = end < 0 ? text.length : end;
  return text[at - 1] === '\r' ? at - 1 : at;
}

const columnOf = (text: string, offset: number): number =>
  offset - (text.lastIndexOf('\n', offset - 1) + 1);

const dashBefore = (text: string, offset: number): number => text.lastIndexOf('-', offset - 1);

function spliced(
  text: string,
  at: number,
  newline: string,
  column: number,
  lines: readonly string[],
): string {
  const block = lines.map((line) => `${newline}${' '.repeat(column)}${line}`).join('');
  return `${text.slice(0, at)}${block}${text.slice(at)}`;
}

function notThere(yaml: YamlFile, path: readonly string[], got: string): InputProblems {
  const { place } = placeOf(yaml, path);
  const expected = 'a mapping or list that is written out, to add to';
  return new InputProblems([{ ...place, where: path.join('.'), expected, got, hint: '' }]);
}
