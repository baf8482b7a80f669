import { getHeapStatistics, setFlagsFromString } from 'node:v8';

/**
 * Compile on the spot, for good and with every call built into its caller, so that neither a busy machine
 * nor the order in which functions grow warm decides what is left on the heap: a number that passes
 * between two functions takes 16 bytes of it where the one is not built into the other.
 */
export function compileWhole(): void {
  setFlagsFromString('--no-concurrent-recompilation');
  setFlagsFromString('--no-flush-bytecode');
  setFlagsFromString('--max-inlined-bytecode-size=5000');
  setFlagsFromString('--max-inlined-bytecode-size-cumulative=20000');
}

/** Heap in use, as `process.memoryUsage()` tells it, which takes much longer since it asks the machine for more. [bytes] */
export const heapUsed = (): number => getHeapStatistics().used_heap_size;

/** What a loop calls to leave one number a step on the heap. */
export function leaveNumber(): () => void {
  const kept: { last: unknown } = { last: 0 };
  let number = 0.5;
  return () => {
    number += 1;
    kept.last = { number };
  };
}

export function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[values.length >> 1]!;
}
