import * as z from 'zod';
import { OPEN_GATE } from '../../control/automation.ts';
import { choice, either, list } from './fields.ts';

const GATES = [
  'always',
  'when present',
  'when somebody is home',
  'when windows are closed',
] as const;

const WORDS = `one of: ${GATES.join(', ')}; or a list of them, all of which must hold`;

/** When something may act: by the presence sensors, by the windows of the room, or at any time. */
export const gate = (says: string) =>
  either(
    [choice(GATES, 'One condition'), list(choice(GATES, 'One condition'), WORDS, 'All of them')],
    WORDS,
    says,
    { eg: 'when somebody is home', usual: 'always' },
  ).transform((given, context) => {
    const words = [given].flat();
    if (words.length === 0 || (words.includes('always') && words.length > 1)) {
      context.addIssue({ code: 'custom', message: `${WORDS}; always stands alone` });
      return z.NEVER;
    }
    if (words[0] === 'always') return OPEN_GATE;
    const windowsShut = words.includes('when windows are closed');
    if (words.includes('when present')) return { present: 'in the room', windowsShut } as const;
    if (words.includes('when somebody is home'))
      return { present: 'at home', windowsShut } as const;
    return { present: 'no matter', windowsShut } as const;
  });
