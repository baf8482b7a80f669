import { type Path, type Place, placeOf } from './place-of.ts';
import type { YamlFile } from './read-yaml.ts';

/** Somewhere a value of the merged scenario may have been written. */
export type Layer =
  | { readonly by: 'file'; readonly yaml: YamlFile; readonly under: Path }
  | { readonly by: 'set'; readonly words: string; readonly path: Path };

/**
 * Where a value of the merged scenario was written: the last layer that says anything about it.
 *
 * Layers are in the order they were laid on: the base, the plans that build on one another, and
 * the settings of the command line. A layer speaks about a path when it has it, or when it put a
 * number, text or list in the place of one of its parents. What nobody wrote stands where the
 * nearest parent does.
 */
export function writtenAt(layers: readonly Layer[], path: Path, key = false): Place {
  let best: Place = { file: '', line: 0, column: 0 };
  let deepest = -1;
  for (const layer of layers.toReversed()) {
    if (layer.by === 'set') {
      if (startsWith(path, layer.path)) return { file: layer.words, line: 0, column: 0 };
      continue;
    }
    const found = placeOf(layer.yaml, [...layer.under, ...path], key);
    const depth = found.depth - layer.under.length;
    if (depth === path.length || (depth >= 0 && found.closed)) return found.place;
    if (depth > deepest) {
      deepest = depth;
      best = found.place;
    }
  }
  return best;
}

/** Whether a path leads to what another leads to, or into it. */
export const startsWith = (path: Path, start: Path): boolean =>
  start.length <= path.length && start.every((step, k) => String(step) === String(path[k]));
