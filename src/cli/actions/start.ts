import { basename, dirname, join, relative } from 'node:path';
import { FETCH } from '../../scenario/start/home-questions.ts';
import { farness, nearestInClimate, placeOf } from '../../scenario/start/place-answer.ts';
import { priceIn } from '../../scenario/start/price-answer.ts';
import { type Answers, completed, said } from '../../scenario/start/question.ts';
import { QUESTIONNAIRE } from '../../scenario/start/questionnaire.ts';
import { answersText, readAnswers } from '../../scenario/start/read-answers.ts';
import type { StartContext } from '../../scenario/start/start-context.ts';
import { scenarioText } from '../../scenario/start/write-scenario.ts';
import { InputProblems } from '../../units/problem.ts';
import { Interrupted } from '../asking.ts';
import { requireFree } from '../fetch/require-free.ts';
import type { Io } from '../io.ts';
import { MOST_DATA, MOST_SCENARIO } from '../load-scenario.ts';
import { askQuestions } from '../start/ask-questions.ts';
import { requireAsking } from '../start/require-asking.ts';
import { startContext, weatherFor } from '../start/weather-for.ts';
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
  const files = filesBeside(path);
  for (const file of [path, files.weather]) {
    await requireFree(io, file);
    await io.requireWritable(file);
  }
  const context = await startContext(io);
  const { usual, answers, weather } = await keptIfBrokenOff(io, files.kept, async () => {
    const given = await allAnswers(io, files.kept, options, context);
    return { ...given, ...(await withWeather(io, given.answers, options, context)) };
  });
  await requirePrices(io, path, answers);
  const schema = join(await io.packageFolder(), 'docs', 'scenario.schema.json');
  const text = scenarioText(answers, {
    weather: basename(files.weather),
    schema: relative(dirname(path), schema),
    usual,
  });
  await io.writeWhole(files.weather, weather);
  await io.writeWhole(path, text);
  await io.remove(files.kept);
  io.err(`Written: ${path}, and its weather, ${files.weather}.\n`);
  if (usual.length > 0) io.err(`As usual, because nobody answered: ${usual.join(', ')}.\n`);
  const { compare } = await import('./compare.ts');
  await compare(io, path, { set: [], seed: 1 });
  const { narrow } = await import('../start/narrow.ts');
  io.out(`\n${await narrow(io, path, [answers['bothers'] ?? []].flat())}\n`);
  io.out(
    `\nNext: change ${path} with an editor; roombalance check ${path} lists what is assumed.\n`,
  );
}

/** Refuse to write a scenario whose file of prices cannot be read. @throws InputProblems */
async function requirePrices(io: Io, path: string, answers: Answers): Promise<void> {
  const price = priceIn(said(answers, 'electricity'));
  if (price === null || !('file' in price)) return;
  await io.readText(join(dirname(path), price.file), MOST_DATA);
}

/** The weather that was chosen; where it cannot be had, the person may choose another. */
async function withWeather(
  io: Io,
  answers: Answers,
  options: StartOptions,
  context: StartContext,
): Promise<{ answers: Answers; weather: string }> {
  try {
    return { answers, weather: await weatherFor(io, answers, options) };
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
    return withWeather(io, again, options, context);
  }
}

/** The weather that goes with a scenario, and the answers that are kept until it is written. */
function filesBeside(path: string) {
  const stem = path.replace(/\.ya?ml$/i, '');
  return { weather: `${stem}-weather.csv`, kept: `${stem}.answers.yaml` };
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
  const begun = (await io.exists(kept)) ? await goOn(io, kept, context) : {};
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

/** Answers kept from a questionnaire that was broken off, less those that no longer fit. */
async function goOn(io: Io, kept: string, context: StartContext): Promise<Answers> {
  const text = await io.readText(kept, MOST_SCENARIO);
  const answers = readAnswers(text, kept, QUESTIONNAIRE, context);
  const known = Object.keys(answers).length;
  io.err(`Going on: ${known} answers are in ${kept} (remove it to begin anew).\n`);
  return answers;
}
