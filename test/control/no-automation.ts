import { type Automation, PLAIN_THERMOSTAT } from '../../src/control/automation.ts';

/** Control without sensors, rules or devices: thermostats follow the programme exactly. */
export function noAutomation(rooms: number): Automation {
  return {
    seed: 1,
    presenceSensors: Array.from({ length: rooms }, () => null),
    thermostats: Array.from({ length: rooms }, () => PLAIN_THERMOSTAT),
    airings: [],
    deviceControls: [],
    rules: [],
  };
}
