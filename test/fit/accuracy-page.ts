import { mean } from 'simple-statistics';
import type { FittedParameter } from '../../src/fit/stage/fit-stage.ts';
import { figureText, signedText } from '../../src/units/figure-text.ts';
import type { Twin } from './twins.ts';

/** docs/accuracy.md: how often ranges hold the truth, and how well withheld days are foreseen. */
export function accuracyPage(twins: readonly Twin[]): string {
  const all = twins.flatMap(({ fit, hidden }) =>
    fit.stages.flatMap((stage) =>
      stage.fit.parameters.map((parameter) => {
        const value = hidden.get(parameter.adjustable.name)!;
        return { parameter, value, holds: parameter.low <= value && value <= parameter.high };
      }),
    ),
  );
  const told = all.filter(({ parameter }) => parameter.told !== 'no');
  const names = [...new Set(all.map(({ parameter }) => kindOf(parameter)))];
  const rows = names.map((name) => {
    const own = all.filter(({ parameter }) => kindOf(parameter) === name);
    const [first] = own;
    const ratio = first!.parameter.adjustable.scale === 'positive';
    const errors = own.map(({ parameter, value }) =>
      ratio ? 100 * Math.log(parameter.value / value) : parameter.value - value,
    );
    const unit = ratio ? '%' : first!.parameter.adjustable.scale === 'share' ? 'share' : 'K';
    const cells = [
      name,
      String(own.length),
      share(own.map(({ parameter }) => parameter.told !== 'no')),
      `${signedText(median(errors))} ${unit}`,
      `${figureText(median(errors.map(Math.abs)))} ${unit}`,
      share(own.map(({ holds }) => holds)),
    ];
    return `| ${cells.join(' | ')} |`;
  });
  const foreseen = twins.flatMap(({ fit }) => fit.foreseen);
  const judged = ['relative humidity', 'temperature'].flatMap((name) =>
    ['logged temperature', 'weather alone'].flatMap((from) => {
      const own = foreseen.filter((one) => one.channel.name === name && one.from === from);
      if (own.length === 0) return [];
      const judgements = own.map(({ judgement }) => judgement);
      const cells = [
        `${name}, from ${from === 'weather alone' ? 'the weather alone' : 'the logged temperature'}`,
        `${figureText(median(judgements.map(({ rmse }) => rmse)))} ${own[0]!.channel.unit}`,
        `${figureText(median(judgements.map(({ guesses, bestGuess }) => guesses[bestGuess])))} ${own[0]!.channel.unit}`,
        share(judgements.map(({ skill }) => skill > 0)),
        `${figureText(100 * mean(judgements.map(({ inside }) => inside)), 0)} %`,
      ];
      return [`| ${cells.join(' | ')} |`];
    }),
  );
  const runs = twins.map(({ fit }) => fit.runs);
  return `# How accurate a fit is

Written by \`UPDATE_ACCURACY=1 npx vitest run test/fit/twins.test.ts\`, which takes some minutes.

${twins.length} twins: invented flats of two rooms whose every value is drawn from what is assumed of such homes, logged for
35 days every half-hour by sensors with errors of 0.1 K and 0.8 points that hang together (0.8 from hour to hour), and
fitted without knowing. Simulator and model are one, so this judges the search, its ranges and its forecasts, and nothing
of whether the model is like real homes. Real homes are harder. The least widths of ranges (\`least\` of an adjustable) were
chosen so that ranges of such twins hold the truth, so the shares below are no independent check of them.

Water in bursts is underestimated, and steady moisture overestimated, probably because the log reads every half-hour what
lasts ten minutes.

Of all ${all.length} ranges of 95 %, ${share(all.map(({ holds }) => holds))} hold the truth; of the ${told.length} that the log tells, ${share(told.map(({ holds }) => holds))}. A fit took
${figureText(median(runs), 0)} runs (${Math.min(...runs)} to ${Math.max(...runs)}).

| parameter | fits | told | bias, median | error, median | ranges that hold the truth |
|---|---|---|---|---|---|
${rows.join('\n')}

Bias and error of what is above 0 are in the logarithm, in percent.

| withheld days | error, median | best guess, median | better than guessing | hours inside the band |
|---|---|---|---|---|
${judged.join('\n')}
`;
}

/** A parameter without its room. */
const kindOf = ({ adjustable: { name } }: FittedParameter): string => name.replace(/ \(.*\)$/, '');

const share = (each: readonly boolean[]): string =>
  `${figureText((100 * each.filter(Boolean).length) / each.length, 0)} %`;

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
