import type { Foreseen } from '../../fit/withheld.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { type Column, columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** How well withheld hours were foreseen: a line a series, with temperatures as logged, then without. */
export function foreseenText(foreseen: readonly Foreseen[], width: number): string {
  const parts = FROM.flatMap(({ from, head }) => {
    const those = foreseen.filter((each) => each.from === from);
    return those.length === 0 ? [] : [`${head}\n${tableOf(those, width)}`];
  });
  const whole = foreseen.flatMap(({ channel, guideline14 }) =>
    guideline14 === null
      ? []
      : [
          `${channel.name} of ${channel.room}: CV(RMSE) ${figureText(100 * guideline14.cvRmse, 0)} %, NMBE ${signedText(100 * guideline14.nmbe, 1)} %.`,
        ],
  );
  const below = [...whole, LEGEND].map((line) => wrapText(line, '', width));
  return [...parts, below.join('\n')].join('\n\n');
}

function tableOf(foreseen: readonly Foreseen[], width: number): string {
  const { figures, words } = columnsOf(foreseen);
  const judged = (head: string, cell: (each: Foreseen) => string): Column =>
    figures(head, (each) => (each.judgement.hours === 0 ? '-' : cell(each)));
  const guess = judged('guess', ({ judgement: { guesses, bestGuess } }) =>
    figureText(guesses[bestGuess]),
  );
  const marks = foreseen.map(({ judgement: { hours, bestGuess } }) =>
    hours === 0 ? '' : bestGuess,
  );
  return textTable(
    [
      words('', ({ channel: { name, room } }) => `${name}, ${room}`),
      words('unit', ({ channel }) => channel.unit),
      judged('off by', ({ judgement: { rmse } }) => figureText(rmse)),
      judged('bare', ({ alone }) => figureText(alone.rmse)),
      { ...guess, marks },
      judged('better', ({ judgement: { skill } }) => (skill > 0 ? 'yes' : 'no')),
      judged('band', ({ judgement: { band } }) => figureText(band)),
      judged('in it', ({ judgement: { inside } }) => `${figureText(100 * inside, 0)} %`),
    ],
    width,
    1,
  );
}

const FROM = [
  { from: 'logged temperature', head: 'With temperatures as logged' },
  { from: 'weather alone', head: 'From the weather alone' },
] as const;

const LEGEND =
  'off by: root mean square error. bare: that without the mean error of each hour of the day, which is ' +
  'added where it helps, never to heat. guess: the error of the best of three guesses: the mean so far, the same hour of ' +
  'other weeks (week), the last day again (day). better: than that guess. band: half the width that should ' +
  'hold 95 % of the hours. in it: the hours that it held.';
