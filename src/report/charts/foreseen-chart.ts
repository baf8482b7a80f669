import type { Foreseen } from '../../fit/withheld.ts';
import { figureText } from '../../units/figure-text.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { GUESS_WORDS, unitWords } from '../foreseen-words.ts';
import { roughText } from '../rough-text.ts';
import { besideLogChart } from './beside-log-chart.ts';
import type { Chart } from './chart.ts';

/**
 * Withheld hours of one series: what was logged, what was foreseen with its range of 95 %, and the
 * guess that came nearest.
 *
 * @param start  instant of the first withheld hour [s UTC]
 */
export function foreseenChart(
  foreseen: Foreseen,
  start: number,
  clock: LocalClock,
  width: number,
): Chart {
  const { channel, from, forecast, guess, judgement } = foreseen;
  const { rmse, guesses, bestGuess, skill, band, inside } = judgement;
  const unit = unitWords(channel.unit);
  const logged = channel.observed.subarray(channel.observed.length - forecast.length);
  const verdict = skill > 0 ? 'better than' : 'no better than';
  const by = from === 'weather alone' ? 'from the weather alone' : 'with temperatures as logged';
  return besideLogChart(
    {
      title:
        `${channel.room}: ${channel.name} foreseen ${by}, off by ${roughText(rmse)}${unit}, ` +
        `${verdict} guessing (${roughText(guesses[bestGuess])}${unit})`,
      description:
        `Hourly ${channel.name} of ${channel.room} in the withheld days: logged, foreseen ${by}, and the ` +
        `guess that came nearest, ${GUESS_WORDS[bestGuess]}. ${figureText(100 * inside, 0)} % of hours lie ` +
        `within ${figureText(band)}${unit} of what was foreseen.`,
      axis: `${channel.name} [${channel.unit === 'K' ? '°C' : channel.unit}]`,
      ...{ start, clock, band, most: channel.unit === '%' ? 100 : Number.POSITIVE_INFINITY },
      lines: [
        { name: 'logged', values: logged },
        { name: 'foreseen', values: forecast },
        { name: 'best guess', values: guess },
      ],
    },
    width,
  );
}
