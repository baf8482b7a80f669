import { createHash } from 'node:crypto';
import { serialize } from 'node:v8';
import type { PreparedPlan } from '../../scenario/prepared.ts';
import type { WatchedRun } from '../../studies/report-study.ts';

/** Runs that need not be made again. */
export interface RunStore {
  /** Another edition of the files begins: what neither it nor the last asks for is forgotten. */
  begin(weatherText: string): void;
  /** A run, which is only made where the plan or the weather is another than before. */
  of(plan: PreparedPlan, run: () => Promise<WatchedRun>): Promise<WatchedRun>;
}

/** Whoever changes one plan does not wait for the others. */
export function createRunStore(): RunStore {
  let last = new Map<string, Promise<WatchedRun>>();
  let now = new Map<string, Promise<WatchedRun>>();
  let weather = '';
  return {
    begin: (weatherText) => {
      weather = weatherText;
      last = new Map([...last, ...now].slice(-MOST));
      now = new Map();
    },
    of: (plan, run) => {
      const key = createHash('sha256').update(weather).update(serialize(plan)).digest('hex');
      const found = now.get(key) ?? last.get(key) ?? run();
      now.set(key, found);
      found.catch(() => {
        now.delete(key);
        last.delete(key);
      });
      return found;
    },
  };
}

/** Each keeps some 2 MB of hours. */
const MOST = 40;
