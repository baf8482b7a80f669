/** How errors of a run that follow each other are taken: see `weigh`. */
export type ErrorForm = 'free run' | 'whitened' | 'restarted';

export const ERROR_FORMS: readonly ErrorForm[] = ['free run', 'whitened', 'restarted'];
