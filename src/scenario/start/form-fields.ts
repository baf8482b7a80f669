import { type Answers, type Choice, judged, type Question } from './question.ts';
import type { StartContext } from './start-context.ts';

/** A question as a form shows it among the answers that were given so far. */
export interface FormField {
  readonly id: string;
  readonly kind: Question['kind'];
  readonly text: string;
  /** None for a line. */
  readonly choices: readonly Choice[];
  /** What holds where nobody answers, in words. */
  readonly usual: string;
  /** What was given; null for nothing. */
  readonly given: string | readonly string[] | null;
  /** Whether it is asked with the answers before it. */
  readonly asked: boolean;
  /** Why what was given will not do, in words; empty where it does. */
  readonly trouble: string;
}

/** The fields of a form with these answers. */
export function formFields(
  questions: readonly Question[],
  answers: Answers,
  context: StartContext,
): FormField[] {
  return judged(questions, answers, context).map(({ question, before, unasked, wrong }) => {
    const { id, kind } = question;
    const given = answers[id] ?? null;
    const asked = unasked === null; // a question knows nothing to choose from where it is not asked
    const choices = kind === 'line' || !asked ? [] : question.choices(before, context);
    const against = asked || given === null ? '' : `No answer is expected: ${unasked}.`;
    return {
      ...{ id, kind, choices, given, asked },
      text: question.text(before),
      usual: asked ? inWords(question.initial(before, context), choices) : '',
      trouble: wrong === null ? against : troubleText(wrong),
    };
  });
}

/** Answers as a form sends them: what is empty was not answered. */
export function answersOfForm(
  questions: readonly Question[],
  entries: readonly (readonly [name: string, value: string])[],
): Answers {
  const answers: Record<string, string | readonly string[]> = {};
  for (const { id, kind } of questions) {
    const values = entries.filter(([name]) => name === id).map(([, value]) => value.trim());
    const given = values.filter((value) => value !== '');
    if (kind !== 'several') {
      if (given.length > 0) answers[id] = given.at(-1)!;
    } else if (given.length > 0) {
      answers[id] = given;
    } else if (values.length === 0 && entries.some((e) => e[0] === SHOWN && e[1] === id)) {
      answers[id] = []; // none of them is an answer, too
    }
  }
  return answers;
}

/** Name under which a form says which lists of several it has shown, because an empty one sends nothing. */
export const SHOWN = 'shown';

const troubleText = ({ expected, hint }: { expected: string; hint: string }): string =>
  `Expected ${expected}${hint === '' ? '' : ` (${hint})`}.`;

function inWords(usual: string | readonly string[], choices: readonly Choice[]): string {
  const label = (value: string): string =>
    choices.find((choice) => choice.value === value)?.label ?? value;
  const words = [usual].flat().map(label);
  return words.length === 0 ? 'none of them' : words.join('; ');
}
