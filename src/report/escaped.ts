/** Text as it stands in markup, within an element or an attribute's double quotes. */
export const escaped = (text: string): string =>
  text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');

/** Without control characters, halves of characters and the two that are none: XML has no place for them. */
export const printable = (text: string): string =>
  text.replaceAll(/[^\P{Cc}\n\t]|\p{Cs}|[\uFFFE\uFFFF]/gu, ' ');
