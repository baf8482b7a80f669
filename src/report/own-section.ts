/** Whether a notice is told in a section of its own, so that lists of notices leave it out. */
export const hasOwnSection = (id: string): boolean => OWN.some((begin) => id.startsWith(begin));

/** What ids of such notices begin with. */
export const FRESH_AIR = 'fresh-air-';
const OWN = ['handbook-cross-check-', FRESH_AIR];
