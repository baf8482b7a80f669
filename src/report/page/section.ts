import type { Answer } from '../../studies/compare/answer-in-words.ts';
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

/** What a comparison comes to, after its first sentence; each list under its opening. */
export const answerMarkup = ({ sentences, trades }: Answer): Html => html`
${sentences.length > 1 ? html`<p>${sentences.slice(1).join(' ')}</p>` : null}
${trades.map(({ opening, trades: items }) => html`<p>${opening}:</p>${list(items)}`)}`;

/** Links to the sections of a page. */
export const sectionLinks = (sections: readonly Section[]): Html =>
  html`<nav aria-label="Sections"><ul>${sections.map(
    ({ id, title }) => html`<li><a href="#${id}">${title}</a></li>`,
  )}</ul></nav>`;

/** What must stand at the top where a home is invented. */
export const INVENTED: Html = html`<p class="invented">Invented demonstration: this home, its people and its place do not exist.</p>`;
