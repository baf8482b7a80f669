/**
 * What counts as fine, in words: "18 to 26 °C", "18 °C or more", "26 °C or less", "of any height", and where
 * the upper edge is another in mild weather "16 to 20 °C (26 °C in mild weather)".
 *
 * @param range  edges, infinite for none
 * @param unit   with the blank before it, such as " °C"
 * @param when   what mild weather is called
 */
export function rangeText(
  { low, high, mild }: Range,
  unit: string,
  when = 'in mild weather',
): string {
  if (mild !== undefined) return `${rangeText({ low, high }, unit)} (${mild.high}${unit} ${when})`;
  if (Number.isFinite(low)) {
    return Number.isFinite(high) ? `${low} to ${high}${unit}` : `${low}${unit} or more`;
  }
  return Number.isFinite(high) ? `${high}${unit} or less` : 'of any height';
}

interface Range {
  readonly low: number;
  readonly high: number;
  readonly mild?: { readonly high: number } | undefined;
}
