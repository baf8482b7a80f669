import { isoDay } from '../../units/iso-time.ts';
import { toLocal } from '../../units/local-clock.ts';
import { type Document, documentFrame } from './document-frame.ts';
import { type Html, html } from './html.ts';
import { keepNames } from './keep-names.ts';
import type { ReportInput } from './report-input.ts';
import { INVENTED, type Section, sectionLinks, sectionMarkup } from './section.ts';
import { STYLES } from './styles.ts';

/**
 * The page around its sections. Its security policy lets nothing in from anywhere: one style and its
 * scripts, each by its hash, no code made of text, no network but the server of a page that is served.
 *
 * @param held  data for the script
 */
export function pageFrame(
  { study, date, version, script, sha256, weather, living, served }: ReportInput,
  sections: readonly Section[],
  held: Html,
): Document {
  const { scenario } = study;
  const title = questionOf(study);
  const { measures, prepared } = study.options[0]!;
  const { period } = measures;
  const names = study.options.map(({ name }) => name);
  const begins = toLocal(prepared.household.clock, Date.parse(period.from) / 1000);
  const body = html`<a class="skip" href="#answer">Skip to the answer</a>
<header>
<h1>${title}</h1>
<p class="meta"><b>${scenario.title}.</b> ${Math.round(period.hours / 24)} days from ${isoDay(begins)}, simulated hour by hour; weather: ${weather.title}.</p>
${scenario.invented ? INVENTED : null}
${sectionLinks(sections)}
</header>
<main>${served?.standing ?? null}${keepNames(html`${sections.map(sectionMarkup)}`, names)}</main>
<footer><p>Made with roombalance ${version} on ${date}. It is free software and sells nothing.</p>${served === undefined ? null : html`<p>${served.fuller}</p>`}</footer>
${held}`;
  const permits = {
    styles: STYLES + (served?.styles ?? ''),
    scripts: served === undefined ? [script] : [script, served.script],
    ...{ runs: living !== null, follows: served !== undefined, sends: false },
  };
  return documentFrame(html`${title} ${scenario.title}`, body, permits, sha256);
}

const questionOf = ({ purchase }: ReportInput['study']): string =>
  purchase?.about.question ?? 'Which plan costs and does what?';
