import type { UncheckedMapping } from '../checks/tolerant-readers.ts';
import { mapping } from '../checks/tolerant-readers.ts';
import { validate } from '../validate.ts';
import { mergePatch } from '../yaml/merge-patch.ts';

/**
 * A change of a scenario that has a name of its own, such as `raiseSetpoints`: a merge patch
 * (RFC 7386). Studies pass it on and never look inside; only this folder knows the keys it sets.
 */
export type Edit = UncheckedMapping;

/** One edit that does what two do, the second laid on the first. */
export const bothEdits = (first: Edit, second: Edit): Edit => mapping(mergePatch(first, second));

/** Whether the edited scenario would still be a scenario. @param raw a scenario as plain values */
export const isLegalEdit = (raw: unknown, edit: Edit): boolean =>
  validate(mergePatch(raw, edit)).data !== null;
