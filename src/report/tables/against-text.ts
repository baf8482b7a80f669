import type { AgainstLog, RoomMisfit } from '../../studies/against/against-log.ts';
import { capital } from '../../units/capital.ts';
import { figureText, signedText } from '../../units/figure-text.ts';
import { quantityWords as words } from '../quantity-words.ts';
import { type Column, columnsOf, textTable } from './text-table.ts';
import { wrapText } from './wrap-text.ts';

/** A run beside a log in plain text: sentences, a table of misfits, a table of what both mean. */
export function againstText(against: AgainstLog, width: number): string {
  const { scenario, plan, period } = against;
  const parts = [
    wrapText(
      `${scenario}, plan ${plan}: simulated beside what was logged, ${period.from} to ${period.to}, ${period.hours} hours.`,
      '',
      width,
    ),
    againstInWords(against)
      .map((sentence) => wrapText(sentence, '', width))
      .join('\n'),
    misfitTable(against.misfits, width),
    wrapText(SKILL, '', width),
    figuresTable(against, width),
    wrapText(FIGURES, '', width),
    ...(against.typical_weather ? [wrapText(TYPICAL_WEATHER, 'note: ', width)] : []),
  ];
  return parts.join('\n\n');
}

/** How near the run came, a sentence for each quantity. */
export function againstInWords({ misfits }: AgainstLog): string[] {
  const quantities = [...new Set(misfits.map(({ quantity }) => quantity))];
  return quantities.map((quantity) => {
    const own = misfits.filter((misfit) => misfit.quantity === quantity);
    const [bias, rmse] = [meanOf(own, ({ bias }) => bias), meanOf(own, ({ rmse }) => rmse)];
    const unit = own[0]!.unit;
    const better = own.filter(beatsGuessing).length;
    const side = bias > 0 ? 'above' : 'below';
    return (
      `${capital(words(quantity))}: ${figureText(Math.abs(bias))} ${unit} ${side} the log on average, off by ` +
      `${figureText(rmse)} ${unit} as a rule (RMSE); nearer than every guess from the log in ` +
      `${better} of ${own.length} ${own.length === 1 ? 'room' : 'rooms'}.`
    );
  });
}

export function beatsGuessing({ skill }: RoomMisfit): boolean {
  const known = Object.values(skill).filter((value) => value !== null);
  return known.length > 0 && known.every((value) => value > 0);
}

function misfitTable(misfits: readonly RoomMisfit[], width: number): string {
  const { figures, words: text } = columnsOf(misfits);
  return textTable(
    [
      text('room', ({ room }) => room),
      text('what', ({ quantity }) => SHORT[quantity] ?? words(quantity)),
      figures('hours', ({ hours }) => figureText(hours, 0)),
      figures('logged', ({ mean_logged }) => figureText(mean_logged)),
      figures('simu-\nlated', ({ mean_simulated }) => figureText(mean_simulated)),
      figures('bias', ({ bias }) => signedText(bias)),
      figures('RMSE', ({ rmse }) => figureText(rmse)),
      figures('skill:\nmean', ({ skill }) => skillText(skill.mean)),
      figures('\nweek', ({ skill }) => skillText(skill.same_hour_of_week)),
      figures('\nday', ({ skill }) => skillText(skill.last_day_repeated)),
    ],
    width,
    1,
  );
}

/** A run far worse than guessing is that, however far. */
const skillText = (skill: number | null): string =>
  skill !== null && skill < -WORST ? `<-${WORST}` : figureText(skill, 2);

function figuresTable({ rooms }: AgainstLog, width: number): string {
  const all = Object.entries(rooms);
  type Figures = (typeof all)[number][1]['logged'];
  const { figures, words: text } = columnsOf(all);
  const pair = (head: string, figure: (figures: Figures) => number, decimals = 0): Column =>
    figures(
      head,
      ([, { logged, simulated }]) =>
        `${figureText(figure(logged), decimals)} / ${figureText(figure(simulated), decimals)}`,
    );
  return textTable(
    [
      text('room', ([name]) => name),
      figures('hours', ([, { logged }]) => figureText(logged.hours, 0)),
      pair('too cold\n[h]', (f) => f.too_cold_hours),
      pair('too warm\n[h]', (f) => f.too_warm_hours),
      pair('too dry\n[h]', (f) => f.too_dry_hours),
      pair('too damp\n[h]', (f) => f.too_damp_hours),
      pair('corner\n>80 % [h]', (f) => f.cold_spot_hours_above_80_pct),
      pair('mould\nindex', (f) => f.mould_index_peak, 2),
    ],
    width,
    1,
  );
}

const meanOf = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((sum, one) => sum + of(one), 0) / all.length;

const WORST = 100;
const SHORT: Readonly<Record<string, string>> = {
  temperature: 'temp [°C]',
  'relative humidity': 'RH [%]',
  'vapour excess': 'excess [g/m3]',
};
export const TYPICAL_WEATHER =
  'The weather is a typical year, not that of the log: unless both are invented together, what is off here may be the weather.';
const SKILL =
  'Skill is 1 for a perfect run, 0 for one no nearer than a guess from the log itself, and below 0 for a ' +
  "worse one. Guesses: the log's mean, the same hour of other weeks, the day before repeated. Hours in gaps " +
  'of the log count nowhere. Excess is water in the room over outdoors by the weather.';
const FIGURES =
  'Logged / simulated, by the same rules and in the hours that were logged; temperatures are of the air, ' +
  'and mould starts from nothing. Corners follow from the cold spot factor of the scenario.';
