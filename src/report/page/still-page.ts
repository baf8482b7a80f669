import { documentFrame } from './document-frame.ts';
import { html } from './html.ts';
import type { PagePermits } from './page-policy.ts';
import { INVENTED, type Section, sectionLinks, sectionMarkup } from './section.ts';
import { STYLES } from './styles.ts';

/** What goes round the sections of a page without a script. */
export interface StillPage {
  readonly title: string;
  /** What the page is about, in a sentence or two. */
  readonly about: string;
  /** What it finds, in a sentence or two. */
  readonly finding: string;
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
  const { title, about, finding, invented, sections, version, sha256 } = page;
  const body = html`<a class="skip" href="#${sections[0]?.id ?? ''}">Skip to the words</a>
<header>
<h1>${title}</h1>
<p class="meta">${about}</p>
${invented ? INVENTED : null}
${sectionLinks(sections)}
</header>
<main><p class="lead">${finding}</p>
${sections.map(sectionMarkup)}</main>
<footer><p>Made with roombalance ${version}. It is free software and sells nothing.</p></footer>`;
  return documentFrame(html`${title}`, body, NOTHING_RUNS, sha256).page;
}

const NOTHING_RUNS: PagePermits = {
  ...{ styles: STYLES, scripts: [], runs: false, follows: false, sends: false },
};
