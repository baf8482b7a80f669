import { type Html, html, raw } from './html.ts';
import { type Section, sectionMarkup } from './section.ts';
import { STYLES } from './styles.ts';

/** What goes round the sections of a page without a script. */
export interface StillPage {
  readonly title: string;
  /** What the page is about, in a sentence or two. */
  readonly about: string;
  /** Whether its home is invented. */
  readonly invented: boolean;
  readonly sections: readonly Section[];
  readonly version: string;
  readonly sha256: (text: string) => string;
}

/**
 * A page of words and pictures that runs nothing. Its security policy lets in one style, by its hash,
 * and nothing else.
 */
export function stillPage(page: StillPage): string {
  const { title, about, invented, sections, version, sha256 } = page;
  const policy = `default-src 'none'; style-src 'sha256-${sha256(STYLES)}'; base-uri 'none'; form-action 'none'`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${title}</title>
<style>${raw(STYLES)}</style>
</head>
<body>
<a class="skip" href="#${sections[0]?.id ?? ''}">Skip to the words</a>
<header>
<h1>${title}</h1>
<p class="meta">${about}</p>
${invented ? INVENTED : null}
<nav aria-label="Sections"><ul>${sections.map(
    ({ id, title: name }) => html`<li><a href="#${id}">${name}</a></li>`,
  )}</ul></nav>
</header>
<main>${sections.map(sectionMarkup)}</main>
<footer><p>Made with roombalance ${version}. It is free software and sells nothing.</p></footer>
</body>
</html>
`.markup;
}

const INVENTED: Html = html`<p class="invented">Invented demonstration: this home, its people and its place do not exist.</p>`;
