import { createChooser } from './chooser.ts';
import type { Target } from './targets.ts';

/** A case that the program took wrongly. */
interface Found {
  readonly number: number;
  readonly text: string;
  readonly wrong: string;
}

/** Make and judge cases; one that takes longer than the limit counts as wrong. */
export function tryCases(target: Target, seed: number, cases: number, limit = 20_000) {
  const found: Found[] = [];
  let slowest = 0;
  for (let number = 0; number < cases; number++) {
    const text = target.make(createChooser(seed * 1_000_003 + number));
    const started = performance.now();
    const wrong = target.judge(text);
    const took = performance.now() - started;
    slowest = Math.max(slowest, took);
    if (wrong !== null) found.push({ number, text, wrong });
    else if (took > limit) found.push({ number, text, wrong: `took ${took.toFixed(0)} ms` });
  }
  return { found, slowest };
}
