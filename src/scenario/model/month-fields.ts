import * as z from 'zod';
import { nearestHint } from '../../units/nearest-name.ts';
import { MONTHS, monthsOf, unknownIn } from '../month-words.ts';

/** In which months something starts, as bits. */
export const months = () =>
  z
    .union([z.string(), z.array(z.string())], { error: () => WORDS })
    .transform((written, context) => {
      const bits = monthsOf(written);
      if (Number.isNaN(bits)) {
        const unknown = unknownIn([written].flat());
        const names = [...MONTHS, ...MONTHS.map((full) => full.slice(0, 3))];
        const hint = unknown === undefined ? '' : nearestHint(unknown, names);
        const got = unknown === undefined ? 'no month at all' : JSON.stringify(unknown);
        context.addIssue({ code: 'custom', message: WORDS, params: { got, hint } });
      }
      return bits;
    })
    .meta({
      description: 'Months in which it starts: all year, a span, a month, or a list of them',
      eg: 'Oct-Apr',
      usual: 'all year',
    });

const WORDS = 'all year, a span such as May-Sep, or month names such as [Jan, Feb]';
