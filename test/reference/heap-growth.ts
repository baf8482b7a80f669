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
