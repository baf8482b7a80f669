/** Id of a picture's element in a page, and of its file where it is drawn alone. */
export type PictureId = `${'picture' | 'beside' | 'withheld'}-${string}`;

/** Pictures that a page has once at most, but for those of rooms. */
export const PICTURE = {
  tradeOff: 'picture-trade-off',
  money: 'picture-money',
  alerts: 'picture-air-alerts',
  draws: 'picture-draws',
  doubt: 'picture-doubt',
} as const satisfies Readonly<Record<string, PictureId>>;

/** The picture of a species that the air carries. @param k  its number among them, from 0 */
export const ofAir = (k: number): PictureId => `picture-air-${k + 1}`;

/** Whether a picture is of what the air carries, or of the alerts about it. */
export const isOfAir = (id: PictureId): boolean => id.startsWith('picture-air-');

/** Id of a picture as it is with what is asked about, beside the one without. */
export const withPurchase = (id: PictureId): PictureId => `${id}-with`;
