import type { QuestionAnswer } from '../../studies/answers/question-answers.ts';
import type { ReportStudy } from '../../studies/report-study.ts';
import { type Html, html } from './html.ts';

/**
 * What the scenario's own plans ask: a line each with its answer in short, which opens for what carries
 * it and is printed whole. Of what leads the page there is no more than a word.
 */
export function askedMarkup({ asked, purchase }: ReportStudy): Html | null {
  const { surprise, caveat } = asked;
  // Where nothing is asked about, the first question leads the page, caveat and all.
  const questions = purchase === null ? asked.questions.slice(1) : asked.questions;
  const beyond = surprise === '' ? null : html`<p><b>Surprising:</b> <span>${surprise}</span></p>`;
  if (questions.length === 0) {
    return beyond === null ? null : html`<div class="asked">${beyond}</div>`;
  }
  const lead = purchase?.decision.sentences[0];
  const rows = questions.map((question) =>
    question.inShort === lead ? leading(question) : opening(question),
  );
  return html`<h3>What ${purchase === null ? 'else ' : ''}the plans ask</h3>
${caveat === '' || purchase === null ? null : html`<p>${caveat}</p>`}
<div class="asked">${rows}${beyond}</div>
<h3>All plans</h3>`;
}

/** What carries an answer, without what is said of it in short. */
export function carriedBy({ first, inShort, sentences }: QuestionAnswer): string[] {
  const [lead = '', ...rest] = sentences;
  const begins = [spoken(first, inShort), first].find((words) => lead.startsWith(words)) ?? '';
  return [lead.slice(begins.length).trim(), ...rest].filter((words) => words !== '');
}

const leading = ({ title, inShort }: QuestionAnswer): Html =>
  html`<p><b>${title}</b> <span>${inShort} <a href="#answer">More above</a>.</span></p>`;

function opening(question: QuestionAnswer): Html {
  const { title, first, inShort, sentences } = question;
  const carried = carriedBy(question);
  // What carries most answers tells their money again: paper has the whole of it beside.
  const again = carried.length > 0 && !sentences[0]!.startsWith(spoken(first, inShort));
  const short = again ? html`<span class="on-screen">${inShort}</span>` : inShort;
  const row = html`<b>${title}</b> <span>${first === '' ? null : `${first} `}${short}</span>`;
  return carried.length === 0
    ? html`<p>${row}</p>`
    : html`<details><summary>${row}</summary> <p>${carried.join(' ')}</p></details>`;
}

const spoken = (first: string, inShort: string): string =>
  first === '' ? inShort : `${first} ${inShort}`;
