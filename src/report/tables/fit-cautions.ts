import type { HomeFit } from '../../fit/fit-home.ts';
import { figureText } from '../../units/figure-text.ts';
import { andList } from '../../units/word-list.ts';
import { unitWords } from '../foreseen-words.ts';
import { HEAT_METERS, tradesWith } from './fit-kinds.ts';

/** What a reader should know before trusting a fit. */
export function fitCautions(fit: HomeFit): string[] {
  const { division, foreseen, cautions } = fit;
  const without = foreseen.filter(({ judgement }) => !(judgement.skill > 0));
  const short = division.hours < THREE_WEEKS;
  return [
    ...(fit.typicalWeather ? [TYPICAL] : []),
    ...(short
      ? [
          `The log and the weather have ${figureText(division.hours / 24, 0)} days in common: three weeks are the least from which habits show.`,
        ]
      : []),
    ...strangeValues(fit),
    ...unmeteredLoss(fit),
    ...otherHeat(fit),
    ...cautions,
    ...(without.length > 0 && without.length < foreseen.length
      ? [
          `Where guessing is as good (${[...new Set(without.map(({ channel }) => `${channel.name} of ${channel.room}`))].join(', ')}), do not rest a decision on the fit.`,
        ]
      : []),
  ];
}

/** Values that came out where hardly any home has them, and what they may make up for. */
function strangeValues({ stages, stated }: HomeFit): string[] {
  const strange = stages
    .flatMap(({ fit }) => fit.parameters)
    .filter(({ place, told }) => told !== 'no' && Math.abs(place) > STRANGE)
    // To have as good as none of what nobody gave is not strange.
    .filter(({ place, adjustable: { before, value } }) => place > 0 || before === value)
    .map(({ adjustable: { kind, name, unit, low, high }, value }) => {
      const usual = `${figureText(low)} to ${figureText(high)}${unitWords(unit)}`;
      return { kind, words: `${name} (${figureText(value)}, usually ${usual})` };
    });
  const may = stated.filter((one) => strange.some(({ kind }) => tradesWith(kind, one.kind)));
  if (strange.length === 0) return [];
  const it = strange.length === 1 ? 'it' : 'they';
  const instead =
    may.length === 0
      ? 'a sensor that reads wrongly, or people who live otherwise than the scenario says'
      : `something that the scenario states and the fit therefore leaves alone: ${andList(may.map(({ words }) => words))}. Put what is not known for certain under "doubts", or leave it out, and fit again`;
  return [
    `Far from what is usual: ${strange.map(({ words }) => words).join('; ')}. The home may be so, or ${it} stand${strange.length === 1 ? 's' : ''} for ${instead}.`,
  ];
}

/** Heat that is lost a kelvin, told without anybody having metered the heat that makes up for it. */
function unmeteredLoss({ stages, logged }: HomeFit): string[] {
  const loss = stages
    .flatMap(({ fit }) => fit.parameters)
    .find(({ adjustable }) => adjustable.kind === 'heat loss');
  const metered = logged.some(({ quantity }) => HEAT_METERS.includes(quantity));
  return loss === undefined || loss.told === 'no' || metered ? [] : [UNMETERED];
}

/** Heat by a meter that is far from what the fitted home uses in the same hours. */
function otherHeat({ stages, division }: HomeFit): string[] {
  return stages.flatMap(({ channels, fit }) =>
    channels.flatMap(({ quantity, observed }, c) => {
      if (quantity !== 'heating') return [];
      const known = observed
        .subarray(division.release, division.withheld)
        .filter((watts) => !Number.isNaN(watts));
      const metered = known.reduce((sum, watts) => sum + watts, 0) / known.length;
      const share = fit.left[c]!.bias / metered;
      if (!(Math.abs(share) > OTHERWISE)) return [];
      return [
        `The fitted home uses ${figureText(100 * Math.abs(share), 0)} % ${share > 0 ? 'more' : 'less'} heat than was metered (${figureText(metered)} W on average), because its temperatures ask for that. Efficiency or COP, what is taken off for hot water, the hours of heating, or what else warms the rooms may be otherwise than the scenario says: do not rest what heating costs on this fit.`,
      ];
    }),
  );
}

/** Prior standard deviations beyond which one home in several hundred lies. */
const STRANGE = 3;

const TYPICAL =
  'The weather is a typical year, not that of the log: unless both are invented together, this fit means nothing.';
/** Share of the metered heat from which on a fit is not of that meter. */
const OTHERWISE = 0.2;
const UNMETERED =
  'No heat was metered: the heat loss factor rests on what heaters, sun, people and appliances are taken to give, and may be outside its range where they give otherwise.';
const THREE_WEEKS = 21 * 24;
