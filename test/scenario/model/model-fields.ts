import * as z from 'zod';
import type { SchemaNode } from '../../reference/described-schema.ts';

/** A key of the model beside what the JSON Schema says of it. */
export interface ModelField {
  readonly path: string;
  readonly model: z.ZodType;
  readonly node: SchemaNode;
}

/** Every place of a key in the model for which the schema has one. */
export function fieldsOf(model: unknown, node: SchemaNode, path = ''): ModelField[] {
  const plain = unwrapped(model);
  if (plain instanceof z.ZodObject) {
    return Object.entries(plain.shape as Record<string, z.ZodType>).flatMap(([name, field]) => {
      const inner = node.properties?.[name] ?? node.additionalProperties;
      if (typeof inner !== 'object') return [];
      const at = `${path}/${name}`;
      return [{ path: at, model: field, node: inner }, ...fieldsOf(field, inner, at)];
    });
  }
  if (plain instanceof z.ZodArray) return fieldsOf(plain.element, one(node.items), `${path}[]`);
  if (plain instanceof z.ZodRecord) {
    return fieldsOf(plain.valueType, one(node.additionalProperties), `${path}/*`);
  }
  if (!(plain instanceof z.ZodUnion)) return [];
  const nodes = node.anyOf ?? node.oneOf ?? [];
  return plain.options.flatMap((form, k) => fieldsOf(form, one(nodes[k]), `${path}(${k + 1})`));
}

function unwrapped(model: unknown): unknown {
  if (model instanceof z.ZodOptional) return unwrapped(model.unwrap());
  if (model instanceof z.ZodPipe) return unwrapped(model.def.in);
  return model;
}

const one = (node: unknown): SchemaNode =>
  typeof node === 'object' && node !== null ? (node as SchemaNode) : {};
