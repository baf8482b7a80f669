import { type Html, html, raw } from '../page/html.ts';
import { list } from '../page/section.ts';

/** How a served page stands to the files that it was made from. */
export interface Standing {
  /** Counts changes of the files. */
  readonly edition: number;
  /** Counts pages; 0 while there is none. */
  readonly page: number;
  /** The edition that the page is of. */
  readonly pageOf: number;
  readonly state: 'good' | 'running' | 'wrong';
  /** What is said of it. */
  readonly words: string;
  /** What is wrong with the files, each with its place. */
  readonly problems: readonly string[];
}

/** A place that is told aloud when it changes; a page knows by it which one it is. */
export const standingMarkup = (standing: Standing): Html => html`
<div id="standing" class="standing ${standing.state}" role="status" data-page="${standing.page}" data-edition="${standing.edition}">${standingBody(standing)}</div>`;

export const standingBody = ({ words, problems }: Standing): Html =>
  html`<p>${words}</p>${problems.length === 0 ? null : list(problems)}`;

/** Stands in a page where its standing goes when it is sent. What people typed is escaped, so it is there once. */
export const STANDING = raw('<!--standing-->');

export const withStanding = (page: string, standing: Standing): string =>
  page.replace(STANDING.markup, () => standingMarkup(standing).markup);
