import type { HomeFit } from '../../fit/fit-home.ts';
import { figureText } from '../../units/figure-text.ts';

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
    ...cautions,
    ...(without.length > 0 && without.length < foreseen.length
      ? [
          `Where guessing is as good (${[...new Set(without.map(({ channel }) => `${channel.name} of ${channel.room}`))].join(', ')}), do not rest a decision on the fit.`,
        ]
      : []),
  ];
}

const TYPICAL =
  'The weather is a typical year, not that of the log: unless both are invented together, this fit means nothing.';
const THREE_WEEKS = 21 * 24;
