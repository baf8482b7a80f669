import { nearestHint } from '../../units/nearest-name.ts';
import type { StartContext } from './start-context.ts';

/** What was answered so far, by the ids of the questions: lines and words as a person gives them. */
export type Answers = Readonly<Record<string, string | readonly string[]>>;

/** One of the answers to choose from. */
export interface Choice {
  /** What stands among the answers. */
  readonly value: string;
  /** What the person reads; the value where not given. */
  readonly label?: string;
  readonly hint?: string;
}

interface Common {
  readonly id: string;
  /** The question, which ends with a question mark. */
  readonly text: (answers: Answers) => string;
  /** Why it is not asked with these answers, as the end of "... is not asked: "; null where it is. */
  readonly unless?: (answers: Answers) => string | null;
}

/** A line of text. */
interface LineQuestion extends Common {
  readonly kind: 'line';
  /** What most would answer, to begin with. */
  readonly initial: (answers: Answers, context: StartContext) => string;
  /** Why a line will not do, in words; null where it does. */
  readonly check: (line: string, answers: Answers, context: StartContext) => string | null;
}

/** One of several. */
interface OneQuestion extends Common {
  readonly kind: 'one';
  readonly choices: (answers: Answers, context: StartContext) => readonly Choice[];
  readonly initial: (answers: Answers, context: StartContext) => string;
}

/** Any number of several. */
interface SeveralQuestion extends Common {
  readonly kind: 'several';
  readonly choices: (answers: Answers, context: StartContext) => readonly Choice[];
  readonly initial: (answers: Answers, context: StartContext) => readonly string[];
}

/** One question as data: a terminal asks it, and so could a form in a page. */
export type Question = LineQuestion | OneQuestion | SeveralQuestion;

/** The first question that is to be asked and has no answer; null where all have. */
export const nextQuestion = (questions: readonly Question[], answers: Answers): Question | null =>
  questions.find((question) => isAsked(question, answers) && !isAnswered(question, answers)) ??
  null;

/** Something wrong with one answer: id, and what is expected in its place. */
export interface AnswerTrouble {
  readonly id: string;
  readonly expected: string;
  readonly hint: string;
}

/**
 * Everything wrong with answers that were given in one go, contradictions among them.
 *
 * Each is judged by the answers to the questions before it, with the usual one wherever nobody gave
 * one that will do.
 */
export function troublesOf(
  questions: readonly Question[],
  answers: Answers,
  context: StartContext,
): AnswerTrouble[] {
  const ids = questions.map(({ id }) => id);
  const troubles = Object.keys(answers)
    .filter((id) => !ids.includes(id))
    .map((id): AnswerTrouble => {
      const expected = `one of the questions: ${ids.join(', ')}`;
      return { id, expected, hint: nearestHint(id, ids) };
    });
  for (const { question, unasked, wrong } of judged(questions, answers, context)) {
    const { id } = question;
    if (wrong !== null) troubles.push({ id, ...wrong });
    if (unasked !== null && answers[id] !== undefined) {
      troubles.push({ id, expected: 'no such answer', hint: unasked });
    }
  }
  return troubles;
}

/** A question as it stands among answers that were given in one go. */
export interface JudgedQuestion {
  readonly question: Question;
  /** The answers before it, with the usual one wherever nobody gave one that will do. */
  readonly before: Answers;
  /** Why it is not asked; null where it is. */
  readonly unasked: string | null;
  /** What is wrong with its answer; null for nothing, and where it is not asked. */
  readonly wrong: Omit<AnswerTrouble, 'id'> | null;
}

/** Each question with what is to be said of its answer. */
export function judged(
  questions: readonly Question[],
  answers: Answers,
  context: StartContext,
): JudgedQuestion[] {
  let sound: Answers = {};
  return questions.map((question) => {
    const { id } = question;
    const before = sound;
    const given = answers[id];
    const unasked = question.unless?.(before) ?? null;
    if (unasked !== null) return { question, before, unasked, wrong: null };
    const wrong = given === undefined ? null : wrongWith(question, given, before, context);
    const usual = given === undefined || wrong !== null;
    sound = { ...before, [id]: usual ? question.initial(before, context) : given };
    return { question, before, unasked, wrong };
  });
}

/** What is expected in place of an answer; null where it does. */
export function wrongWith(
  question: Question,
  given: string | readonly string[],
  answers: Answers,
  context: StartContext,
): { readonly expected: string; readonly hint: string } | null {
  if (question.kind === 'line') {
    if (typeof given !== 'string') return { expected: 'one line of text', hint: '' };
    const expected = question.check(given.trim(), answers, context);
    return expected === null ? null : { expected, hint: '' };
  }
  const known = question.choices(answers, context).map(({ value }) => value);
  const words = question.kind === 'one' ? 'one of' : 'any of';
  const expected = `${words}: ${known.join(', ')}`;
  if (question.kind === 'one' ? typeof given !== 'string' : typeof given === 'string') {
    return { expected: question.kind === 'one' ? expected : `a list of ${expected}`, hint: '' };
  }
  const strange = [given].flat().find((value) => !known.includes(value));
  if (strange === undefined) return null;
  return { expected, hint: nearestHint(strange, known) };
}

/** Answers with what most would say wherever nobody did, and the ids of those. */
export function completed(
  questions: readonly Question[],
  answers: Answers,
  context: StartContext,
): { readonly answers: Answers; readonly usual: readonly string[] } {
  let all = answers;
  const usual: string[] = [];
  for (
    let next = nextQuestion(questions, all);
    next !== null;
    next = nextQuestion(questions, all)
  ) {
    all = { ...all, [next.id]: next.initial(all, context) };
    usual.push(next.id);
  }
  return { answers: all, usual };
}

const isAsked = (question: Question, answers: Answers): boolean =>
  (question.unless?.(answers) ?? null) === null;

/** Whether a question is to be asked and has its answer. */
export const isAnswered = (question: Question, answers: Answers): boolean =>
  isAsked(question, answers) && answers[question.id] !== undefined;

/** A line or word that was answered; empty where it was not asked. */
export function said(answers: Answers, id: string): string {
  const given = answers[id];
  return typeof given === 'string' ? given.trim() : '';
}

/** Whether one of several was chosen. */
export const chose = (answers: Answers, id: string, value: string): boolean =>
  [answers[id] ?? []].flat().includes(value);
