/**
 * Copy a record with every number array in it, however deep. What holds no state is shared: plain
 * lists, maps, functions, and the records named in SHARED. Arrays that two places share stay one.
 */
export function copyState<T extends object>(record: T): T {
  return copyRecord(record, new Map());
}

/** Fill the number arrays of a record with those of another one that was laid out alike. */
export function copyNumbers<T extends object>(to: T, from: T): void {
  for (const key of Object.keys(to) as (keyof T & string)[]) {
    const here: unknown = to[key];
    const there: unknown = from[key];
    if (ArrayBuffer.isView(here)) (here as Numbers).set(there as Numbers);
  }
}

function copyRecord<T extends object>(record: T, copies: Map<object, object>): T {
  const copy: T = { ...record };
  for (const key of Object.keys(record) as (keyof T & string)[]) {
    const value: unknown = record[key];
    if (SHARED.has(key) || typeof value !== 'object' || value === null) continue;
    if (Array.isArray(value) || value instanceof Map) continue;
    const known = copies.get(value);
    const made = known ?? (isNumbers(value) ? value.slice() : copyRecord(value, copies));
    copies.set(value, made);
    copy[key] = made as T[keyof T & string];
  }
  return copy;
}

type Numbers = Float64Array | Int32Array | Uint8Array;

const isNumbers = (value: object): value is Numbers => ArrayBuffer.isView(value);

/** What never changes in a run. */
const SHARED: ReadonlySet<string> = new Set(['home', 'elimination']);
