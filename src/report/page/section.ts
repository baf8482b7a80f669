import { type Html, type HtmlPart, html } from './html.ts';

/** A part of the page that the list of contents leads to. */
export interface Section {
  readonly id: string;
  readonly title: string;
  readonly body: Html;
}

export const sectionMarkup = ({ id, title, body }: Section): Html => html`
<section id="${id}" aria-labelledby="${id}-title">
<h2 id="${id}-title">${title}</h2>
${body}
</section>`;

/** Something to be opened. */
export const details = (summary: string, body: HtmlPart): Html =>
  html`<details><summary>${summary}</summary>${body}</details>`;

export const list = (items: readonly HtmlPart[]): Html =>
  html`<ul>${items.map((item) => html`<li>${item}</li>`)}</ul>`;

/** Lines of which those that begin with "- " are items of a list. */
export function paragraphsAndLists(lines: readonly string[]): Html {
  const parts: { readonly item: boolean; readonly texts: string[] }[] = [];
  for (const line of lines) {
    const item = line.startsWith('- ');
    const last = parts.at(-1);
    if (item && last?.item) last.texts.push(line.slice(2));
    else parts.push({ item, texts: [item ? line.slice(2) : line] });
  }
  return html`${parts.map(({ item, texts }) => (item ? list(texts) : html`<p>${texts}</p>`))}`;
}
