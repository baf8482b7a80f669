import type { PreparedPlan } from '../../scenario/prepared.ts';

/**
 * What comes before any answer on the air of a home whose stove lets smoke into a room; empty where
 * none does. Smoke that leaks brings carbon monoxide, which nothing here counts.
 */
export function smokeFirst({ home }: Pick<PreparedPlan, 'home'>): string {
  const leaks = home.devices.some(
    ({ does }) => does.kind === 'stove' && does.perRefuelling.some((amount) => amount > 0),
  );
  return leaks ? SMOKE_FIRST : '';
}

const SMOKE_FIRST =
  'A stove that leaks smoke leaks carbon monoxide too: before all else have its seals, flue and ' +
  'draught looked at by somebody competent, and fit a carbon-monoxide alarm; neither airing nor a ' +
  'purifier makes it safe.';
