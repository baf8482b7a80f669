import { FETCH } from '../../scenario/start/home-questions.ts';
import { farness, nearestInClimate, placeOf } from '../../scenario/start/place-answer.ts';
import { type Answers, completed } from '../../scenario/start/question.ts';
import { QUESTIONNAIRE } from '../../scenario/start/questionnaire.ts';
import { answersText, readAnswers } from '../../scenario/start/read-answers.ts';
import type { StartContext } from '../../scenario/start/start-context.ts';
import { InputProblems } from '../../units/problem.ts';
import { Interrupted } from '../asking.ts';
import type { Io } from '../io.ts';
import { MOST_SCENARIO } from '../load/load-scenario.ts';
import { askQuestions } from '../start/ask-questions.ts';
import { keptAnswers } from '../start/kept-answers.ts';
import { requireAsking } from '../start/require-asking.ts';
import { startContext, weatherFor } from '../start/weather-for.ts';
import { filesBeside, requireFreeFiles, requirePrices, writeStart } from '../start/write-start.ts';
import { UsageError } from '../usage-error.ts';

/** What may be said beside the name of the file to write. */
export interface StartOptions {
  readonly yes?: true;
  readonly answers?: string;
  readonly add?: 'room' | 'device' | 'rule' | 'plan';
  readonly cache: boolean;
  readonly pvgis?: string;
  readonly archive?: string;
}

/** Ask about a home, write its scenario and weather, and tell what its plans come to. */
export async function start(io: Io, path: string, options: StartOptions): Promise<void> {
  if (options.add !== undefined) {
    const { addOne } = await import('../start/add-one.ts');
    return addOne(io, path, options.add, options);
  }
  await requireFreeFiles(io, path);
  const files = filesBeside(path);
  const context = await startContext(io, path);
  const { usual, answers, weather } = await keptIfBrokenOff(io, files.kept, async () => {
    const given = await allAnswers(io, files.kept, options, context);
    return { ...given, ...(await withWeather(io, path, given.answers, options, context)) };
  });
  await requirePrices(io, path, answers);
  const remark = await writeStart(io, path, { answers, usual, weather });
  const { compare } = await import('./compare.ts');
  await compare(io, path, { set: [], seed: 1 });
  const { narrow } = await import('../start/narrow.ts');
  io.out(`\n${await narrow(io, path, [answers['bothers'] ?? []].flat())}\n`);
  const { wrapText } = await import('../../report/tables/wrap-text.ts');
  const next = `Next: change ${path} with an editor; roombalance check ${path} lists what is assumed.`;
  for (const line of remark === null ? [next] : [remark, next]) {
    io.out(`\n${wrapText(line, '', io.width)}\n`);
  }
}

/** The weather that was chosen; where it cannot be had, the person may choose another. */
async function withWeather(
  io: Io,
  path: string,
  answers: Answers,
  options: StartOptions,
  context: StartContext,
): Promise<{ answers: Answers; weather: string }> {
  try {
    return { answers, weather: await weatherFor(io, path, answers, options) };
  } catch (error) {
    if (!(error instanceof InputProblems) || answers['weather'] !== FETCH) throw error;
    const [nearest] = nearestInClimate(placeOf(answers), context.weather);
    const asking = options.yes || options.answers !== undefined ? null : await io.asking();
    if (nearest === undefined) throw error;
    if (asking === null) {
      const hint = `Without the network, answer "weather: ${nearest.name}": of those at hand it is`;
      io.err(`${hint} nearest in climate, ${farness(placeOf(answers), nearest)}.\n`);
      throw error;
    }
    io.err(`${error.message}\n`);
    const { weather: _, ...others } = answers;
    const again = await askQuestions(asking, QUESTIONNAIRE, others, context, async () => {});
    return withWeather(io, path, again, options, context);
  }
}

/** Answers to all questions: given, kept from before, asked for, or usual. */
async function allAnswers(
  io: Io,
  kept: string,
  { answers: file, yes }: StartOptions,
  context: StartContext,
): Promise<{ answers: Answers; usual: readonly string[] }> {
  if (file !== undefined) {
    const text = await io.readText(file, MOST_SCENARIO);
    return completed(QUESTIONNAIRE, readAnswers(text, file, QUESTIONNAIRE, context), context);
  }
  const begun = await keptAnswers(io, kept, context);
  if (yes) return completed(QUESTIONNAIRE, begun, context);
  const asking = await requireAsking(io);
  const keep = (answers: Answers) => io.writeWhole(kept, answersText(answers));
  return { answers: await askQuestions(asking, QUESTIONNAIRE, begun, context, keep), usual: [] };
}

/** Do some asking; where the person breaks off, say where the answers are kept. @throws UsageError */
async function keptIfBrokenOff<T>(io: Io, kept: string, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Interrupted)) throw error;
    const there = await io.exists(kept);
    const where = there ? `Your answers are in ${kept}; the same command goes on from there.` : '';
    throw new UsageError(`Broken off; nothing was written. ${where}`.trim());
  }
}
