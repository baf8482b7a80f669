import type { HomeFit } from '../../fit/fit-home.ts';
import type { FittedStage } from '../../fit/fitted-stage.ts';
import type { FittedParameter } from '../../fit/stage/fit-stage.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { FORESEEN, fitOpening, fitWords } from './fit-words.ts';
import { foreseenText } from './foreseen-text.ts';
import { rangeDecimals } from './range-decimals.ts';
import { textTable } from './text-table.ts';
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
  const of = (cell: (parameter: FittedParameter) => string) => parameters.map(cell);
  return textTable(
    [
      { head: '', cells: of(({ adjustable }) => adjustable.name), align: 'left' },
      { head: 'unit', cells: of(({ adjustable }) => adjustable.unit), align: 'left' },
      { head: 'assumed', cells: of(({ adjustable }) => figureText(adjustable.before)) },
      { head: 'fitted', cells: of((one) => figureText(one.value, rangeDecimals(one))) },
      ...(reliable
        ? [
            { head: 'low', cells: of((one) => figureText(one.low, rangeDecimals(one))) },
            { head: 'high', cells: of((one) => figureText(one.high, rangeDecimals(one))) },
            { head: 'told', cells: of(({ told }) => told), align: 'left' as const },
          ]
        : []),
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

const ENDED = {
  converged: 'converged',
  budget: 'stopped where its runs were used up',
  iterations: 'stopped after its last iteration',
  'no better step': 'stopped where no step was better',
} as const;
