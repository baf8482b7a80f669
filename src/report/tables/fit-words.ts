import type { HomeFit } from '../../fit/fit-home.ts';
import type { FittedParameter } from '../../fit/stage/fit-stage.ts';
import type { Foreseen } from '../../fit/withheld.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { GUESS_WORDS, unitWords } from '../foreseen-words.ts';
import { fitCautions } from './fit-cautions.ts';
import { namesInWords, wouldTell } from './fit-kinds.ts';
import { rangeDecimals } from './range-decimals.ts';
import { rangesRestOn } from './ranges-rest-on.ts';

/** Sentences under a heading. */
export interface FitWords {
  readonly head: string;
  readonly items: readonly string[];
}

/** Heading of what a log tells. */
const TOLD = 'What your log tells';

/** Heading of the same values where none of them is a finding. */
const ENDED = 'Where the search ended; not findings, not to be relied on';

/** What stands above the values that the log tells, or where nothing was understood, above those of the search. */
export const toldHead = (fit: HomeFit): string => (fit.reliable ? TOLD : ENDED);

/** Heading of what is said of the withheld hours. */
export const FORESEEN = 'How well it foresaw what it had not seen';

/** What a log tells and does not tell, how well it foresaw what it had not seen, and what to beware of. */
export function fitWords(fit: HomeFit): FitWords[] {
  const parameters = fit.stages.flatMap(({ fit: { parameters } }) => parameters);
  const of = (told: FittedParameter['told']) => parameters.filter((each) => each.told === told);
  const ranges = rangesRestOn(fit);
  const rest = ranges === null ? [] : [ranges];
  const told = fit.reliable
    ? [
        { head: TOLD, items: [...of('yes').map(toldWords), ...rest] },
        {
          head: 'Told only together with another',
          items: of('together').map(togetherWords(fit.logged)),
        },
      ]
    : [{ head: ENDED, items: [...of('yes'), ...of('together')].map(endedWords) }];
  return [
    ...told,
    { head: 'Not told by your log', items: of('no').map(untoldWords(fit.logged)) },
    {
      head: 'What the names mean',
      items: namesInWords(parameters.map(({ adjustable }) => adjustable.kind)),
    },
    { head: FORESEEN, items: fit.foreseen.map(foreseenWords) },
    { head: 'Cautions', items: fitCautions(fit) },
  ].filter(({ items }) => items.length > 0);
}

/** How much was fitted, and whether it foresaw the rest. */
export const fitOpening = (fit: HomeFit): string =>
  `${fit.title}: ${fitExtent(fit)} ${fitFinding(fit)}`;

/** How much was fitted. */
export const fitExtent = ({ division: { hours, withheld }, runs }: HomeFit): string =>
  `${days(withheld)} of the log fitted, ${days(hours - withheld)} withheld, ${runs} runs.`;

/** Whether it foresaw what was withheld. */
export function fitFinding({ foreseen, skilled }: HomeFit): string {
  const better = foreseen.filter(({ judgement }) => judgement.skill > 0).length;
  const alone = foreseen.filter((each) => each.alone.skill > 0).length;
  const judged = `It foresaw the withheld days better than guessing in ${better} of ${foreseen.length} cases`;
  if (better === 0) return `${judged}: this fit has no skill, and nothing should rest on it.`;
  if (skilled) return `${judged}.`;
  const why =
    better === alone
      ? ': the'
      : `. Without the usual error of each hour of the day, which is added to what is foreseen, it did so in ${alone}: the`;
  return `${judged}${why} home itself is not understood, and its values should not be relied on.`;
}

/** A value without a range: what stands for something else has none. */
const endedWords = ({ adjustable, ...fitted }: FittedParameter): string => {
  const { unit, before, value } = adjustable;
  const found = figureText(fitted.value, rangeDecimals(fitted));
  return `${withParts(adjustable)}: ${found}${unitWords(unit)}; ${wasWords(before, value)}`;
};

/** The name of a parameter, with the parts of the building that a factor of heat loss moves. */
export function withParts({ name, places }: FittedParameter['adjustable']): string {
  const parts = places.flatMap(({ part }) => part ?? []);
  return parts.length === 0 ? name : `${name} (of ${andList(parts)})`;
}

function toldWords({ adjustable, ...fitted }: FittedParameter): string {
  const { unit, before, value, ...prior } = adjustable;
  const name = withParts(adjustable);
  const was = wasWords(before, value);
  if (before !== value && fitted.high < prior.low) {
    return `${name}: as good as none (${figureText(fitted.high)}${unitWords(unit)} at most); nothing was said of it`;
  }
  const decimals = rangeDecimals(fitted);
  const range = `(${figureText(fitted.low, decimals)} to ${figureText(fitted.high, decimals)})`;
  return `${name}: ${figureText(fitted.value, decimals)}${unitWords(unit)} ${range}; ${was}`;
}

/** What is taken only where somebody gives it was not assumed: nobody said it, and it was none. */
const wasWords = (before: number, value: number): string =>
  before === value ? `${figureText(value)} was assumed` : 'nothing was said of it';

const togetherWords = (logged: HomeFit['logged']) => (parameter: FittedParameter) => {
  const { mostLike } = parameter;
  const how =
    mostLike === null
      ? ''
      : `, hardly to be told from ${mostLike.name} (correlation ${figureText(mostLike.correlation, 2)})`;
  return `${toldWords(parameter)}${how}; ${wouldTell(parameter.adjustable, logged)} would part them`;
};

const untoldWords =
  (logged: HomeFit['logged']) =>
  ({ adjustable }: FittedParameter): string =>
    `${adjustable.name}; ${wouldTell(adjustable, logged)} would tell`;

function foreseenWords({ channel, from, judgement, alone, guideline14 }: Foreseen): string {
  const { rmse, guesses, bestGuess, skill, band, inside, hours } = judgement;
  const unit = unitWords(channel.unit);
  const knowing =
    from === 'weather alone' ? 'from the weather alone' : 'with temperatures as logged';
  if (hours === 0)
    return `${channel.name} of ${channel.room}: nothing was logged there to compare with`;
  const habit =
    alone.rmse === rmse
      ? ''
      : ` (${figureText(alone.rmse)}${unit} without the error that each hour of the day repeats)`;
  const verdict = skill > 0 ? 'better than' : 'no better than';
  return (
    `${channel.name} of ${channel.room}, ${knowing}: off by ${figureText(rmse)}${unit}${habit}, ${verdict} ` +
    `${GUESS_WORDS[bestGuess]} (${figureText(guesses[bestGuess])}${unit}); ` +
    `${figureText(100 * inside, 0)} % of hours within the stated ${figureText(band)}${unit}${ofMean(guideline14)}`
  );
}

const ofMean = (found: Foreseen['guideline14']): string =>
  found === null
    ? ''
    : `; CV(RMSE) ${figureText(100 * found.cvRmse, 0)} %, NMBE ${signedText(100 * found.nmbe, 1)} %`;

const days = (hours: number): string => `${figureText(hours / 24, 0)} days`;
