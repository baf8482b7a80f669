import type { Judgement } from './judgement.ts';

/** What was foreseen of one series, with what errors repeat every day and without. */
interface Judged {
  readonly judgement: Pick<Judgement, 'skill'>;
  readonly alone: Pick<Judgement, 'skill'>;
}

/**
 * Whether the fitted scenario alone beats guessing in most of what was foreseen, and whether its values may be
 * taken for those of the home: by habits too, something beats guessing.
 */
export function skillOf(foreseen: readonly Judged[]): { skilled: boolean; reliable: boolean } {
  const skilled = foreseen.filter(({ alone }) => alone.skill > 0).length * 2 > foreseen.length;
  return { skilled, reliable: skilled && foreseen.some(({ judgement }) => judgement.skill > 0) };
}
