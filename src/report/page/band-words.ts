/** Band of a room's humidity, such as "40 to 60 %". */
interface RoomBand {
  readonly name: string;
  readonly text: string;
}

/** "relative humidity outside 40 to 60 % (pantry 0 to 70 %)": the band of most rooms, then those of others. */
export function bandWords(rooms: readonly RoomBand[]): string {
  const many = (text: string): number => rooms.filter((room) => room.text === text).length;
  const usual = rooms.toSorted((a, b) => many(b.text) - many(a.text))[0]?.text ?? '';
  const others = rooms.filter(({ text }) => text !== usual);
  const besides = others.map(({ name, text }) => `${name} ${text}`).join(', ');
  return `relative humidity outside ${usual}${besides === '' ? '' : ` (${besides})`}`;
}
