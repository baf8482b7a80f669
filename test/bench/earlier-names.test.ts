import { expect, test } from 'vitest';
import { busyHomes } from './bench-homes.ts';

test('what the bench simulates has the earlier names of its keys beside those of today', () => {
  const { input } = busyHomes().rules;
  expect(input).toHaveProperty('leadInDays', input.spinUpDays);
  for (const person of input.household.people) {
    expect(person).toHaveProperty('stays', person.schedule);
  }
  for (const rule of input.automation!.rules) {
    expect(rule).toHaveProperty('dwell', rule.onDelay);
    for (const action of rule.actions) {
      if (action.do === 'window') expect(action).toHaveProperty('wide', action.openShare);
    }
  }
});
