import { monthAndDay } from '../../units/month-and-day.ts';
import type { Activity, Household, Person } from '../household.ts';

/** Whether a person is away on a local day. A holiday may run over the end of the year. */
export function onHoliday({ holidays }: Person, date: number): boolean {
  return holidays !== undefined && holidays.length > 0 && withinDates(holidays, date);
}

/** Whether a local day lies between dates of every year, both included; month * 100 + day. */
export function withinDates(
  dates: readonly { readonly from: number; readonly to: number }[],
  date: number,
): boolean {
  const { month, day } = monthAndDay(date);
  const today = month * 100 + day;
  return dates.some(({ from, to }) =>
    from <= to ? from <= today && today <= to : from <= today || today <= to,
  );
}

/** Whether all who live in the home are away on a local day; never where nobody lives. */
export function allOnHoliday({ people }: Household, date: number): boolean {
  const live = people.filter(({ guest }) => guest !== true);
  return live.length > 0 && live.every((person) => onHoliday(person, date));
}

/** Whether holidays let an activity take place on a local day. */
export function takesPlaceOn(
  date: number,
  { stopsFor }: Pick<Activity, 'stopsFor'>,
  household: Household,
): boolean {
  return stopsFor === undefined || !allOnHoliday(household, date);
}
