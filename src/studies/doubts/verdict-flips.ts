import { settingWords } from '../../scenario/yaml/settings.ts';
import type { Option } from '../options.ts';
import { withSettings } from '../plan-variant.ts';
import type { FlipsSetup } from './decision-flips.ts';
import { flipOf } from './decision-flips.ts';
import type { DoubtfulInput } from './doubtful-inputs.ts';
import type { Flip } from './flip.ts';

/** An input as people say it, and its unit. */
export type InputWords = (
  pointer: string,
  raw: unknown,
) => { readonly name: string; readonly unit: string };

/**
 * Doubtful inputs that turn a decision somewhere between their low and their high, with the value at
 * which they do: each is tried at both ends, and only what turns it is looked at closer.
 */
export async function verdictFlips(
  setup: FlipsSetup,
  inputs: readonly DoubtfulInput[],
  words: InputWords,
): Promise<Flip[]> {
  const flips = await Promise.all(inputs.map((input) => flipWithin(setup, input, words)));
  return flips.filter(({ value }) => value !== null);
}

async function flipWithin(
  setup: FlipsSetup,
  { path, value: today, low, high, only }: DoubtfulInput,
  words: InputWords,
): Promise<Flip> {
  const { baseline, plan, run } = setup;
  const { name, unit } = words(path, (only === 'baseline' ? baseline : plan).raw);
  // An input of one of the two only is changed there, as where its money is tried.
  const has = (option: Option): boolean =>
    only === undefined || (only === 'plan' ? option === plan : option !== plan);
  return flipOf(
    setup,
    {
      ...{ path, input: name, unit, relative: false, usual: [low, high] },
      today: Math.min(Math.max(today, low), high),
      ...{ low, high, priced: false, resolution: (high - low) / 20 },
      note: 'doubtful; by running again between its low and its high',
      at: (option, value) => {
        if (!has(option)) return option.measures;
        return run(withSettings(option.variant, [settingWords(path, String(value))]));
      },
    },
    MOST_RUNS,
  );
}

const MOST_RUNS = 6;
