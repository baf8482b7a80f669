import type { TraceView } from '../../engine/trace.ts';

/** Counts how often each heat source begins to be drawn on. */
export interface SourceStarts {
  observe(trace: TraceView): void;
  /** One per source, in the order of the home's. */
  result(): readonly number[];
}

/**
 * A source is drawn on in a step that takes more than a watt of fuel or backup from it. One that is
 * drawn on as the trace begins has not started then. What happens within a step is not seen.
 */
export function createSourceStarts(sources: number): SourceStarts {
  const starts = new Int32Array(sources);
  const drawn = new Uint8Array(sources).fill(1);

  function observe({ steps, home }: TraceView): void {
    for (let k = 0; k < sources; k++) {
      const fuel = home.sourceFuel[k]!;
      const backup = home.sourceBackup[k]!;
      let before = drawn[k]!;
      let count = starts[k]!;
      for (let s = 0; s < steps; s++) {
        const now = fuel[s]! + backup[s]! > LEAST ? 1 : 0;
        if (now > before) count++;
        before = now;
      }
      drawn[k] = before;
      starts[k] = count;
    }
  }

  return { observe, result: () => [...starts] };
}

const LEAST = 1; // W
