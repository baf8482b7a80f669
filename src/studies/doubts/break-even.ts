/** Value of one input at which a decision flips. */
export interface BreakEven {
  /** The value of the input; null where the decision is the same at today's value and both ends. */
  readonly value: number | null;
  /** How often the decision was asked for. */
  readonly runs: number;
}

export interface BreakEvenSetup {
  /** What the input is now, and how far it may go, `low <= today <= high`. */
  readonly today: number;
  readonly low: number;
  readonly high: number;
  /**
   * A figure whose sign is the decision, such as extra money a year: by running again, or by
   * pricing again what was run.
   */
  readonly decision: (value: number) => number | Promise<number>;
  /** Two values so near to each other that it does not matter which. */
  readonly resolution: number;
  /** Greatest number of times the decision is asked for, 3 at least. */
  readonly mostRuns: number;
}

/**
 * The value of one input at which a decision flips, found by asking again.
 *
 * Today's value and the two ends are asked first. If an end decides otherwise than today, the
 * stretch between is halved until it is as short as the resolution or the runs are used up, and a
 * straight line through its two ends gives the value; where the figure is linear that is exact,
 * however few the runs. Where the figure jumps instead, which halving shows because its ends come no
 * nearer to each other, their sizes say nothing of where, and the middle is taken. If both ends
 * decide otherwise, the nearer to today is taken. A decision that flips and flips back within the
 * range is not noticed.
 *
 * @throws RangeError for a range in disorder, a resolution that is not above 0, fewer than 3 runs,
 *   or a decision that is no number
 */
export async function breakEven(setup: BreakEvenSetup): Promise<BreakEven> {
  const { today, low, high, resolution, mostRuns } = setup;
  if (!(low <= today && today <= high)) {
    throw new RangeError(`breakEven: needs low <= today <= high, got ${low}, ${today}, ${high}`);
  }
  if (!(resolution > 0 && mostRuns >= 3)) {
    throw new RangeError('breakEven: needs a resolution above 0 and at least 3 runs');
  }
  const values = [today, low, high] as const;
  const [now, below, above] = await Promise.all(values.map((value) => ask(setup, value)));
  if (now!.says === 0) return { value: today, runs: 3 };
  const flipped = [below!, above!]
    .filter(({ says }) => Math.sign(says) !== Math.sign(now!.says))
    .sort((a, b) => Math.abs(a.at - today) - Math.abs(b.at - today));
  if (flipped.length === 0) return { value: null, runs: 3 };

  let [here, there] = [now!, flipped[0]!];
  let runs = 3;
  let before = Number.POSITIVE_INFINITY;
  while (Math.abs(there.at - here.at) > resolution && there.says !== 0 && runs < mostRuns) {
    before = Math.abs(there.says - here.says);
    const middle = await ask(setup, (here.at + there.at) / 2);
    runs++;
    if (Math.sign(middle.says) === Math.sign(here.says)) here = middle;
    else there = middle;
  }
  const jumps = there.says !== 0 && Math.abs(there.says - here.says) > JUMP * before;
  const share = jumps ? 0.5 : here.says / (here.says - there.says);
  return { value: here.at + share * (there.at - here.at), runs };
}

interface Answer {
  readonly at: number;
  readonly says: number;
}

async function ask({ decision }: BreakEvenSetup, at: number): Promise<Answer> {
  const says = await decision(at);
  if (Number.isNaN(says)) throw new RangeError(`breakEven: the decision at ${at} is no number`);
  return { at, says };
}

/** Share of the difference left after halving above which the decision jumps; a straight line leaves ½. */
const JUMP = 0.75;
