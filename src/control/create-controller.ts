import type { Home } from '../home/home.ts';
import { createAirings } from './actions/airings.ts';
import { createBlinds } from './actions/blinds.ts';
import { createCoolingGates } from './actions/cooling-gates.ts';
import { createDeviceControls } from './actions/device-controls.ts';
import { createMildOpening } from './actions/open-when-mild.ts';
import { createRules } from './actions/rules.ts';
import { createThermostats } from './actions/thermostats.ts';
import { createWindows } from './actions/windows.ts';
import type { Automation } from './automation.ts';
import { createMoment, turnTo } from './control-context.ts';
import type { Controller } from './controller.ts';
import type { Household } from './household.ts';
import { indexConditions } from './sensors/condition-index.ts';
import { createPresence } from './sensors/presence.ts';
import { createSensors } from './sensors/sensors.ts';

/**
 * Ties presence, sensors, habits, rules, devices and thermostats together.
 *
 * Within a step each sees what those before it made of the step: who is there; which windows stand
 * open by the clock or because somebody still holds them; readings; people who shut and open
 * windows, by habit and because a rule asks; devices; with all windows known, thermostats and gates
 * of cooling; and blinds.
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
  const openWhenMild = createMildOpening(household, moment);
  const around = { home, household, dt, moment, presence, windows };

  const asking = indexConditions(automation);
  const sensors = createSensors(
    asking.conditions,
    around,
    automation.seed,
    automation.electricityTariff,
  );
  const { met } = sensors;
  const airings = createAirings(automation, asking, met, windows, around);
  const rules = createRules(automation, asking, met, windows, thermostats.asked, around);
  const devices = createDeviceControls(automation, asking, met, rules, around);
  const gateCooling = createCoolingGates(home, automation, around);
  const closeBlinds = createBlinds(home, automation);
  let begin = 0;

  return {
    beginDay: (start, steps) => {
      begin = start;
      presence.beginDay(start);
      airings.beginDay(start, steps);
      rules.beginDay(start, steps);
      devices.beginDay(start, steps);
      thermostats.beginDay(start, steps);
    },
    act: (day, s, observed, commands) => {
      turnTo(moment, day, s, begin, dt, observed);
      presence.step(day, s);
      windows.observe();
      sensors.read();
      airings.step();
      rules.step();
      openWhenMild(commands);
      windows.apply(commands);
      devices.step(commands);
      thermostats.step(s, observed, presence, windows.openSince, commands);
      gateCooling(commands);
      closeBlinds(observed, commands);
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
