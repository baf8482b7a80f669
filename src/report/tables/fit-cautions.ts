import type { HomeFit } from '../../fit/fit-home.ts';
import { figureText } from '../../units/figure-text.ts';

/** What a reader should know before trusting a fit. */
export function fitCautions({ division, foreseen, cautions }: HomeFit): string[] {
  const without = foreseen.filter(({ judgement }) => !(judgement.skill > 0));
  const short = division.hours < THREE_WEEKS;
  return [
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

const THREE_WEEKS = 21 * 24;
