import { figureText, signedText } from '../../units/figure-text.ts';

/** How far an estimate lies above what was simulated; 100 where the simulation has nothing. [%] */
export function differencePct(estimate: number, simulated: number): number {
  if (simulated === 0) return estimate === 0 ? 0 : 100;
  return (100 * (estimate - simulated)) / Math.abs(simulated);
}

/**
 * `differencePct` as a table has it: "+12", "30 times" where the estimate is many times as much, "-" where
 * there is too little to compare.
 *
 * @param least  of the simulation, from which on it is worth comparing [unit of both, above 0]
 */
export function differenceCell(estimate: number, simulated: number, least: number): string {
  if (Math.abs(simulated) < least) return signedText(null);
  return manyTimes(estimate, simulated) ?? signedText(differencePct(estimate, simulated), 0);
}

/** Whether methods so unlike differ by more than they may without a reason being named. */
export function needsReason(estimate: number, simulated: number, least: number): boolean {
  if (Math.abs(simulated) < least) return false;
  return Math.abs(differencePct(estimate, simulated)) > UNREMARKABLE_PCT;
}

/** "the rule of thumb is 12 % higher", "the rule of thumb is 30 times as much" */
export function differenceInWords(estimate: number, simulated: number, least: number): string {
  if (Math.abs(simulated) < least) return 'that is too little to compare';
  const times = manyTimes(estimate, simulated);
  if (times !== null) return `the rule of thumb is ${times} as much`;
  const pct = differencePct(estimate, simulated);
  if (Math.abs(pct) < 0.5) return 'the two agree';
  return `the rule of thumb is ${figureText(Math.abs(pct), 0)} % ${pct > 0 ? 'higher' : 'lower'}`;
}

/** "30 times", where an estimate is so many times what was simulated that a percentage is hard to read. */
function manyTimes(estimate: number, simulated: number): string | null {
  const factor = estimate / simulated;
  return factor >= MANY ? `${figureText(factor, 0)} times` : null;
}

/** One thing that moves the estimate away from the simulation, in the unit of both. */
export interface Effect {
  readonly size: number;
  readonly words: string;
}

/**
 * The one or two effects that do most to make the estimate differ the way it does; the second only
 * where it explains a fifth or more.
 */
export function mainReasons(effects: readonly Effect[], difference: number): string[] {
  return effects
    .filter(({ size }) => Math.sign(size) === Math.sign(difference))
    .sort((a, b) => Math.abs(b.size) - Math.abs(a.size))
    .filter(({ size }, rank) => rank === 0 || Math.abs(size) >= 0.2 * Math.abs(difference))
    .slice(0, 2)
    .map(({ words }) => words);
}

/** "Mainly, airing takes 340 kWh more than it counts; and ...", `it` being the rule of thumb. */
export function becauseOf(reasons: readonly string[]): string {
  return `The main reason${reasons.length > 1 ? 's' : ''}: ${reasons.join('; and ')}.`;
}

/** Heat [kWh], leakage [1/h] and vapour above that outdoors [g/m3] from which on they are compared; own judgement. */
export const LEAST_KWH = 1;
export const LEAST_ACH = 0.02;
export const LEAST_G_PER_M3 = 0.3;
const MANY = 10;
const UNREMARKABLE_PCT = 15;
