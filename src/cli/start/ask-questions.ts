import {
  type Answers,
  isAnswered,
  nextQuestion,
  type Question,
  wrongWith,
} from '../../scenario/start/question.ts';
import type { StartContext } from '../../scenario/start/start-context.ts';
import type { AskedOption, Asking } from '../asking.ts';

/**
 * Ask what has no answer yet, one question at a time.
 *
 * @param keep  is told the answers after each
 * @throws Interrupted where the person breaks off
 */
export async function askQuestions(
  asking: Asking,
  questions: readonly Question[],
  begun: Answers,
  context: StartContext,
  keep: (answers: Answers) => Promise<void>,
): Promise<Answers> {
  let answers = begun;
  for (;;) {
    const next = nextQuestion(questions, answers);
    if (next === null) return answers;
    const done = questions.filter((question) => isAnswered(question, answers)).length;
    const answer = await ask(asking, next, answers, context, `${done + 1}. `);
    answers = { ...answers, [next.id]: answer };
    await keep(answers);
  }
}

async function ask(
  asking: Asking,
  question: Question,
  answers: Answers,
  context: StartContext,
  number: string,
): Promise<string | readonly string[]> {
  const text = number + question.text(answers);
  if (question.kind === 'line') {
    const check = (line: string) => {
      const wrong = wrongWith(question, line, answers, context);
      return wrong === null ? null : `Expected ${wrong.expected}`;
    };
    return (await asking.line(text, question.initial(answers, context), check)).trim();
  }
  const options = question.choices(answers, context).map(({ value, label = value, hint }) => ({
    ...{ value, label },
    ...(hint !== undefined && { hint }),
  })) satisfies AskedOption[];
  return question.kind === 'one'
    ? asking.one(text, options, question.initial(answers, context))
    : asking.several(text, options, question.initial(answers, context));
}
