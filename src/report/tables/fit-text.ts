import type { HomeFit } from '../../fit/fit-home.ts';
import type { FittedStage } from '../../fit/fitted-stage.ts';
import type { FittedParameter } from '../../fit/stage/fit-stage.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { FORESEEN, fitOpening, fitWords } from './fit-words.ts';
import { foreseenText } from './foreseen-text.ts';
import { rangeDecimals } from './range-decimals.ts';
import { type Column, columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** What a log tells of a home: words first, then parameters, then what the fit leaves. */
export function fitText(fit: HomeFit, width: number): string {
  const parameters = fit.stages.flatMap(({ fit: { parameters } }) => parameters);
  const reliable = fit.reliable;
  const parts: readonly (readonly [string, readonly string[]])[] = [
    ['', [wrapText(fitOpening(fit), '', width)]],
    ...fitWords(fit).map(
      ({ head, items }) =>
        [
          head,
          head === FORESEEN
            ? [foreseenText(fit.foreseen, width)]
            : items.map((line) => wrapText(line, '- ', width)),
        ] as const,
    ),
    [
      reliable ? 'Parameters' : 'Parameters (not to be relied on)',
      [parameterTable(parameters, reliable, width)],
    ],
    ['What the fit leaves (fitted hours)', fit.stages.map((stage) => residualTable(stage, width))],
  ];
  return parts
    .filter(([, lines]) => lines.length > 0)
    .map(([head, lines]) => (head === '' ? lines.join('\n') : `${head}\n${lines.join('\n')}`))
    .join('\n\n');
}

function parameterTable(
  parameters: readonly FittedParameter[],
  reliable: boolean,
  width: number,
): string {
  const { figures, words } = columnsOf(parameters);
  const known = (head: string, of: 'value' | 'low' | 'high'): Column =>
    figures(head, (one) => figureText(one[of], rangeDecimals(one)));
  return textTable(
    [
      words('', ({ adjustable }) => adjustable.name),
      words('unit', ({ adjustable }) => adjustable.unit),
      figures('assumed', ({ adjustable }) => figureText(adjustable.before)),
      known('fitted', 'value'),
      ...(reliable
        ? [known('low', 'low'), known('high', 'high'), words('told', ({ told }) => told)]
        : []),
    ],
    width,
    1,
  );
}

function residualTable({ channels, fit }: FittedStage, width: number): string {
  const { words } = columnsOf(channels);
  const { figures } = columnsOf(fit.left);
  const table = textTable(
    [
      words('', ({ name, room }) => `${name}, ${room}`),
      words('unit', ({ unit }) => unit),
      figures('typical', ({ rmse }) => figureText(rmse, 2)),
      figures('bias', ({ bias }) => signedText(bias, 2)),
      figures('hour to hour', ({ rho }) => figureText(rho, 2)),
      figures('last quarter', ({ unseen }) => figureText(unseen, 2)),
    ],
    width,
  );
  const searched = `Errors as ${fit.form === 'whitened' ? 'a first-order autoregression' : 'a free run'}, ${fit.runs} runs, ${ENDED[fit.ended]}${fit.startsAgree ? '' : '; another start came to another place'}.`;
  return `${table}\n${wrapText(searched, '', width)}`;
}

const ENDED = {
  converged: 'converged',
  budget: 'stopped where its runs were used up',
  iterations: 'stopped after its last iteration',
  'no better step': 'stopped where no step was better',
} as const;
