import type * as z from 'zod';
import { pointerSteps } from './yaml/json-pointer.ts';

/**
 * Unit of the number at a place of a scenario, as the model has it: "W", "°C"; empty where it has none,
 * and for words.
 *
 * @param model    of the whole scenario
 * @param pointer  RFC 6901
 */
export function unitAt(model: z.ZodType, pointer: string): string {
  const known = KNOWN.get(model) ?? new Map<string, string>();
  KNOWN.set(model, known);
  const unit = known.get(pointer) ?? lookedUp(model, pointer);
  known.set(pointer, unit);
  return unit;
}

function lookedUp(model: z.ZodType, pointer: string): string {
  const fields = (pointerSteps(pointer) ?? []).reduce<readonly Field[]>(
    (at, step) => at.flatMap((field) => inside(field, step)),
    [model as unknown as Field],
  );
  const unit = fields.map(unitOf).find((found) => found !== undefined) ?? NO_UNIT;
  return unit === NO_UNIT ? '' : unit.startsWith(DEGREES) ? '°' : unit;
}

/** What zod tells of a field, of whatever kind. */
interface Field {
  readonly def: {
    readonly type: string;
    readonly shape?: Readonly<Record<string, Field>>;
    readonly valueType?: Field;
    readonly element?: Field;
    readonly options?: readonly Field[];
    readonly innerType?: Field;
    readonly in?: Field;
  };
  meta(): Readonly<Record<string, unknown>> | undefined;
}

/** Fields that a step leads to; of a field of several forms, those of every form. */
function inside(field: Field, step: string): readonly Field[] {
  const { shape, valueType, element } = field.def;
  if (shape !== undefined) return Object.hasOwn(shape, step) ? [shape[step]!] : [];
  if (valueType !== undefined) return [valueType];
  if (element !== undefined) return [element];
  return formsOf(field).flatMap((form) => inside(form, step));
}

function unitOf(field: Field): string | undefined {
  const unit = field.meta()?.['unit'];
  if (typeof unit === 'string') return unit;
  return formsOf(field)
    .map(unitOf)
    .find((found) => found !== undefined);
}

/** Forms that a field may have, or what stands inside where it only wraps another. */
function formsOf({ def: { options = [], innerType, in: before } }: Field): readonly Field[] {
  return [...options, innerType, before].filter((form) => form !== undefined);
}

/** What was looked up, as long as the model lives. */
const KNOWN = new WeakMap<z.ZodType, Map<string, string>>();
const NO_UNIT = '-';
const DEGREES = 'deg ';
