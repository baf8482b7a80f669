import type { ComparisonAnswers, PlanLine } from '../../studies/answers/comparison-answers.ts';
import type { QuestionAnswer } from '../../studies/answers/question-answers.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { planLines } from './plan-lines.ts';
import { wrapText } from './wrap-text.ts';

/**
 * The answer of a comparison on one screen: each question in two or three sentences, what nobody
 * would have guessed, then a line of figures and a sentence for each plan. Where that is more lines
 * than there may be, sentences of plans are cut to a line, and then the last questions left out.
 *
 * @param most  lines at most
 */
export function compareSummary(answers: ComparisonAnswers, width: number, most: number): string {
  const { head, lines, legend } = planLines(answers, width);
  const missing =
    answers.failed.length === 0 ? [] : [`Not run to the end: ${answers.failed.join(', ')}.`];
  const notes = wrapText(
    [...missing, ...legend, mouldNote(answers.plans)].join(' '),
    '',
    width,
  ).split('\n');
  const table = Math.max(...lines.map((line) => [...line].length));
  // On a wide screen a plan is one line, its sentence behind its figures.
  const beside = width - table >= LEAST_BESIDE ? width - table : 0;
  const body = (whole: boolean): string[] => [
    ...head,
    ...answers.plans.flatMap((plan, k) => [
      ...(beside > 0
        ? [`${lines[k]!.padEnd(table)}${sentence(plan, beside, false).join('')}`.trimEnd()]
        : [lines[k]!, ...sentence(plan, width, whole)]),
    ]),
  ];
  const fits = (questions: readonly string[], shown: readonly string[]): boolean =>
    questions.length + shown.length + notes.length + 2 <= most;
  const surprise =
    answers.surprise === '' ? [] : [paragraph('Surprising:', answers.surprise, width)];
  const laid = (questions: readonly QuestionAnswer[]): string[] =>
    [...questions.map((question) => answered(question, width)), ...surprise].flatMap(linesOf);
  const rows = body(fits(laid(answers.questions), body(true)));
  const kept = fitting(answers.questions, (questions) => fits(laid(questions), rows));
  return [laid(kept).join('\n'), rows.join('\n'), notes.join('\n')]
    .filter((part) => part !== '')
    .join('\n\n');
}

/**
 * As many questions as fit: what few ask goes first, then second sentences from the last question
 * on, then whole questions, but never the first.
 */
function fitting(
  questions: readonly QuestionAnswer[],
  fits: (questions: readonly QuestionAnswer[]) => boolean,
): readonly QuestionAnswer[] {
  let kept = questions;
  while (kept.length > USUAL && !fits(kept)) kept = kept.slice(0, -1);
  for (let k = kept.length - 1; k >= 0 && !fits(kept); k--) {
    const short = { ...kept[k]!, sentences: kept[k]!.sentences.slice(0, 1) };
    kept = kept.with(k, short);
  }
  while (kept.length > 1 && !fits(kept)) kept = kept.slice(0, -1);
  return kept;
}

const answered = ({ title, sentences }: QuestionAnswer, width: number): string =>
  paragraph(title, sentences.join(' '), width);

/** A paragraph whose later lines stand in by two. */
function paragraph(opening: string, text: string, width: number): string {
  const [first = '', ...rest] = wrapText(`${opening} ${text}`, '', width - 2).split('\n');
  return [first, ...rest.map((line) => `  ${line}`)].join('\n').replaceAll('\u00a0', ' ');
}

/** "  19 °C instead of 21 °C: cheaper, but damper" */
function sentence({ description, verdict }: PlanLine, width: number, whole: boolean): string[] {
  const text = visibleProse(description);
  const parts = [text, verdict].filter((part) => part !== '');
  if (parts.length === 0) return [];
  if (whole)
    return wrapText(parts.join(': '), '', width - 2)
      .split('\n')
      .map(INDENTED);
  const room = width - 2 - (verdict === '' ? 0 : [...verdict].length + 2);
  return [INDENTED([cut(text, room), verdict].filter((part) => part !== '').join(': '))];
}

/** Text of at most so many letters, ending between words. */
function cut(text: string, most: number): string {
  if ([...text].length <= most) return text;
  const kept = [...text].slice(0, Math.max(0, most - 1)).join('');
  const end = kept.lastIndexOf(' ');
  return `${(end > most / 2 ? kept.slice(0, end) : kept).replace(/[,;: ]+$/, '')}…`;
}

/** What the mould index means, and its room where that is the same under all plans. */
function mouldNote(plans: readonly PlanLine[]): string {
  const rooms = [...new Set(plans.map(({ figures }) => figures.mould.room))].filter(
    (r) => r !== '',
  );
  const where = rooms.length === 1 ? ` (${rooms[0]} under every plan)` : '';
  return `mould: highest index${where}: from 1 seen under a microscope, from 3 by eye.`;
}

const LEAST_BESIDE = 60;
/** Questions that most homes ask: setting, presence, a purchase, rules, hours. */
const USUAL = 5;
const INDENTED = (line: string): string => `  ${line}`;
const linesOf = (text: string): string[] => text.split('\n');
