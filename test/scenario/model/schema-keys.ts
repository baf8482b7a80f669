import type { SchemaNode } from '../../reference/described-schema.ts';

/** A key of the scenario: where it stands, with `*` for names and `[]` for items of lists. */
export interface SchemaKey {
  readonly path: string;
  readonly name: string;
  readonly field: SchemaNode;
  readonly must: boolean;
}

/**
 * Every place of a key in the schema, those within its several forms included; but not those within
 * what a plan changes, which are the keys of the file again.
 */
export function keysOf(node: SchemaNode, path = ''): SchemaKey[] {
  if (path === CHANGE) return [];
  const { properties = {}, required = [] } = node;
  const here = Object.entries(properties).map(([name, field]) => ({
    ...{ path: `${path}/${name}`, name, field },
    must: required.includes(name),
  }));
  const within = partsOf(node, path).flatMap(([part, at]) => keysOf(part, at));
  return [...here, ...within];
}

/** What lies directly within a node, and where. */
function partsOf(node: SchemaNode, path: string): readonly (readonly [SchemaNode, string])[] {
  const { properties = {}, anyOf = [], oneOf = [], items, additionalProperties: more } = node;
  return [
    ...Object.entries(properties).map(([name, part]) => [part, `${path}/${name}`] as const),
    ...[...anyOf, ...oneOf].map((part, k) => [part, `${path}(${k + 1})`] as const),
    ...(items === undefined
      ? []
      : [items].flat().map((part) => [part as SchemaNode, `${path}[]`] as const)),
    ...(typeof more === 'object' ? [[more, `${path}/*`] as const] : []),
  ];
}

/** Where plans say what they change. */
const CHANGE = '/plans/*/change';
