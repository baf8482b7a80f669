import { isAlias, isMap, isScalar, isSeq, type Node, type Pair } from 'yaml';
import type { YamlFile } from './read-yaml.ts';

export type Path = readonly (string | number)[];

export interface Place {
  readonly file: string;
  /** Counted from 1; 0 where there is no place in a text. */
  readonly line: number;
  readonly column: number;
}

/** How far a path leads into a file, and where that stands. */
export interface Found {
  /** Number of steps of the path that exist. */
  readonly depth: number;
  /** True where the path ends, early or not, in something that is not a mapping. */
  readonly closed: boolean;
  readonly place: Place;
}

/** Follow a path from the top of a file; `key` asks for the place of the last key, not its value. */
export function placeOf(yaml: YamlFile, path: Path, key = false): Found {
  let node = resolve(yaml, yaml.document.contents);
  let offset = node?.range?.[0] ?? 0;
  let depth = 0;
  for (const step of path) {
    const next = child(node, step);
    if (next === null) break;
    depth++;
    const [keyNode, value] = next;
    const wanted = (key && depth === path.length ? keyNode : value) ?? keyNode;
    offset = wanted?.range?.[0] ?? offset;
    node = resolve(yaml, value);
  }
  const { line, col } = yaml.lines.linePos(offset);
  return { depth, closed: !isMap(node), place: { file: yaml.file, line, column: col } };
}

function child(node: Node | null, step: string | number): [Node | null, Node | null] | null {
  if (isMap(node)) {
    const pair = node.items.find(
      (item: Pair) => isScalar(item.key) && String(item.key.value) === String(step),
    );
    return pair === undefined ? null : [pair.key as Node, pair.value as Node | null];
  }
  if (isSeq(node)) {
    const item = node.items[Number(step)];
    return item === undefined ? null : [null, item as Node];
  }
  return null;
}

function resolve(yaml: YamlFile, node: Node | null): Node | null {
  return isAlias(node) ? (node.resolve(yaml.document) ?? null) : node;
}
