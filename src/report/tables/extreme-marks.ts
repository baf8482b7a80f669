import { withoutGroups } from '../../units/sum-text.ts';

/**
 * Words beside a row of figures: "least" and "most", by what is printed. A word that would stand at
 * more than half of them says nothing and is left out, as both are where all figures are the same.
 */
export function extremeMarks(printed: readonly string[]): string[] {
  const values = printed.map((text) => Number(withoutGroups(text)));
  const known = values.filter((value) => !Number.isNaN(value));
  const least = Math.min(...known);
  const most = Math.max(...known);
  const telling = (extreme: number): boolean =>
    most > least && 2 * values.filter((value) => value === extreme).length <= values.length;
  const [tellLeast, tellMost] = [telling(least), telling(most)];
  return values.map((value) => {
    if (value === least && tellLeast) return 'least';
    return value === most && tellMost ? 'most' : '';
  });
}
