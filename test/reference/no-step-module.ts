/** Stands for src/engine/step-module.ts where the step shall run as JavaScript: a module that no machine compiles. */
export const STEP_MODULE = '';
export const STEP_RECORDS = {};
