import { escaped, printable } from '../escaped.ts';

/** Markup that may stand in a page as it is. */
export interface Html {
  readonly markup: string;
}

export type HtmlPart = Html | string | number | null | readonly HtmlPart[];

/**
 * Markup with values in it. What is not markup already is text: it is escaped, so that nothing a
 * person typed can become an element, an attribute or a script. Attributes need double quotes.
 *
 * @example html`<p title="${name}">${list.map((one) => html`<b>${one}</b>`)}</p>`
 */
export function html(strings: TemplateStringsArray, ...parts: readonly HtmlPart[]): Html {
  return {
    markup: strings.reduce((text, string, k) => text + markupOf(parts[k - 1] ?? null) + string),
  };
}

/** Text that is markup already, such as a drawn picture. */
export const raw = (markup: string): Html => ({ markup });

function markupOf(part: HtmlPart): string {
  if (part === null) return '';
  if (typeof part === 'string') return escaped(printable(part));
  if (typeof part === 'number') return String(part);
  return 'markup' in part ? part.markup : part.map(markupOf).join('');
}
