import type { Readable, Writable } from 'node:stream';
import { confirm, isCancel, multiselect, select, text } from '@clack/prompts';
import { type AskedOption, type Asking, Interrupted } from './asking.ts';

/** Asks with keyboard and lists; questions go to `output`, so that standard output keeps figures only. */
export function askAtTerminal(input: Readable, output: Writable): Asking {
  const streams = { input, output };
  return {
    confirm: async (message, initialValue) =>
      given(await confirm({ message, initialValue, ...streams })),
    line: async (message, initialValue, check) => {
      const validate = (line: string | undefined) => check(line ?? '') ?? undefined;
      return given(await text({ message, initialValue, validate, ...streams }));
    },
    one: async (message, options, initialValue) =>
      given(await select({ message, options: listed(options), initialValue, ...streams })),
    several: async (message, options, initial) => {
      const initialValues = [...initial];
      const more = { initialValues, required: false, ...streams };
      return given(await multiselect({ message, options: listed(options), ...more }));
    },
  };
}

const listed = (options: readonly AskedOption[]) => options.map((option) => ({ ...option }));

/** @throws Interrupted where the person broke off */
function given<T>(answer: T): Exclude<T, symbol> {
  if (isCancel(answer)) throw new Interrupted();
  return answer as Exclude<T, symbol>;
}
