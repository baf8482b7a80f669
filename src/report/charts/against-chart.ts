import type { HoursBesideLog, RoomMisfit } from '../../studies/against/against-log.ts';
import { figureText } from '../../units/figure-text.ts';
import type { LocalClock } from '../../units/local-clock.ts';
import { quantityWords, unitOfValues } from '../quantity-words.ts';
import { roughText } from '../rough-text.ts';
import { besideLogChart } from './beside-log-chart.ts';
import type { Chart } from './chart.ts';

/** One quantity of a room, simulated beside logged. */
export function againstChart(
  misfit: RoomMisfit,
  { start, rooms, logged, simulated }: HoursBesideLog,
  clock: LocalClock,
  width: number,
): Chart {
  const { room, quantity, unit, bias, rmse, hours } = misfit;
  const words = quantityWords(quantity);
  const values = (of: HoursBesideLog['logged']): Float64Array =>
    of.rooms[rooms.indexOf(room)]!.columns.get(quantity)!.values;
  const side = bias > 0 ? 'above' : 'below';
  return besideLogChart(
    {
      title:
        `${room}: ${words} simulated ${roughText(Math.abs(bias))} ${unit} ${side} the log on average, ` +
        `off by ${roughText(rmse)} ${unit} as a rule`,
      description:
        `${words} of ${room}, logged and simulated, ${hours} hours. Logged ${figureText(misfit.mean_logged)}, ` +
        `simulated ${figureText(misfit.mean_simulated)} ${unitOfValues(unit)} on average.`,
      axis: `${words} [${unitOfValues(unit)}]`,
      ...{ start, clock, band: 0, most: Number.POSITIVE_INFINITY },
      lines: [
        { name: 'logged', values: values(logged) },
        { name: 'simulated', values: values(simulated) },
      ],
    },
    width,
  );
}
