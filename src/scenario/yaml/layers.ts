import type { EditedList } from './edited-lists.ts';
import { type Path, type Place, placeOf } from './place-of.ts';
import type { YamlFile } from './read-yaml.ts';

/** Somewhere a value of the merged scenario may have been written. */
export type Layer =
  | {
      readonly by: 'file';
      readonly yaml: YamlFile;
      readonly under: Path;
      /** Lists that the layer edits item by item. */
      readonly lists?: readonly EditedList[];
    }
  | { readonly by: 'set'; readonly words: string; readonly path: Path };

/**
 * Where a value of the merged scenario was written: the last layer that says anything about it.
 *
 * Layers are in the order they were laid on: the base, the plans that build on one another, and
 * the settings of the command line. A layer speaks about a path when it has it, or when it put a
 * number, text or list in the place of one of its parents. What nobody wrote stands where the
 * nearest parent does, a setting that made that parent on its way included. Below a layer that edits a list, its items have the numbers of before.
 */
export function writtenAt(layers: readonly Layer[], path: Path, key = false): Place {
  let best: Place = { file: '', line: 0, column: 0 };
  let deepest = -1;
  let below = path;
  let shared = 0;
  let setting: Place | null = null;
  for (const layer of layers.toReversed()) {
    if (layer.by === 'set') {
      const place = { file: layer.words, line: 0, column: 0 };
      if (startsWith(path, layer.path)) return place;
      const common = commonSteps(path, layer.path);
      if (common > shared) [shared, setting] = [common, place];
      continue;
    }
    const { inLayer, before } = steppedThrough(layer.lists ?? [], below);
    below = before ?? below;
    if (inLayer === null) continue;
    const found = placeOf(layer.yaml, [...layer.under, ...inLayer], key);
    const depth = found.depth - layer.under.length;
    if (depth === inLayer.length) return found.place;
    if (depth >= 0 && found.closed)
      return setting !== null && shared > depth ? setting : found.place;
    if (before === null) return found.place;
    if (inLayer.length === path.length && depth > deepest) {
      deepest = depth;
      best = found.place;
    }
  }
  return setting !== null && shared > deepest ? setting : best;
}

function commonSteps(path: Path, other: Path): number {
  const differs = path.findIndex((step, k) => String(step) !== String(other[k]));
  return differs < 0 ? path.length : differs;
}

/**
 * A path as a layer has it, null where it leaves the item alone, and as the layers below have it, null where
 * the layer added the item.
 */
function steppedThrough(
  lists: readonly EditedList[],
  path: Path,
): { readonly inLayer: Path | null; readonly before: Path | null } {
  const list = lists.find((one) => path.length > one.path.length && startsWith(path, one.path));
  const item = list?.items[Number(path[list.path.length])];
  if (list === undefined || item === undefined) return { inLayer: path, before: path };
  const rest = path.slice(list.path.length + 1);
  if (item.added !== undefined) {
    return { inLayer: [...list.path, 'add', item.added, ...rest], before: null };
  }
  const before = [...list.path, item.old!, ...rest];
  if (item.name === undefined) return { inLayer: null, before };
  return { inLayer: [...list.path, 'change', item.name, ...rest], before };
}

/** Whether a path leads to what another leads to, or into it. */
export const startsWith = (path: Path, start: Path): boolean =>
  start.length <= path.length && start.every((step, k) => String(step) === String(path[k]));
