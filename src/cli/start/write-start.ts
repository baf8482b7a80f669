import { basename, dirname, join, relative } from 'node:path';
import { useInName } from '../../scenario/presets/rooms.ts';
import { otherWeather } from '../../scenario/start/other-weather.ts';
import { placeOf } from '../../scenario/start/place-answer.ts';
import { priceIn } from '../../scenario/start/price-answer.ts';
import { type Answers, said } from '../../scenario/start/question.ts';
import { roomsOf } from '../../scenario/start/rooms-answer.ts';
import { scenarioText } from '../../scenario/start/write-scenario.ts';
import { andList } from '../../units/word-list.ts';
import { requireFree } from '../fetch/require-free.ts';
import type { Io } from '../io.ts';
import { MOST_DATA } from '../load/load-scenario.ts';

/** The weather that goes with a scenario, and the answers that are kept until it is written. */
export function filesBeside(path: string): { readonly weather: string; readonly kept: string } {
  const stem = path.replace(/\.ya?ml$/i, '');
  return { weather: `${stem}-weather.csv`, kept: `${stem}.answers.yaml` };
}

/** Refuse a scenario, or weather beside it, that is there or could not be written. @throws InputProblems */
export async function requireFreeFiles(io: Io, path: string): Promise<void> {
  for (const file of [path, filesBeside(path).weather]) {
    await requireFree(io, file);
    await io.requireWritable(file);
  }
}

/** Refuse to write a scenario whose file of prices cannot be read. @throws InputProblems */
export async function requirePrices(io: Io, path: string, answers: Answers): Promise<void> {
  const price = priceIn(said(answers, 'electricity'));
  if (price === null || !('file' in price)) return;
  await io.readText(join(dirname(path), price.file), MOST_DATA);
}

/** Complete answers, and the weather that was chosen. */
export interface StartResult {
  readonly answers: Answers;
  /** Ids of questions that nobody answered. */
  readonly usual: readonly string[];
  /** Text of the weather's file. */
  readonly weather: string;
}

/**
 * Write a first scenario and its weather; answers that were kept until then go.
 *
 * @returns what has to be known of the weather; null for nothing
 */
export async function writeStart(
  io: Io,
  path: string,
  { answers, usual, weather }: StartResult,
): Promise<string | null> {
  const files = filesBeside(path);
  const schema = join(await io.packageFolder(), 'docs', 'scenario.schema.json');
  const { readWeather } = await import('../../weather/read/read-weather.ts');
  const { wrapText } = await import('../../report/tables/wrap-text.ts');
  const remark = otherWeather(placeOf(answers), readWeather(weather, files.weather));
  const text = scenarioText(answers, {
    weather: basename(files.weather),
    schema: relative(dirname(path), schema),
    ...{ usual, remark },
  });
  await io.writeWhole(files.weather, weather);
  await io.writeWhole(path, text);
  await io.remove(files.kept);
  const say = (line: string) => io.err(`${wrapText(line, '', io.width)}\n`);
  say(`Written: ${path}, and its weather, ${files.weather}.`);
  const guessed = roomsOf(answers).filter(({ name }) => useInName(name) === null);
  if (guessed.length > 0) {
    const names = andList(guessed.map(({ name }) => name));
    say(
      `Taken as rooms to live in, because their names do not tell: ${names}. "use" in ${path} says what a room is.`,
    );
  }
  if (usual.length > 0) say(`As usual, because nobody answered: ${usual.join(', ')}.`);
  return remark;
}
