import type { Assumed } from '../../home/notices.ts';
import type { Preset } from '../../units/preset.ts';
import { pointerOf } from '../yaml/json-pointer.ts';
import type { Path } from '../yaml/place-of.ts';

/** Fills what nobody gave, and keeps a list of it. */
export interface Defaults {
  /** The given number, or the preset's, which is then listed. */
  number(path: Path, given: number | undefined, preset: Preset): number;
  /** The given word or text, or the one assumed, which is then listed. */
  word<T extends string>(path: Path, given: T | undefined, assumed: T, source: string): T;
  readonly assumed: readonly Omit<Assumed, 'unit'>[];
}

export function createDefaults(): Defaults {
  const rows = new Map<string, Omit<Assumed, 'unit'>>();
  return {
    number(path, given, { value, low, high, source }) {
      if (given !== undefined) return given;
      const pointer = pointerOf(path);
      rows.set(pointer, { path: pointer, value, low, high, source });
      return value;
    },
    word(path, given, assumed, source) {
      if (given !== undefined) return given;
      const pointer = pointerOf(path);
      rows.set(pointer, { path: pointer, value: assumed, low: null, high: null, source });
      return assumed;
    },
    get assumed() {
      return [...rows.values()].map((row) => ({
        ...row,
        low: rounded(row.low),
        high: rounded(row.high),
      }));
    },
  };
}

/** Fills what nobody gave, where nobody asks afterwards what that was. */
export const UNLISTED: Defaults = {
  number: (_, given, { value }) => given ?? value,
  word: (_, given, assumed) => given ?? assumed,
  assumed: [],
};

const rounded = (end: number | null): number | null =>
  end === null ? null : Number(end.toPrecision(6));
