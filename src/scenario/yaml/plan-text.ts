import { stringify } from 'yaml';

/** A plan as it stands in a scenario file, ready to be put under `plans`. */
export const planText = (name: string, description: string, change: unknown): string =>
  stringify({ [name]: { description, change } }, { lineWidth: 100 });
