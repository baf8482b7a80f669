import { STEP_RECORDS } from './step-module.ts';

/** Records of a run that were moved to one block of memory, and where each begins. [B] */
export interface Moved<T extends Record<string, object>> {
  readonly records: T;
  readonly addresses: Readonly<Record<keyof T, number>>;
}

type Kinds<T> = Readonly<Record<keyof T, string>>;

/**
 * Bytes that records and everything they hold take up, from their first address on.
 *
 * @param kinds  name of each record's interface in STEP_RECORDS
 */
export function memoryNeeded<T extends Record<string, object>>(
  records: T,
  kinds: Kinds<T>,
): number {
  return new Layout(null).moveAll(records, kinds).end;
}

/**
 * Copies of records whose typed arrays are views of one buffer, in the layout that the compiled step
 * reads; what it does not read is handed on as it is.
 *
 * The buffer must not be resized afterwards, because views of it would lose it.
 *
 * @param buffer  at least as long as memoryNeeded says
 */
export function moveToMemory<T extends Record<string, object>>(
  records: T,
  kinds: Kinds<T>,
  buffer: ArrayBuffer,
): Moved<T> {
  return new Layout(buffer).moveAll(records, kinds).moved;
}

type Numbers = Float64Array | Int32Array | Uint8Array;

/** Hands out addresses one after another, and copies to them if there is a buffer. */
class Layout {
  private end = FIRST_ADDRESS;
  /** Addresses and copies of what was met before: arrays and records that several hold stay one. */
  private readonly known = new Map<object, { readonly at: number; readonly copy: object }>();
  private readonly buffer: ArrayBuffer | null;

  constructor(buffer: ArrayBuffer | null) {
    this.buffer = buffer;
  }

  moveAll<T extends Record<string, object>>(records: T, kinds: Kinds<T>) {
    const moved = Object.entries(records).map(
      ([name, record]) => [name, this.record(record, kinds[name]!)] as const,
    );
    return {
      end: this.end,
      moved: {
        records: Object.fromEntries(moved.map(([name, { copy }]) => [name, copy])) as T,
        addresses: Object.fromEntries(moved.map(([name, { at }]) => [name, at])) as Record<
          keyof T,
          number
        >,
      },
    };
  }

  private record(record: object, kind: string): { readonly at: number; readonly copy: object } {
    const met = this.known.get(record);
    if (met !== undefined) return met;
    const { size, fields } = STEP_RECORDS[kind]!;
    const at = this.take(size);
    const values = record as Record<string, unknown>;
    const copy: Record<string, unknown> = { ...values };
    const view = this.buffer === null ? null : new DataView(this.buffer, at, size);
    for (const [field, type, offset] of fields) {
      const value = values[field];
      if (type === 'f64') view?.setFloat64(offset, value as number, true);
      else if (type === 'i32') view?.setInt32(offset, value as number, true);
      else {
        const part = VIEWS.has(type)
          ? this.numbers(value as Numbers)
          : this.record(value as object, type);
        view?.setUint32(offset, part.at, true);
        copy[field] = part.copy;
      }
    }
    const done = { at, copy };
    this.known.set(record, done);
    return done;
  }

  private numbers(array: Numbers): { readonly at: number; readonly copy: Numbers } {
    const met = this.known.get(array);
    if (met !== undefined) return met as { at: number; copy: Numbers };
    const at = this.take(array.byteLength);
    let copy = array;
    if (this.buffer !== null) {
      copy = viewLike(array, this.buffer, at);
      copy.set(array);
    }
    const done = { at, copy };
    this.known.set(array, done);
    return done;
  }

  private take(bytes: number): number {
    const at = this.end;
    this.end = at + 8 * Math.ceil(bytes / 8);
    return at;
  }
}

function viewLike(array: Numbers, buffer: ArrayBuffer, at: number): Numbers {
  if (array instanceof Float64Array) return new Float64Array(buffer, at, array.length);
  if (array instanceof Int32Array) return new Int32Array(buffer, at, array.length);
  return new Uint8Array(buffer, at, array.length);
}

/** What typed arrays are called in STEP_RECORDS. */
const VIEWS: ReadonlySet<string> = new Set(['Reals', 'Integers', 'Bytes']);
/** The module keeps what lies below to itself. [B] */
const FIRST_ADDRESS = 65_536;
