import type { Standing } from '../../report/served/standing.ts';

/** How much of the home a page tells. */
interface Told {
  readonly plans: number;
  readonly whole: boolean;
}

/** What a page says of how it stands to its files. @param made  the page; null while there is none */
export function standingWords(
  file: string,
  { state, edition, pageOf }: Pick<Standing, 'state' | 'edition' | 'pageOf'>,
  made: Told | null,
): string {
  if (made === null) {
    return state === 'wrong' ? `${file} cannot be used as it is:` : `Reading ${file} …`;
  }
  const older = edition !== pageOf;
  if (state === 'running') return `Saved anew: the home is run again. What stands here is older.`;
  if (state === 'wrong') {
    return older
      ? 'The files cannot be used as they are now. What stands here is older, of when they last could:'
      : 'Not all plans can be run, so that this page tells of the first only:';
  }
  return made.whole
    ? `This page follows ${file} as it is saved.`
    : `A first look at ${counted(made.plans, 'plan')}; the rest and the pictures are on their way …`;
}

/** What a page is made of, and what one that is made at leisure has besides. */
export const fullerWords = (file: string, plans: number): string =>
  `This page comes from ${counted(plans, 'run')}; roombalance report ${file} also tries doubtful values, ` +
  'proposes plans, and asks whether a purchase is worth its money.';

const counted = (count: number, what: string): string =>
  `${count} ${what}${count === 1 ? '' : 's'}`;
