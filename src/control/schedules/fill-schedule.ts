import type { WeekLine } from '../household.ts';
import { eachStep, type Stretch } from './time-grid.ts';

/**
 * Values by the clock, step by step, lines side by side: `[s * lines + i]`. Each is a mean over its
 * step, except that an infinite one is never averaged.
 */
export function layOutLines(
  values: Float64Array,
  lines: readonly WeekLine[],
  stretch: Stretch,
): void {
  const across = lines.length;
  lines.forEach((line, i) => {
    for (let s = 0; s < stretch.steps; s++) values[s * across + i] = line.base;
    for (const spell of line.spells) {
      eachStep(spell, stretch, (step, share) => {
        const at = step * across + i;
        values[at] = blend(values[at]!, spell.value, share);
      });
    }
  });
}

/** Mean of two settings; one that is infinite (off) cannot be averaged, so the longer one holds. */
function blend(before: number, value: number, share: number): number {
  if (share === 1) return value;
  if (Number.isFinite(before) && Number.isFinite(value)) return before + share * (value - before);
  return share >= 0.5 ? value : before;
}
