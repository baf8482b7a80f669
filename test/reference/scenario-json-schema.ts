import { z } from 'zod';
import { scenarioModel } from '../../src/scenario/model/scenario-model.ts';
import { ownSpecies } from '../../src/species/own-species.ts';
import { described, type SchemaNode } from './described-schema.ts';
import { patchOf } from './patch-schema.ts';

/**
 * The scenario model as a JSON Schema (draft 7), so that editors complete and explain the file. Where
 * species have keys, it takes those that a file names itself, too; and what a plan changes has the keys
 * of the file.
 */
export function scenarioJsonSchema(): Record<string, unknown> {
  const any = ownSpecies({ name: ANY, label: 'A species of your own', unit: 'units/m3' });
  const schema = z.toJSONSchema(scenarioModel([any]), { io: 'input', target: 'draft-7' });
  return { ...withChanges(described(opened(schema) as SchemaNode)) };
}

/** The schema with what plans may change spelt out. */
function withChanges(schema: SchemaNode): SchemaNode {
  const { plans, ...changeable } = schema.properties!;
  const plan = plans!.additionalProperties as SchemaNode;
  const { propertyNames: _any, ...change } = plan.properties!['change'] as SchemaNode & {
    propertyNames?: unknown;
  };
  const { properties } = patchOf({ properties: changeable });
  const spelt = { ...change, properties: properties!, additionalProperties: false };
  return {
    ...schema,
    properties: {
      ...changeable,
      plans: {
        ...plans!,
        additionalProperties: { ...plan, properties: { ...plan.properties, change: spelt } },
      },
    },
  };
}

/** Keys and words for a species of any name become keys and words of any name. */
function opened(node: unknown): unknown {
  if (Array.isArray(node)) return node.map(opened);
  if (typeof node !== 'object' || node === null) return node;
  const { properties = {}, enum: words = [] } = node as { properties?: object; enum?: unknown[] };
  const other = (properties as Record<string, unknown>)[ANY];
  const entries = Object.entries(node).flatMap(([key, part]): [string, unknown][] => {
    if (key === 'eg' || key === 'usual') return [[key, part]];
    if (key === 'additionalProperties' && other !== undefined) return [[key, opened(other)]];
    if (key === 'required') return onlyKnown(part as readonly string[]);
    if (key === 'type' && words.includes(ANY)) return [];
    if (key !== 'enum' || !words.includes(ANY)) return [[key, opened(part)]];
    const known = words.filter((word) => word !== ANY);
    return [['anyOf', [{ type: 'string', enum: known }, { type: 'string' }]]];
  });
  return Object.fromEntries(entries.filter(([key]) => key !== ANY));
}

const onlyKnown = (required: readonly string[]): [string, unknown][] => {
  const known = required.filter((key) => key !== ANY);
  return known.length === 0 ? [] : [['required', known]];
};

const ANY = '*';
