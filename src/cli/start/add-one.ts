import { readScenario } from '../../scenario/read-scenario.ts';
import { type Addition, adding } from '../../scenario/start/add-questions.ts';
import { insertInto } from '../../scenario/start/insert-yaml.ts';
import { completed } from '../../scenario/start/question.ts';
import { readAnswers } from '../../scenario/start/read-answers.ts';
import { Interrupted } from '../asking.ts';
import type { Io } from '../io.ts';
import { MOST_SCENARIO } from '../load/load-scenario.ts';
import { UsageError } from '../usage-error.ts';
import { askQuestions } from './ask-questions.ts';
import { requireAsking } from './require-asking.ts';

/**
 * Add a room, device, rule or plan to a scenario that is there, in place.
 *
 * Comments and order stay; nothing is written unless the whole is a scenario before and after.
 */
export async function addOne(
  io: Io,
  path: string,
  what: Addition,
  { answers: file, yes }: { readonly answers?: string; readonly yes?: true },
): Promise<void> {
  const before = await io.readText(path, MOST_SCENARIO);
  const { yaml } = readScenario(before, path);
  const { questions, insertions } = adding(what, yaml.value);
  const context = { weather: [] };
  const given =
    file === undefined
      ? {}
      : readAnswers(await io.readText(file, MOST_SCENARIO), file, questions, context);
  const answers =
    yes || file !== undefined
      ? completed(questions, given, context).answers
      : await askQuestions(
          await requireAsking(io),
          questions,
          given,
          context,
          async () => {},
        ).catch((error: unknown) => {
          if (error instanceof Interrupted)
            throw new UsageError('Broken off; nothing was changed.');
          throw error;
        });
  const added = insertions(answers);
  const after = added.reduce((text, insertion) => insertInto(text, path, insertion), before);
  readScenario(after, path);
  await io.writeWhole(path, after);
  const names = added.map(({ path: keys, name }) => [...keys, name ?? 'one more'].join(', '));
  io.err(`Added to ${path}: ${names.join('; ')}.\n`);
}
