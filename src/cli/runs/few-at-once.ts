/** Work of which only so many pieces go on at once; further ones wait for their turn, in order. */
export function fewAtOnce<A extends readonly unknown[], T>(
  most: number,
  work: (...args: A) => Promise<T>,
): (...args: A) => Promise<T> {
  const waiting: (() => void)[] = [];
  let free = most;
  return async (...args) => {
    if (free > 0) free--;
    else await new Promise<void>((go) => waiting.push(go));
    try {
      return await work(...args);
    } finally {
      const next = waiting.shift();
      if (next === undefined) free++;
      else next();
    }
  };
}
