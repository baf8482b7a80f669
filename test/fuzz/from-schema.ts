import type { Chooser } from './chooser.ts';

/** A part of a JSON Schema (draft 7) as the scenario's model publishes it. */
export interface Schema {
  readonly type?: string | readonly string[];
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema;
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: boolean | Schema;
  readonly required?: readonly string[];
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
}

/**
 * A legal value of a schema, often at an end of its range; undefined for what takes a name of
 * something else or a time, which the schema alone cannot tell.
 */
export function legalValue(schema: Schema, choose: Chooser): unknown {
  if (schema.enum !== undefined) return choose.pick(schema.enum);
  if (schema.anyOf !== undefined) return legalValue(choose.pick(schema.anyOf), choose);
  const types = [schema.type].flat();
  if (types.includes('number') || types.includes('integer')) return numberOf(schema, choose);
  if (types.includes('boolean')) return choose.chance(0.5);
  if (types.includes('object') && schema.properties !== undefined) return objectOf(schema, choose);
  return undefined;
}

function objectOf({ properties = {}, required = [] }: Schema, choose: Chooser): unknown {
  const entries = Object.entries(properties).flatMap(([key, inner]) => {
    if (!required.includes(key) && !choose.chance(0.4)) return [];
    const value = legalValue(inner, choose);
    return value === undefined ? [] : [[key, value]];
  });
  return Object.fromEntries(entries);
}

function numberOf(schema: Schema, choose: Chooser): number | undefined {
  const { exclusiveMinimum: above, minimum: least = above } = schema;
  if (least === undefined) return undefined;
  const high = schema.maximum ?? least + 1000;
  const inside = above === undefined ? least : least + (high - least) * 1e-6;
  return choose.pick([inside, high, choose.between(inside, high), choose.between(inside, high)]);
}
