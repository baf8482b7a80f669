import { mean } from 'simple-statistics';
import type { FittedParameter } from '../../src/fit/stage/fit-stage.ts';
import type { Foreseen } from '../../src/fit/withheld.ts';
import { figureText, signedText } from '../../src/units/figure-text.ts';
import type { Twin } from './twins.ts';
import { UNLIKE } from './unlike.ts';

/** docs/accuracy.md: how often ranges hold the truth, and how well withheld days are foreseen. */
export function accuracyPage(every: readonly Twin[]): string {
  const twins = every.filter(({ kind }) => kind === 'alike');
  const all = twins.flatMap(rangesOf);
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
  const kinds = [...new Set(every.map(({ kind }) => kind))];
  const judged = kinds.flatMap((kind) => judgedRows(every.filter((twin) => twin.kind === kind)));
  const held = kinds.slice(1).map((kind) => {
    const own = every.filter((twin) => twin.kind === kind);
    return `${UNLIKE[kind]!.words}: ${share(own.flatMap(holdsOf))}`;
  });
  const runs = twins.map(({ fit }) => fit.runs);
  return `# How accurate a fit is

Written by \`UPDATE_ACCURACY=1 npx vitest run test/fit/twins.test.ts\`, which takes a quarter of an hour.

Twins are invented flats of two rooms whose every value is drawn from what is assumed of such homes, logged for
35 days every half-hour by sensors with errors of 0.1 K and 0.8 points that hang together (0.8 from hour to hour), and
fitted without knowing. The last seven days are withheld. Simulator and model are one, so this judges the search, its
ranges and its forecasts; only the twins of the last rows depart from the model, in one way each. Real homes depart in all
of them at once.

## Parameters

${twins.length} twins that are as the model. The least widths of ranges (\`least\` of an adjustable) and the ways of the search were chosen on other twins, so
the shares below are of homes that nobody tuned to.

Of all ${all.length} ranges of 95 %, ${share(all.map(({ holds }) => holds))} hold the truth; of the ${told.length} that the log tells, ${share(told.map(({ holds }) => holds))}. A fit took
${figureText(median(runs), 0)} runs (${Math.min(...runs)} to ${Math.max(...runs)}).

| parameter | fits | told | bias, median | error, median | ranges that hold the truth |
|---|---|---|---|---|---|
${rows.join('\n')}

Bias and error of what is above 0 are in the logarithm, in percent.
${
  held.length === 0
    ? ''
    : `
Where the truth departs from the model, parameters stand for more than their names say, and fewer ranges hold the
truth. Of all ranges of 95 %:

${held.map((line) => `- ${line}`).join('\n')}
`
}
## Withheld days

| twins | what | error, median | of the scenario alone | best guess, median | better than guessing | hours inside the band |
|---|---|---|---|---|---|---|
${judged.join('\n')}

The error counts what was foreseen: the fitted scenario's run with the error that each hour of the day repeated in the
fitted days, where that helped in days which the search had not seen. Medians are over rooms.
`;
}

/** Ranges of a twin beside its hidden values. */
const rangesOf = ({ fit, hidden }: Twin) =>
  fit.stages.flatMap((stage) =>
    stage.fit.parameters.map((parameter) => {
      const value = hidden.get(parameter.adjustable.name)!;
      return { parameter, value, holds: parameter.low <= value && value <= parameter.high };
    }),
  );

const holdsOf = (twin: Twin): boolean[] => rangesOf(twin).map(({ holds }) => holds);

/** How well twins of one kind are foreseen, a row for each quantity and what was known. */
function judgedRows(twins: readonly Twin[]): string[] {
  const foreseen = twins.flatMap(({ fit }) => fit.foreseen);
  return ASKED.flatMap(([name, from, words]) => {
    const own = foreseen.filter((one) => one.channel.name === name && one.from === from);
    if (own.length === 0) return [];
    const unit = name === 'temperature' ? 'K' : 'points';
    const middle = (of: (one: Foreseen) => number) => `${figureText(median(own.map(of)))} ${unit}`;
    const cells = [
      `${twins.length}, ${UNLIKE[twins[0]!.kind]!.words}`,
      words,
      middle(({ judgement }) => judgement.rmse),
      middle(({ alone }) => alone.rmse),
      middle(({ judgement: { guesses, bestGuess } }) => guesses[bestGuess]),
      share(own.map(({ judgement }) => judgement.skill > 0)),
      `${figureText(100 * mean(own.map(({ judgement }) => judgement.inside)), 0)} %`,
    ];
    return [`| ${cells.join(' | ')} |`];
  });
}

const ASKED = [
  ['relative humidity', 'logged temperature', 'humidity, from the logged temperature'],
  ['relative humidity', 'weather alone', 'humidity, from the weather alone'],
  ['temperature', 'weather alone', 'temperature, from the weather alone'],
] as const;

/** A parameter without its room. */
const kindOf = ({ adjustable: { name } }: FittedParameter): string => name.replace(/ \(.*\)$/, '');

const share = (each: readonly boolean[]): string =>
  `${figureText((100 * each.filter(Boolean).length) / each.length, 0)} %`;

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
