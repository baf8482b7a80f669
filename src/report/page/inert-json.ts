import { withoutTurns } from '../../units/visible-text.ts';

/** Data for a script, as text that can neither end the element that holds it nor turn what is read. */
export const inertJson = (data: unknown): string =>
  withoutTurns(JSON.stringify(data))
    .replaceAll('<', '\\u003c')
    .replaceAll(
      /[\u007f-\u009f]/g,
      (one) => `\\u${one.charCodeAt(0).toString(16).padStart(4, '0')}`,
    );
