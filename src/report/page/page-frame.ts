import { type Html, html, raw } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { type Section, sectionMarkup } from './section.ts';
import { STYLES } from './styles.ts';

/**
 * The page around its sections. Its security policy lets nothing in from anywhere: one style and one
 * script, each by its hash, no network, no code made of text.
 *
 * @param held  data for the script
 */
export function pageFrame(
  { study, date, version, script, sha256, weather, living }: ReportInput,
  sections: readonly Section[],
  held: Html,
): string {
  const { scenario } = study;
  const title = questionOf(study);
  const { period } = study.options[0]!.measures;
  const policy =
    `default-src 'none'; style-src 'sha256-${sha256(STYLES)}'; script-src 'sha256-${sha256(script)}'` +
    // The engine runs in a worker made of what the page holds, as WebAssembly.
    `${living === null ? '' : " 'wasm-unsafe-eval'; worker-src blob:"}; ` +
    `base-uri 'none'; form-action 'none'`;
  return html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${title} ${scenario.title}</title>
<style>${raw(STYLES)}</style>
</head>
<body>
<a class="skip" href="#answer">Skip to the answer</a>
<header>
<h1>${title}</h1>
<p class="meta"><b>${scenario.title}.</b> ${Math.round(period.hours / 24)} days from ${period.from.slice(0, 10)}, simulated hour by hour; weather: ${weather.title}.</p>
${scenario.invented ? html`<p class="invented">Invented demonstration: this home, its people and its place do not exist.</p>` : null}
<nav aria-label="Sections"><ul>${sections.map(
    ({ id, title: name }) => html`<li><a href="#${id}">${name}</a></li>`,
  )}</ul></nav>
</header>
<main>${sections.map(sectionMarkup)}</main>
<footer><p>Made with roombalance ${version} on ${date}. It is free software and sells nothing.</p></footer>
${held}
<script>${raw(script)}</script>
</body>
</html>
`.markup;
}

const questionOf = ({ purchase }: ReportInput['study']): string =>
  purchase?.about.question ?? 'Which plan costs and does what?';
