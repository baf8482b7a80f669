import { type FormInput, formPage } from '../../report/served/form-page.ts';
import { answersOfForm, formFields } from '../../scenario/start/form-fields.ts';
import { farness, nearestInClimate, placeOf } from '../../scenario/start/place-answer.ts';
import { type Answers, completed, troublesOf } from '../../scenario/start/question.ts';
import { QUESTION_GROUPS, QUESTIONNAIRE } from '../../scenario/start/questionnaire.ts';
import { InputProblems, problemText } from '../../units/problem.ts';
import type { Io } from '../io.ts';
import { keptAnswers } from '../start/kept-answers.ts';
import { type ServiceChoice, startContext, weatherFor } from '../start/weather-for.ts';
import { filesBeside, requireFreeFiles, requirePrices, writeStart } from '../start/write-start.ts';
import type { SiteAnswer } from './site.ts';

/** The questions of a first scenario as a page. */
export interface ServedForm {
  /** The form as it is before anybody fills it in. */
  empty(): SiteAnswer;
  /** Writes the scenario and leads on to its page, or tells what is wrong. @param body  as a browser sends it */
  take(body: string): Promise<SiteAnswer>;
}

/**
 * Asks what `start` asks, judges it by the same rules, and writes the same files.
 *
 * @throws InputProblems where the files could not be written
 */
export async function serveForm(
  io: Io,
  path: string,
  services: ServiceChoice,
): Promise<ServedForm> {
  await requireFreeFiles(io, path);
  const context = await startContext(io, path);
  const begun = await keptAnswers(io, filesBeside(path).kept, context);
  const script = await io.readAsset('report/form-script.js');
  const sha256 = await io.loadSha256();

  /** @param found  what is wrong besides, by the id of a question, or by none */
  function shown(answers: Answers, found: readonly Found[] = []): FormInput {
    const fields = formFields(QUESTIONNAIRE, answers, context).map((field) => {
      const own = found.find(({ id }) => id === field.id);
      return own === undefined ? field : { ...field, trouble: own.words };
    });
    return {
      ...{ file: path, context, script, sha256 },
      groups: QUESTION_GROUPS.map(({ title, questions }) => ({
        title,
        fields: fields.filter(({ id }) => questions.some((question) => question.id === id)),
      })),
      troubles: found.filter(({ id }) => id === null).map(({ words }) => words),
    };
  }

  async function take(body: string): Promise<SiteAnswer> {
    const given = answersOfForm(QUESTIONNAIRE, [...new URLSearchParams(body)]);
    const refused = (found: readonly Found[]): SiteAnswer => ({
      ...{ status: 422, page: formPage(shown(given, found)) },
    });
    if (troublesOf(QUESTIONNAIRE, given, context).length > 0) return refused([]);
    const { answers, usual } = completed(QUESTIONNAIRE, given, context);
    const found: Found[] = [];
    await finding(found, null, () => requireFreeFiles(io, path));
    await finding(found, 'electricity', () => requirePrices(io, path, answers));
    if (found.length > 0) return refused(found);
    const weather = await finding(found, 'weather', () => weatherFor(io, path, answers, services));
    if (weather === null) return refused(found.map((one) => withNearest(one, answers)));
    await writeStart(io, path, { answers, usual, weather });
    return { status: 303, page: '', location: './' };
  }

  /** Weather that can be had where the network cannot. */
  function withNearest(found: Found, answers: Answers): Found {
    const [nearest] = nearestInClimate(placeOf(answers), context.weather);
    if (nearest === undefined) return found;
    const far = farness(placeOf(answers), nearest);
    const hint = `Of those at hand ${nearest.title} is nearest in climate, ${far}.`;
    return { ...found, words: `${found.words}. ${hint}` };
  }

  return { empty: () => ({ status: 200, page: formPage(shown(begun)) }), take };
}

/** Something wrong, by the id of a question, or by none. */
interface Found {
  readonly id: string | null;
  readonly words: string;
}

/** Does work; what its files are refused for becomes words. */
async function finding<T>(
  found: Found[],
  id: Found['id'],
  work: () => Promise<T>,
): Promise<T | null> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof InputProblems)) throw error;
    found.push({ id, words: error.problems.map(problemText).join('; ') });
    return null;
  }
}
