/** Messages of the last steps that nobody awake has been told. */
export interface Unheard {
  /** Keep a message of a rule. @param step  counted from any start @param hour  of the day it is sent at */
  add(rule: number, step: number, hour: number): void;
  /** Drop messages that are too old as a step begins. */
  forget(step: number): void;
  /** Hand over all messages, which are heard now. */
  take(heard: (rule: number, hour: number) => void): void;
  clear(): void;
}

/** @param steps  how long a message is kept: of each rule one a step */
export function createUnheard(rules: number, steps: number): Unheard {
  // One place a step, round and round: the hour of a message, or none.
  const hours = new Int8Array(rules * steps).fill(NONE);
  let count = 0;

  return {
    add(rule, step, hour) {
      hours[rule * steps + (step % steps)] = hour;
      count++;
    },
    forget(step) {
      if (count === 0) return;
      for (let at = step % steps; at < hours.length; at += steps) {
        if (hours[at] === NONE) continue;
        hours[at] = NONE;
        count--;
      }
    },
    take(heard) {
      if (count === 0) return;
      for (let at = 0; at < hours.length; at++) {
        if (hours[at] !== NONE) heard(Math.floor(at / steps), hours[at]!);
      }
      hours.fill(NONE);
      count = 0;
    },
    clear() {
      hours.fill(NONE);
      count = 0;
    },
  };
}

const NONE = -1;
