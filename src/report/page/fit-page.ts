import type { HomeFit } from '../../fit/fit-home.ts';
import { figureText } from '../../units/figure-text.ts';
import { withMinus } from '../../units/minus-sign.ts';
import { foreseenChart } from '../charts/foreseen-chart.ts';
import { GUESS_WORDS, unitWords } from '../foreseen-words.ts';
import { roughText } from '../rough-text.ts';
import {
  FORESEEN,
  fitExtent,
  fitFinding,
  fitWords,
  toldHead,
  withParts,
} from '../tables/fit-words.ts';
import { rangeDecimals } from '../tables/range-decimals.ts';
import { rangesRestOn } from '../tables/ranges-rest-on.ts';
import { type Drawable, drawTwice } from './draw-twice.ts';
import { figure } from './figure.ts';
import { figureTable } from './figure-table.ts';
import { type Html, html } from './html.ts';
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
  const rest = rangesRestOn(fit);
  const others = words.filter(({ head }) => head !== toldHead(fit) && head !== FORESEEN);
  const said: Section = {
    id: 'told',
    title: fit.reliable ? toldHead(fit) : 'What the fit came to',
    body: html`${toldTable(fit)}
${rest === null ? null : html`<p>${rest}</p>`}
${seen.length === 0 ? null : foreseenTable(seen)}
<div class="columns">${others.map(({ head, items }) => html`<div><h3>${head}</h3>${list(items)}</div>`)}</div>`,
  };
  const shown: Section = {
    id: 'withheld',
    title: 'Withheld days: foreseen, logged and guessed',
    body: html`<p>The fit did not see these days. The shaded range should hold 95 of 100 logged hours.</p>
<div class="grid">${drawn.map(figure)}</div>`,
  };
  return stillPage({
    title: `${fit.title}: ${fit.reliable ? 'what its log tells' : 'a fit that is not to be relied on'}`,
    about: fitExtent(fit),
    finding: fitFinding(fit),
    sections: drawn.length === 0 ? [said] : [said, shown],
    ...own,
  });
}

/** What the log tells by itself, with the range of each and what was taken before. */
function toldTable(fit: HomeFit): Html | null {
  const reliable = fit.reliable;
  const told = fit.stages
    .flatMap(({ fit: { parameters } }) => parameters)
    .filter((parameter) => parameter.told === 'yes' || (!reliable && parameter.told !== 'no'));
  if (told.length === 0) return null;
  return figureTable({
    caption: reliable
      ? 'Values, each with the range in which nineteen of twenty would lie'
      : toldHead(fit),
    heads: ['what', 'fitted', ...(reliable ? ['low', 'high'] : []), 'was assumed', 'unit'],
    words: [reliable ? 5 : 3],
    rows: told.map(({ adjustable, ...fitted }) => [
      withParts(adjustable),
      html`<b>${withMinus(figureText(fitted.value, rangeDecimals(fitted)))}</b>`,
      ...(reliable
        ? [fitted.low, fitted.high].map((end) => withMinus(figureText(end, rangeDecimals(fitted))))
        : []),
      adjustable.before === adjustable.value ? figureText(adjustable.value) : 'nothing',
      adjustable.unit.replace(/^\//, '1/'),
    ]),
  });
}

/** How far off the withheld hours were foreseen, beside the guess that came nearest. */
const foreseenTable = (seen: HomeFit['foreseen']): Html =>
  figureTable({
    caption: `${FORESEEN}: how far off it was as a rule, beside the guess that came nearest`,
    heads: [
      ...['what', 'foreseen from', 'off by', 'guess', 'unit', 'within the stated range [%]'],
      'the guess',
    ],
    words: [1, 4, 6],
    rows: seen.map(({ channel, from, judgement: { rmse, guesses, bestGuess, skill, inside } }) => [
      `${channel.room}: ${channel.name}`,
      from === 'weather alone' ? 'the weather alone' : 'the weather and logged temperatures',
      html`<b class="${skill > 0 ? 'better' : 'worse'}">${roughText(rmse)} ${skill > 0 ? '▾' : '▴'}</b><span class="heard"> (${skill > 0 ? 'better' : 'no better'} than the guess)</span>`,
      roughText(guesses[bestGuess]),
      unitWords(channel.unit).trim(),
      figureText(100 * inside, 0),
      GUESS_WORDS[bestGuess],
    ]),
  });
