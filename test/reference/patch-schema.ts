import { lowered, type SchemaNode } from './described-schema.ts';

/**
 * What may change a value of a schema: any part of it, where null removes a key, a mapping is changed
 * key by key, and a list is replaced whole (a merge patch, RFC 7386) or edited (list-edit.ts).
 *
 * Nothing has to be given in it, and what is not given stays as it was. No examples are repeated:
 * those of the value itself tell the same.
 */
export function patchOf(node: SchemaNode): SchemaNode {
  const { required: _required, ...rest } = withoutAbsence(node);
  const { properties, additionalProperties: more, anyOf, oneOf } = rest;
  const { oneOf: _one, ...kept } = rest;
  if (node.type === 'array') return listChange(node);
  const forms = anyOf ?? oneOf;
  return {
    ...kept,
    ...(properties && {
      properties: Object.fromEntries(
        Object.entries(properties).map(([key, field]) => [key, removable(patchOf(field))]),
      ),
    }),
    ...(typeof more === 'object' && { additionalProperties: removable(patchOf(more)) }),
    // Forms that differ in what must be given no longer exclude each other.
    ...(forms && { anyOf: forms.map(patchOf) }),
  };
}

/** A whole list, or what is added to it, changed of its items by their names, and dropped. */
function listChange(list: SchemaNode): SchemaNode {
  const whole = withoutAbsence(list);
  const { items, description = '' } = whole;
  if (items === undefined || Array.isArray(items)) return whole;
  const edit: SchemaNode = {
    type: 'object',
    properties: {
      add: {
        ...whole,
        description: `Items put at the end: ${lowered(description)}`,
      },
      change: {
        type: 'object',
        additionalProperties: { type: 'object' },
        description: 'What changes of single items, by their names',
      },
      drop: { type: 'array', items: { type: 'string' }, description: 'Names of items that go' },
    },
    additionalProperties: false,
    description,
  };
  return { description, anyOf: [whole, edit] };
}

function withoutAbsence({ examples: _examples, default: _usual, ...node }: SchemaNode): SchemaNode {
  const { description } = node;
  return {
    ...node,
    ...(description !== undefined && { description: description.replace(ABSENCE, '') }),
  };
}

/** What may also be null. */
function removable(node: SchemaNode): SchemaNode {
  const { type, enum: words, const: only, anyOf, description } = node;
  const nothing = { type: 'null', ...(description !== undefined && { description }) };
  if (anyOf !== undefined) return { ...node, anyOf: [...anyOf, nothing] };
  if (words !== undefined || only !== undefined || type === undefined) {
    return { ...(description !== undefined && { description }), anyOf: [node, nothing] };
  }
  return { ...node, type: [...(typeof type === 'string' ? [type] : type), 'null'] };
}

/** The end of a description that says what holds where its key is left out of the file. */
const ABSENCE = /; (must be given|where not given, .*?)(?=; here, |$)/;
