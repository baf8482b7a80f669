import type { ComparisonAnswers, PlanLine } from '../../studies/answers/comparison-answers.ts';
import type { QuestionAnswer } from '../../studies/answers/question-answers.ts';
import { visibleProse } from '../../units/visible-text.ts';
import { moneyOf, planLines } from './plan-lines.ts';
import { wrapText } from './wrap-text.ts';

/**
 * The answer of a comparison on one screen: each question in a few sentences, what nobody
 * would have guessed, then a line of figures and a sentence for each plan. Where that is more lines
 * than there may be, what each plan gains and by what is left out, and then the last questions, with a
 * line that says so; what a plan is stands whole.
 *
 * @param most  lines at most
 */
export function compareSummary(given: ComparisonAnswers, width: number, most: number): string {
  const answers = byToldMoney(given);
  const { head, lines, legend } = planLines(answers, width);
  const missing =
    answers.failed.length === 0 ? [] : [`Not run to the end: ${answers.failed.join(', ')}.`];
  const notes = wrapText(
    [...missing, ...legend, mouldNote(answers.plans)].join(' '),
    '',
    width,
  ).split('\n');
  const table = Math.max(...lines.map((line) => [...line].length));
  const beside = width - table >= LEAST_BESIDE ? width - table : 0;
  const body = (room: Room): string[] => [
    ...head,
    ...answers.plans.flatMap((plan, k) => {
      if (beside === 0) return [lines[k]!, ...sentence(plan, width - 2, room).map(INDENTED)];
      // On a wide screen a plan begins in one line, its sentence behind its figures.
      const [first = '', ...rest] = sentence(plan, beside - 2, room);
      const begun = `${lines[k]!.padEnd(table)}  ${first}`.trimEnd();
      return [begun, ...rest.map((line) => `${' '.repeat(table)}  ${line}`)];
    }),
  ];
  const fits = (questions: readonly string[], shown: readonly string[]): boolean =>
    questions.length + shown.length + notes.length + 2 <= most;
  const caveat = answers.caveat === '' ? [] : linesOf(wrapText(answers.caveat, '', width));
  const surprise =
    answers.surprise === '' ? [] : [paragraph('Surprising:', answers.surprise, width)];
  const laid = (questions: readonly QuestionAnswer[]): string[] => [
    ...caveat,
    ...[...questions.map((question) => answered(question, width)), ...surprise].flatMap(linesOf),
    ...leftOut(answers.questions.length - questions.length),
  ];
  const rows = body(ROOMS.find((room) => fits(laid(answers.questions), body(room))) ?? 'tight');
  const kept = fitting(answers.questions, (questions) => fits(laid(questions), rows));
  return [laid(kept).join('\n'), rows.join('\n'), notes.join('\n')]
    .filter((part) => part !== '')
    .join('\n\n');
}

/** The cheapest first of what stands in the column of money. */
function byToldMoney(answers: ComparisonAnswers): ComparisonAnswers {
  const [first, ...others] = answers.plans;
  if (first === undefined) return answers;
  const sorted = others.toSorted((a, b) => moneyOf(a.figures) - moneyOf(b.figures));
  return { ...answers, plans: [first, ...sorted] };
}

/**
 * As many questions as fit: what few ask goes first, then last sentences from the last question
 * on, then whole questions, but never the first.
 */
function fitting(
  questions: readonly QuestionAnswer[],
  fits: (questions: readonly QuestionAnswer[]) => boolean,
): readonly QuestionAnswer[] {
  let kept = questions;
  while (kept.length > USUAL && !fits(kept)) kept = kept.slice(0, -1);
  const longest = Math.max(...kept.map(({ sentences }) => sentences.length));
  for (let most = longest - 1; most >= 1; most--) {
    for (let k = kept.length - 1; k >= 0 && !fits(kept); k--) {
      kept = kept.with(k, { ...kept[k]!, sentences: kept[k]!.sentences.slice(0, most) });
    }
  }
  while (kept.length > 1 && !fits(kept)) kept = kept.slice(0, -1);
  return kept;
}

/** Whoever asked them shall know that there is an answer. */
const leftOut = (count: number): string[] =>
  count === 0 ? [] : [`--all answers ${count} more question${count === 1 ? '' : 's'}.`];

const answered = ({ title, sentences }: QuestionAnswer, width: number): string =>
  paragraph(title, sentences.join(' '), width);

/** A paragraph whose later lines stand in by two. */
function paragraph(opening: string, text: string, width: number): string {
  const [first = '', ...rest] = wrapText(`${opening} ${text}`, '', width - 2).split('\n');
  return [first, ...rest.map((line) => `  ${line}`)].join('\n').replaceAll('\u00a0', ' ');
}

/** How much may stand behind a plan's description. */
type Room = 'ample' | 'verdict' | 'tight';

/**
 * What a plan is, whole; with what it gains and costs and by what, as far as there is room: where that
 * is tight, only what makes no further line.
 */
function sentence({ description, verdict, causes }: PlanLine, width: number, room: Room): string[] {
  const why = causes.slice(0, MOST_CAUSES).map(({ words }) => words);
  const parts = [visibleProse(description), verdict].filter((part) => part !== '');
  const whole = parts.join(': ');
  const because = why.length === 0 || whole === '' ? whole : `${whole} (${why.join('; ')})`;
  const lines = (text: string): string[] => (text === '' ? [] : linesOf(wrapText(text, '', width)));
  const shortest = description === '' ? whole : visibleProse(description);
  const texts = [because, ...why.slice(1).map(() => `${whole} (${why[0]})`), whole, shortest];
  const most = room === 'ample' ? because : room === 'verdict' ? whole : shortest;
  const fitting = texts.find((text) => lines(text).length <= lines(most).length);
  return lines(fitting ?? most).map((line) => line.replaceAll('\u00a0', ' '));
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
const MOST_CAUSES = 2;
const ROOMS: readonly Room[] = ['ample', 'verdict', 'tight'];
/** Questions that most homes ask: setting, presence, a purchase, rules, hours. */
const USUAL = 5;
const INDENTED = (line: string): string => `  ${line}`;
const linesOf = (text: string): string[] => text.split('\n');
