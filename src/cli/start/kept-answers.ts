import type { Answers } from '../../scenario/start/question.ts';
import { QUESTIONNAIRE } from '../../scenario/start/questionnaire.ts';
import { readAnswers } from '../../scenario/start/read-answers.ts';
import type { StartContext } from '../../scenario/start/start-context.ts';
import type { Io } from '../io.ts';
import { MOST_SCENARIO } from '../load/load-scenario.ts';

/**
 * Answers kept from a questionnaire that was broken off; none where there was none.
 *
 * @throws InputProblems where somebody spoilt them
 */
export async function keptAnswers(io: Io, kept: string, context: StartContext): Promise<Answers> {
  if (!(await io.exists(kept))) return {};
  const text = await io.readText(kept, MOST_SCENARIO);
  const answers = readAnswers(text, kept, QUESTIONNAIRE, context);
  const known = Object.keys(answers).length;
  io.err(`Going on: ${known} answers are in ${kept} (remove it to begin anew).\n`);
  return answers;
}
