import * as z from 'zod';

/** A day of every year, "MM-DD", as month * 100 + day. */
export const dayOfYear = (says: string, eg: string) =>
  z
    .string({ error: () => MONTH_DAY })
    .transform((written, context) => {
      const day = dayOfYearOf(written);
      if (Number.isNaN(day)) context.addIssue({ code: 'custom', message: MONTH_DAY });
      return day;
    })
    .meta({ description: says, eg });

/** month * 100 + day of "MM-DD"; NaN for a day that no year has. */
function dayOfYearOf(text: string): number {
  const match = /^(\d\d)-(\d\d)$/.exec(text);
  const [month, day] = [Number(match?.[1]), Number(match?.[2])];
  return day >= 1 && day <= (LONGEST[month - 1] ?? 0) ? month * 100 + day : Number.NaN;
}

export const MONTH_DAY = 'a month and day such as "01-31"';
/** Days of each month, in leap years. */
export const LONGEST = [31, 29, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
