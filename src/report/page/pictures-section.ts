import { toLocal } from '../../units/local-clock.ts';
import { dateText } from '../charts/in-words.ts';
import type { DrawnTwice } from './figure.ts';
import { figure } from './figure.ts';
import { type Html, html } from './html.ts';
import type { PictureData } from './picture-data.ts';
import { type Choice, MOST_LINES, weekStarts } from './pictures.ts';
import type { Section } from './section.ts';

/** Pictures of rooms with what they follow, and of what is given up for what. */
export function picturesSection(
  drawn: readonly DrawnTwice[],
  data: PictureData,
  choice: Choice,
): Section {
  return {
    id: 'pictures',
    title: 'Hour by hour',
    body: html`
<p>Shaded: the band in which air counts as fine. Each picture's title says what its figures find<span class="on-screen">; the figures themselves can be opened below it</span>.</p>
${choices(data, choice)}
<div class="grid">${drawn.map(figure)}</div>`,
  };
}

/** Hidden until a script makes them do something. */
function choices(data: PictureData, choice: Choice): Html {
  const options = (names: readonly string[], chosen: number) =>
    names.map(
      (name, k) =>
        html`<option value="${k}"${k === chosen ? html` selected` : null}>${name}</option>`,
    );
  const weeks = weekStarts(data);
  const day = (h: number) => dateText(toLocal(data.clock, data.start + h * 3600));
  return html`
<form class="choices" id="choices" hidden>
<p><label for="choice-room">Room</label> <select id="choice-room">${options(
    data.rooms.map(({ name }) => name),
    choice.room,
  )}</select></p>
<p><label for="choice-plan">Plan, where a picture shows one</label> <select id="choice-plan">${options(
    data.plans.map(({ name }) => name),
    choice.plan,
  )}</select></p>
${data.plans.length < 2 ? null : lineBoxes(data, choice)}
<p><label for="choice-week">Week from</label> <select id="choice-week">${weeks.map(
    (h) =>
      html`<option value="${h}"${h === choice.week ? html` selected` : null}>${day(h)}${wordsOf(
        data,
        h,
      )}</option>`,
  )}</select></p>
<p class="told" id="choices-told" role="status"></p>
</form>`;
}

/** Plans to draw lines of; no more than can be told apart. */
const lineBoxes = ({ plans }: PictureData, { lines }: Choice): Html => html`
<fieldset><legend>Lines of at most ${MOST_LINES} plans</legend>${plans.map(
  ({ name }, k) =>
    html`<label><input type="checkbox" name="choice-line" value="${k}"${lines.includes(k) ? html` checked` : null}> ${name}</label>`,
)}</fieldset>`;

/** " (coldest)", where a week stands out. */
function wordsOf({ weeks }: PictureData, h: number): string {
  const words = weeks.filter(({ hour }) => hour === h).map(({ word }) => word);
  return words.length === 0 ? '' : ` (${words.join(', ')})`;
}
