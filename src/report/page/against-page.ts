import type { AgainstLog, HoursBesideLog } from '../../studies/against/against-log.ts';
import { capital } from '../../units/capital.ts';
import { type LocalClock, toLocal } from '../../units/local-clock.ts';
import { againstChart } from '../charts/against-chart.ts';
import { dateText } from '../charts/in-words.ts';
import { quantityWords } from '../quantity-words.ts';
import { againstInWords, beatsGuessing, TYPICAL_WEATHER } from '../tables/against-text.ts';
import { drawTwice } from './draw-twice.ts';
import { figure } from './figure.ts';
import type { PageOwn } from './fit-page.ts';
import { html } from './html.ts';
import { list, type Section } from './section.ts';
import { stillPage } from './still-page.ts';

/** A run beside a log in words and pictures: a section for each quantity, a picture for each room. */
export async function againstPage(
  against: AgainstLog,
  hours: HoursBesideLog,
  clock: LocalClock,
  own: PageOwn,
): Promise<string> {
  const { misfits, period, scenario, plan } = against;
  const drawn = await drawTwice(
    misfits.map((misfit, k) => ({
      id: `beside-${k + 1}`,
      at: (width) => againstChart(misfit, hours, clock, width),
    })),
  );
  const nearer = misfits.filter(beatsGuessing).length;
  const day = (seconds: number) => dateText(toLocal(clock, seconds));
  const [begins, ends] = [period.from, period.to].map((instant) => Date.parse(instant) / 1000);
  const quantities = [...new Set(misfits.map(({ quantity }) => quantity))];
  const said: Section = {
    id: 'told',
    title: 'In words',
    body: list([...againstInWords(against), ...(against.typical_weather ? [TYPICAL_WEATHER] : [])]),
  };
  return stillPage({
    title: `${scenario}: simulated beside what was logged`,
    about: `Plan ${plan}, ${day(begins!)} to ${day(ends! - 1)}, ${period.hours} hours.`,
    finding: `The simulation comes nearer to the log than every guess in ${nearer} of ${misfits.length} series.`,
    sections: [
      said,
      ...quantities.map(
        (quantity, k): Section => ({
          id: `quantity-${k + 1}`,
          title: capital(quantityWords(quantity)),
          body: html`<div class="grid">${drawn.filter((_, n) => misfits[n]!.quantity === quantity).map(figure)}</div>`,
        }),
      ),
    ],
    ...own,
  });
}
