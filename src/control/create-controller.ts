import type { Home } from '../home/home.ts';
import { createAirings } from './airings.ts';
import type { Automation } from './automation.ts';
import { createConditions } from './conditions.ts';
import type { Controller } from './controller.ts';
import { createDeviceControls } from './device-controls.ts';
import type { Household } from './household.ts';
import { createPresence } from './presence.ts';
import { createRules } from './rules.ts';
import { createSensors } from './sensors.ts';
import { createMoment, turnTo } from './surroundings.ts';
import { createThermostats } from './thermostats.ts';
import { watched } from './watched.ts';
import { createWindows } from './windows.ts';

/**
 * Ties presence, sensors, habits, rules, devices and thermostats together.
 *
 * Within a step each sees what those before it made of the step: who is there; which windows stand
 * open by the clock or because somebody still holds them; readings; people who shut and open
 * windows, by habit and because a rule asks; devices; and last, with all windows known, thermostats.
 *
 * @param dt  control step [s]
 */
export function createController(
  home: Home,
  household: Household,
  automation: Automation,
  dt: number,
): Controller {
  const moment = createMoment(household);
  const presence = createPresence(home, automation, dt);
  const thermostats = createThermostats(home, household, automation, dt);
  const windows = createWindows(home, moment, dt);
  const around = { home, household, dt, moment, presence, windows };

  const asking = watched(automation);
  const sensors = createSensors(asking.conditions, around, automation.seed);
  const { met, judge } = createConditions(asking.conditions, sensors);
  const airings = createAirings(automation, asking, met, windows, around);
  const rules = createRules(automation, asking, met, windows, thermostats.asked, around);
  const devices = createDeviceControls(automation, asking, met, rules, around);
  let begin = 0;

  return {
    beginDay: (start, steps) => {
      begin = start;
      presence.beginDay(start);
      airings.beginDay(start, steps);
      devices.beginDay(start, steps);
      thermostats.beginDay(start, steps);
    },
    act: (day, s, seen, orders) => {
      turnTo(moment, day, s, begin, dt, seen);
      presence.step(day, s);
      windows.look();
      sensors.read();
      judge();
      airings.step();
      rules.step();
      windows.apply();
      devices.step(orders);
      thermostats.step(day, s, seen, presence, windows.openSince, orders);
    },
    startCounting: () => {
      airings.startCounting();
      rules.startCounting();
      devices.startCounting();
    },
    report: () => ({
      rules: rules.report(),
      airings: airings.report(),
      devices: devices.report(),
    }),
  };
}
