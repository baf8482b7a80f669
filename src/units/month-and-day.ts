/** Calendar month, January = 1, and day of the month of a local day number. */
export function monthAndDay(date: number): { month: number; day: number } {
  // Years are counted from March, so that a leap day ends one; 400 years always have as many days.
  const day = (((date + DAYS_TO_EPOCH) % DAYS_OF_ERA) + DAYS_OF_ERA) % DAYS_OF_ERA;
  const century = Math.min(3, Math.floor(day / DAYS_OF_CENTURY));
  const inCentury = day - century * DAYS_OF_CENTURY;
  const four = Math.floor(inCentury / DAYS_OF_FOUR);
  const inFour = inCentury - four * DAYS_OF_FOUR;
  const ofYear = inFour - Math.min(3, Math.floor(inFour / 365)) * 365;
  // From March on, five months in turn have 153 days.
  const month = Math.floor((5 * ofYear + 2) / 153);
  return {
    month: month < 10 ? month + 3 : month - 9,
    day: ofYear - Math.floor((153 * month + 2) / 5) + 1,
  };
}

/** From the first of March of the year 0 to the first of January 1970, in the Gregorian calendar. */
const DAYS_TO_EPOCH = 719_468;
const DAYS_OF_ERA = 146_097;
const DAYS_OF_CENTURY = 36_524;
const DAYS_OF_FOUR = 1461;
