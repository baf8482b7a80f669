import type { PlanMeasures } from '../../measures/plan-measures.ts';
import { cautionGroups } from '../cautions-of-all.ts';
import { hasOwnSection } from '../own-section.ts';
import { html } from './html.ts';
import type { ReportInput } from './report-input.ts';
import { list, type Section } from './section.ts';

/** What to be careful about, and what the runs that the answer rests on remarked themselves. */
export function cautionsSection({ study, weather }: ReportInput): Section {
  const { options, purchase } = study;
  const told = [options[0]!, ...(purchase === null ? [] : [purchase.about.option])];
  const ofWeather = weather.notes.map(({ text }) => text);
  return {
    id: 'cautions',
    title: 'Cautions',
    body: html`
<p>Nothing on this page says that anything is safe. Local rules and people licensed for the work come first.</p>
<div class="columns">${cautionGroups(options.map(({ measures }) => measures)).map(
      ({ plans, texts }) =>
        html`<div><h3>${plans === null ? 'All plans' : plans.join(', ')}</h3>${list(texts)}</div>`,
    )}
${told.map(({ name, measures }) => {
  const remarks = remarksOf(measures).filter((text) => !ofWeather.includes(text));
  return remarks.length === 0 ? null : html`<div><h3>Remarks on ${name}</h3>${list(remarks)}</div>`;
})}</div>
${ofWeather.length === 0 ? null : html`<h3>Remarks on the weather</h3>${list(ofWeather)}`}`,
  };
}

const remarksOf = ({ notices }: PlanMeasures): string[] =>
  notices.filter(({ id }) => !hasOwnSection(id)).map(({ text }) => text);
