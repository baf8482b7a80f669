/**
 * A part of a JSON Schema (draft 7), as far as the scenario's uses it, and what the model tells of it
 * besides: `eg`, `usual` and `otherwise` (see `Shown` in src/scenario/model/fields.ts).
 */
export interface SchemaNode {
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly default?: unknown;
  readonly examples?: readonly unknown[];
  /** Of its numbers, "-" for none: an annotation that editors pass over. */
  readonly unit?: string;
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly anyOf?: readonly SchemaNode[];
  readonly oneOf?: readonly SchemaNode[];
  readonly items?: SchemaNode | readonly SchemaNode[];
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly additionalProperties?: boolean | SchemaNode;
  readonly required?: readonly string[];
  readonly eg?: unknown;
  readonly usual?: unknown;
  readonly otherwise?: string;
}

/**
 * A schema in which each part says all that an editor shows when somebody points at it: a sentence
 * with the unit and range of its numbers and what is taken where the key is left out; an example.
 *
 * It stands beside the property itself, because some editors do not follow references, and again in
 * each of its forms, because some show that of the form that is written there.
 */
export function described(node: SchemaNode, must = false): SchemaNode {
  const inner = withParts(
    node,
    (part) => described(part),
    (key, field) => asProperty(described(field, node.required?.includes(key) === true)),
  );
  const { eg: _eg, usual, otherwise, description, ...rest } = inner;
  const example = exampleOf(inner);
  return {
    ...rest,
    ...(description !== undefined && {
      description: `${description}${unitWords(inner)}${absence(inner, must)}`,
    }),
    ...(usual !== undefined && otherwise === undefined && { default: usual }),
    ...(example !== undefined && { examples: [example] }),
  };
}

/** A property whose forms say what the property is, and leave the example to it. */
function asProperty(field: SchemaNode): SchemaNode {
  const { anyOf, oneOf, description = '' } = field;
  const form = ({ examples: _examples, description: own, ...rest }: SchemaNode): SchemaNode => ({
    ...rest,
    description: own === undefined ? description : `${description}; here, ${lowered(own)}`,
  });
  return {
    ...field,
    ...(anyOf && { anyOf: anyOf.map(form) }),
    ...(oneOf && { oneOf: oneOf.map(form) }),
  };
}

/** A sentence that goes on behind another; names and formulas keep their capitals. */
export const lowered = (text: string): string =>
  /^[A-Z][a-z]/.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;

function withParts(
  node: SchemaNode,
  part: (part: SchemaNode) => SchemaNode,
  property: (key: string, field: SchemaNode) => SchemaNode,
): SchemaNode {
  const { properties, anyOf, oneOf, items, additionalProperties: more } = node;
  const entries = Object.entries(properties ?? {});
  return {
    ...node,
    ...(properties && {
      properties: Object.fromEntries(entries.map(([key, field]) => [key, property(key, field)])),
    }),
    ...(anyOf && { anyOf: anyOf.map(part) }),
    ...(oneOf && { oneOf: oneOf.map(part) }),
    ...(items && { items: isList(items) ? items.map(part) : part(items) }),
    ...(typeof more === 'object' && { additionalProperties: part(more) }),
  };
}

/** " [m from 0 to 3]", of the field or of the first of its forms that is a number. */
function unitWords(node: SchemaNode): string {
  const { unit, ...limits } = measured(node) ?? {};
  if (unit === undefined) return '';
  const words = [unit === '-' ? 'no unit' : unit, rangeWords(limits)].filter((word) => word !== '');
  return ` [${words.join(', ')}]`;
}

const measured = (node: SchemaNode): SchemaNode | undefined =>
  node.unit === undefined ? node.anyOf?.find(({ unit }) => unit !== undefined) : node;

function rangeWords({ exclusiveMinimum: above, minimum: min, maximum: max }: SchemaNode): string {
  if (above !== undefined)
    return max === undefined ? `above ${above}` : `above ${above}, up to ${max}`;
  if (min !== undefined) return max === undefined ? `${min} or more` : `${min} to ${max}`;
  return max === undefined ? '' : `up to ${max}`;
}

/** "; where not given, 2.4". */
function absence({ usual, otherwise }: SchemaNode, must: boolean): string {
  const assumed = otherwise ?? (usual === undefined ? null : wordsOf(usual));
  if (assumed !== null) return `; where not given, ${assumed}`;
  return must ? '; must be given' : '';
}

const wordsOf = (value: unknown): string =>
  typeof value === 'boolean' ? (value ? 'yes' : 'no') : String(value);

/** As told; else the usual value, the first choice, or what its own parts have for examples. */
function exampleOf(node: SchemaNode): unknown {
  const { eg, usual, anyOf, oneOf, items, properties, required = [], type } = node;
  if (eg !== undefined) return eg;
  if (usual !== undefined) return withUnit(usual, node);
  if (node.const !== undefined) return node.const;
  if (node.enum !== undefined) return node.enum[0];
  if (type === 'boolean') return true;
  const form = (anyOf ?? oneOf)?.find(({ examples }) => examples !== undefined);
  if (form !== undefined) return form.examples?.[0];
  if (isList(items)) return items.map(({ examples }) => examples?.[0]);
  if (items?.examples !== undefined) return items.examples;
  if (properties === undefined) return undefined;
  const keys = required.length === 0 ? Object.keys(properties).slice(0, 1) : required;
  return Object.fromEntries(keys.map((key) => [key, properties[key]?.examples?.[0]]));
}

/** A number as somebody would write it where text with a unit may stand: "2.4 m". */
function withUnit(value: unknown, { unit, type }: SchemaNode): unknown {
  const bare = unit === undefined || unit === '-' || !isList(type) || typeof value !== 'number';
  return bare ? value : `${value} ${unit}`;
}

const isList = <T, U>(value: T | readonly U[] | undefined): value is readonly U[] =>
  Array.isArray(value);
