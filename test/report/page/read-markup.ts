/** An element of a page as it was written, with its children in order. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly (Element | string)[];
}

/**
 * A strict reader of markup, for tests: it refuses whatever a browser would have to guess at, such
 * as a bare "<", an attribute without double quotes, an element that is not closed or an id twice.
 *
 * @returns an element without a name around everything
 */
export function readMarkup(markup: string): Element {
  interface Open extends Element {
    readonly children: (Element | string)[];
  }
  const root: Open = { name: '', attributes: {}, children: [] };
  const open: Open[] = [root];
  const ids = new Set<string>();
  let at = 0;
  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(markup);
    if (found !== null) at += found[0].length;
    return found;
  };
  const fail = (why: string): never => {
    throw new Error(`${why} at ${JSON.stringify(markup.slice(at, at + 60))}`);
  };

  take(/<!doctype html>\n/y);
  while (at < markup.length) {
    const inside = open.at(-1)!;
    const text = RAW.has(inside.name) ? take(RAW_TEXT.get(inside.name)!) : take(/[^<]+/y);
    if (text !== null) {
      inside.children.push(RAW.has(inside.name) ? text[0] : unescaped(text[0]));
      continue;
    }
    const close = take(/<\/([A-Za-z][A-Za-z0-9]*)>/y);
    if (close !== null) {
      if (open.pop()!.name !== close[1]) fail(`</${close[1]}> closes <${inside.name}>`);
      continue;
    }
    const begin = take(/<([A-Za-z][A-Za-z0-9]*)/y) ?? fail('no tag');
    const attributes: Record<string, string> = {};
    for (;;) {
      const attribute = take(/\s+([A-Za-z_:][\w:.-]*)(?:="([^"<]*)")?/y);
      if (attribute === null) break;
      const [, name = '', value = ''] = attribute;
      if (Object.hasOwn(attributes, name)) fail(`${name} twice`);
      attributes[name] = unescaped(value);
    }
    const { id } = attributes;
    if (id !== undefined && ids.has(id)) fail(`id ${id} twice`);
    if (id !== undefined) ids.add(id);
    const end = take(/\s*(\/?)>/y) ?? fail(`<${begin[1]} does not end`);
    const element: Open = { name: begin[1]!, attributes, children: [] };
    inside.children.push(element);
    if (end[1] === '' && !VOID.has(element.name)) open.push(element);
  }
  if (open.length > 1) fail(`<${open.at(-1)!.name}> is not closed`);
  return root;
}

/** Everything of a name within an element, in order; of every name where none is given. */
export function all(element: Element, name?: string): Element[] {
  const found: Element[] = [];
  const visit = ({ children }: Element): void => {
    for (const child of children) {
      if (typeof child === 'string') continue;
      if (name === undefined || child.name === name) found.push(child);
      visit(child);
    }
  };
  visit(element);
  return found;
}

/** The one element of an id. */
export function byId(element: Element, id: string): Element {
  const found = all(element).find(({ attributes }) => attributes['id'] === id);
  if (found === undefined) throw new Error(`nothing of id ${id}`);
  return found;
}

/** What a reader reads. */
export const textOf = (node: Element | string): string =>
  typeof node === 'string' ? node : node.children.map(textOf).join('');

/** Rows of words of the table with a caption, the heads first. */
export function tableOf(element: Element, caption: RegExp): string[][] {
  const table = all(element, 'table').find((one) => caption.test(textOf(all(one, 'caption')[0]!)));
  if (table === undefined) throw new Error(`no table ${caption}`);
  return all(table, 'tr').map((row) =>
    row.children.filter((cell) => typeof cell !== 'string').map((cell) => textOf(cell)),
  );
}

function unescaped(text: string): string {
  return text.replaceAll(/&(\w+;|#\d+;)?/g, (reference) => {
    const character = CHARACTERS[reference];
    if (character === undefined) throw new Error(`"${reference}" in ${JSON.stringify(text)}`);
    return character;
  });
}

const CHARACTERS: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
};
const RAW: ReadonlySet<string> = new Set(['style', 'script']);
const RAW_TEXT: ReadonlyMap<string, RegExp> = new Map(
  [...RAW].map((name) => [name, new RegExp(`(?:(?!</${name})[^])+`, 'y')]),
);
const VOID: ReadonlySet<string> = new Set(['meta', 'br', 'link', 'img', 'input', 'hr']);
