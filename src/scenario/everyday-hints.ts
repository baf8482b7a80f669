/**
 * What to write in place of a number that people write otherwise: hundredths, with a currency, a unit of
 * energy or a comma between thousands; empty for text that is none of these.
 *
 * @example numberHint('27 p') // 'write 0.27'
 */
export function numberHint(text: string): string {
  const [, before, number, after] = WITH_WORDS.exec(text.trim()) ?? [];
  if (number === undefined || (before === '' && after === '' && !number.includes(','))) return '';
  const value = Number(number.replaceAll(',', ''));
  const hundredths = HUNDREDTHS.test(after!);
  if (!hundredths && !(MONEY.test(before!.trim()) && MONEY.test(after!))) return '';
  return `write ${hundredths ? Number((value / 100).toPrecision(12)) : value}`;
}

/**
 * What to write in place of a time of day, or a span of it, by the twelve-hour clock; empty for other text.
 *
 * @example clockHint('10pm-6am') // 'write "22:00-06:00"'
 */
export function clockHint(text: string): string {
  const times = text.split(/\s*(?:-|–|\bto\b)\s*/);
  const read = times.map((time) => {
    const [, hour, minute = '00', half] = TWELVE_HOURS.exec(time.trim()) ?? [];
    if (hour === undefined || Number(hour) > 12 || Number(hour) < 1) return null;
    const hours = (Number(hour) % 12) + (half!.toLowerCase() === 'p' ? 12 : 0);
    return `${`${hours}`.padStart(2, '0')}:${minute}`;
  });
  return read.includes(null) || read.length > 2 ? '' : `write "${read.join('-')}"`;
}

const WITH_WORDS =
  /^([^\d.+-]*)(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?|\.\d+)(?![\d,.])\s*(.*)$/;
const PER_KWH = String.raw`(?:\s*(?:\/|per|a)\s*kwh)?`;
const HUNDREDTHS = new RegExp(`^(?:p|ct|cts|c|¢|cents?|pence)${PER_KWH}$`, 'i');
/** A currency by its sign or code, or nothing. */
const MONEY = new RegExp(`^(?:[A-Z]{3}|\\p{Sc})?${PER_KWH}$`, 'iu');
const TWELVE_HOURS = /^(\d{1,2})(?:[:.](\d\d))?\s*([ap])\.?m\.?$/i;
