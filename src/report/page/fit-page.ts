import type { HomeFit } from '../../fit/fit-home.ts';
import { foreseenChart } from '../charts/foreseen-chart.ts';
import { fitOpening, fitWords } from '../tables/fit-words.ts';
import { type Drawable, drawTwice } from './draw-twice.ts';
import { figure } from './figure.ts';
import { html } from './html.ts';
import { list, type Section } from './section.ts';
import { stillPage } from './still-page.ts';

/** What a page needs besides its figures. */
export interface PageOwn {
  readonly invented: boolean;
  readonly version: string;
  readonly sha256: (text: string) => string;
}

/** What a log tells of a home in words, and pictures of the days that the fit had not seen. */
export async function fitPage(fit: HomeFit, own: PageOwn): Promise<string> {
  const { start, withheld } = fit.division;
  const seen = fit.foreseen.filter(({ judgement }) => judgement.hours > 0);
  const pictures: Drawable[] = seen.map((one, k) => ({
    id: `withheld-${k + 1}`,
    at: (width) => foreseenChart(one, start + withheld * 3600, fit.clock, width),
  }));
  const drawn = await drawTwice(pictures);
  const words = fitWords(fit);
  const said: Section = {
    id: 'told',
    title: 'In words',
    body: html`<div class="columns">${words.map(({ head, items }) => html`<h3>${head}</h3>${list(items)}`)}</div>`,
  };
  const shown: Section = {
    id: 'withheld',
    title: 'Withheld days: foreseen, logged and guessed',
    body: html`<p>The fit did not see these days. The shaded range should hold 95 of 100 logged hours.</p>
<div class="grid">${drawn.map(figure)}</div>`,
  };
  return stillPage({
    title: `${fit.title}: what its log tells`,
    about: fitOpening(fit),
    sections: drawn.length === 0 ? [said] : [said, shown],
    ...own,
  });
}
