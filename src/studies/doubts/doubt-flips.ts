import { settingWords } from '../../scenario/yaml/settings.ts';
import { extraPerYear } from '../compare/plan-money.ts';
import { withSettings } from '../plan-variant.ts';
import { ifPossible } from '../run-failures.ts';
import { breakEven } from './break-even.ts';
import type { BeatDoubt, DoubtFlip } from './figure-doubt.ts';
import type { SampledDoubtSetup } from './sampled-runs.ts';

/**
 * Of the inputs that move the difference in money most, those whose value alone, all else as it is,
 * turns round which plan costs less. Asked only where the samples do not all say the same.
 */
export async function doubtFlips(
  { plans, inputs, run }: SampledDoubtSetup,
  p: number,
  money: BeatDoubt,
): Promise<DoubtFlip[]> {
  if (money.less + money.equal >= 1 || money.less === 0) return [];
  const strongest = money.matters
    .flatMap(({ path }) => inputs.filter((input) => input.path === path))
    .slice(0, MOST_FLIPS);
  const found = strongest.map(async (input): Promise<DoubtFlip[]> => {
    const range = input.in[p] ?? input.in[0]!;
    if (range === null) return [];
    const at = (value: number, plan: number) => {
      const words = input.in[plan] === null ? [] : [settingWords(input.path, String(value))];
      return run(withSettings(plans[plan]!, words), 0);
    };
    const decision = async (value: number) => extraPerYear(await at(value, 0), await at(value, p));
    const reach = { low: range.low, high: range.high, resolution: (range.high - range.low) / 50 };
    const today = Math.min(Math.max(range.value, range.low), range.high);
    // An end of the range may be no home by itself.
    const found = await ifPossible(() => breakEven({ ...reach, today, decision, mostRuns: 7 }));
    const value = found?.value ?? null;
    return value === null ? [] : [{ path: input.path, today, value }];
  });
  return (await Promise.all(found)).flat();
}

const MOST_FLIPS = 3;
