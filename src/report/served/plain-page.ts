import { type Document, documentFrame } from '../page/document-frame.ts';
import { html } from '../page/html.ts';
import { STYLES } from '../page/styles.ts';
import { SERVED_STYLES } from './served-styles.ts';
import { type Standing, standingMarkup } from './standing.ts';

/** A page while there is nothing to show yet: what is wrong with the files. */
export function plainPage(
  file: string,
  standing: Standing,
  script: string,
  sha256: (text: string) => string,
): Document {
  const body = html`<header><h1>${file}</h1></header>
<main>${standingMarkup(standing)}
<p>Nothing can be shown of this home yet. This page follows its files: it changes as soon as they can be used.</p></main>`;
  const permits = {
    styles: STYLES + SERVED_STYLES,
    scripts: [script],
    ...{ runs: false, follows: true, sends: false },
  };
  return documentFrame(html`${file}: nothing to show yet`, body, permits, sha256);
}
