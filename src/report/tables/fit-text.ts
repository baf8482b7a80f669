import type { FittedStage, HomeFit } from '../../fit/fit-home.ts';
import type { FittedParameter } from '../../fit/stage/fit-stage.ts';
import type { Foreseen } from '../../fit/withheld.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { fitCautions } from './fit-cautions.ts';
import { textTable } from './text-table.ts';
import { wouldTell } from './would-tell.ts';
import { wrapText } from './wrap-text.ts';

/** What a log tells of a home: words first, then parameters, then what the fit leaves. */
export function fitText(fit: HomeFit, width: number): string {
  const parameters = fit.stages.flatMap(({ fit: { parameters } }) => parameters);
  const told = parameters.filter(({ told }) => told === 'yes');
  const together = parameters.filter(({ told }) => told === 'together');
  const untold = parameters.filter(({ told }) => told === 'no');
  const items = (lines: readonly string[]) => lines.map((line) => wrapText(line, '- ', width));
  const parts: readonly (readonly [string, readonly string[]])[] = [
    ['', [wrapText(openingWords(fit), '', width)]],
    ['What your log tells', items(told.map(toldWords))],
    ['Told only together with another', items(together.map(togetherWords))],
    ['Not told by your log', items(untold.map(untoldWords))],
    ['How well it foresaw what it had not seen', items(fit.foreseen.map(foreseenWords))],
    ['Cautions', items(fitCautions(fit))],
    ['Parameters', [parameterTable(parameters, width)]],
    ['What the fit leaves (fitted hours)', fit.stages.map((stage) => residualTable(stage, width))],
  ];
  return parts
    .filter(([, lines]) => lines.length > 0)
    .map(([head, lines]) => (head === '' ? lines.join('\n') : `${head}\n${lines.join('\n')}`))
    .join('\n\n');
}

function openingWords({ title, division, foreseen, runs }: HomeFit): string {
  const { hours, withheld } = division;
  const better = foreseen.filter(({ judgement }) => judgement.skill > 0).length;
  const judged = `It foresaw the withheld days better than guessing in ${better} of ${foreseen.length} cases`;
  return (
    `${title}: ${days(withheld)} of the log fitted, ${days(hours - withheld)} withheld, ${runs} runs. ` +
    `${judged}${better === 0 ? ': this fit has no skill, and nothing should rest on it' : ''}.`
  );
}

const toldWords = ({ adjustable: { name, unit, value }, ...fitted }: FittedParameter): string =>
  `${name}: ${figureText(fitted.value)}${unitText(unit)} (${figureText(fitted.low)} to ` +
  `${figureText(fitted.high)}); ${figureText(value)} was assumed`;

function togetherWords(parameter: FittedParameter): string {
  const { mostLike } = parameter;
  const how =
    mostLike === null
      ? ''
      : `, hardly to be told from ${mostLike.name} (correlation ${figureText(mostLike.correlation, 2)})`;
  return `${toldWords(parameter)}${how}; ${wouldTell(parameter.adjustable.name)} would part them`;
}

const untoldWords = ({ adjustable: { name } }: FittedParameter): string =>
  `${name}; ${wouldTell(name)} would tell`;

function foreseenWords({ channel, from, judgement, guideline14 }: Foreseen): string {
  const { rmse, guesses, bestGuess, skill, band, inside, hours } = judgement;
  const unit = unitText(channel.unit === '%' ? 'points' : channel.unit);
  const knowing =
    from === 'weather alone' ? 'from the weather alone' : 'with temperatures as logged';
  if (hours === 0)
    return `${channel.name} of ${channel.room}: nothing was logged there to compare with`;
  const verdict = skill > 0 ? 'better than' : 'no better than';
  return (
    `${channel.name} of ${channel.room}, ${knowing}: off by ${figureText(rmse, 2)}${unit}, ${verdict} ` +
    `${GUESSES[bestGuess]} (${figureText(guesses[bestGuess], 2)}${unit}); ` +
    `${figureText(100 * inside, 0)} % of hours within the stated ${figureText(band, 1)}${unit}${ofMean(guideline14)}`
  );
}

const ofMean = (found: Foreseen['guideline14']): string =>
  found === null
    ? ''
    : `; CV(RMSE) ${figureText(100 * found.cvRmse, 0)} %, NMBE ${signedText(100 * found.nmbe, 1)} %`;

function parameterTable(parameters: readonly FittedParameter[], width: number): string {
  const of = (cell: (parameter: FittedParameter) => string) => parameters.map(cell);
  return textTable(
    [
      { head: '', cells: of(({ adjustable }) => adjustable.name), align: 'left' },
      { head: 'unit', cells: of(({ adjustable }) => adjustable.unit), align: 'left' },
      { head: 'assumed', cells: of(({ adjustable }) => figureText(adjustable.value)) },
      { head: 'fitted', cells: of(({ value }) => figureText(value)) },
      { head: 'low', cells: of(({ low }) => figureText(low)) },
      { head: 'high', cells: of(({ high }) => figureText(high)) },
      { head: 'told', cells: of(({ told }) => told), align: 'left' },
    ],
    width,
    1,
  );
}

function residualTable({ channels, fit }: FittedStage, width: number): string {
  const of = (cell: (left: FittedStage['fit']['left'][number]) => string) => fit.left.map(cell);
  const table = textTable(
    [
      { head: '', cells: channels.map(({ name, room }) => `${name}, ${room}`), align: 'left' },
      { head: 'unit', cells: channels.map(({ unit }) => unit), align: 'left' },
      { head: 'typical', cells: of(({ rmse }) => figureText(rmse, 2)) },
      { head: 'bias', cells: of(({ bias }) => signedText(bias, 2)) },
      { head: 'hour to hour', cells: of(({ rho }) => figureText(rho, 2)) },
      { head: 'last quarter', cells: of(({ unseen }) => figureText(unseen, 2)) },
    ],
    width,
  );
  const searched = `Errors as ${fit.form === 'whitened' ? 'a first-order autoregression' : 'a free run'}, ${fit.runs} runs, ${ENDED[fit.ended]}${fit.startsAgree ? '' : '; another start came to another place'}.`;
  return `${table}\n${wrapText(searched, '', width)}`;
}

const days = (hours: number): string => `${figureText(hours / 24, 0)} days`;
const unitText = (unit: string): string =>
  unit === '' || unit.startsWith('/') ? unit : ` ${unit}`;

const GUESSES = {
  mean: 'its mean so far',
  week: 'the same hour of other weeks',
  day: 'the last day repeated',
} as const;
const ENDED = {
  converged: 'converged',
  budget: 'stopped where its runs were used up',
  iterations: 'stopped after its last iteration',
  'no better step': 'stopped where no step was better',
} as const;
