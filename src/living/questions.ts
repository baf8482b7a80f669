/** The questions of a first scenario, which a page asks by the same rules as a terminal. */
export { answersOfForm, type FormField, formFields, SHOWN } from '../scenario/start/form-fields.ts';
export { QUESTIONNAIRE } from '../scenario/start/questionnaire.ts';
export type { StartContext } from '../scenario/start/start-context.ts';
