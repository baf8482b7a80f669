import { SPECIES } from '../../species/species-table.ts';
import { pathInWords } from './path-in-words.ts';

/** An input as somebody says it who has not seen the file, and its unit; empty for none. */
export interface InputInWords {
  readonly name: string;
  readonly unit: string;
}

/**
 * What stands at a place of a scenario, in words: the known ones as people say them, others by their
 * path.
 *
 * @param pointer  RFC 6901
 * @param raw      the scenario, as plain values
 * @example inputInWords('/home/leakage/ach50', raw) // { name: 'draughts, by a blower door', unit: 'air changes/h at 50 Pa' }
 */
export function inputInWords(pointer: string, raw: unknown): InputInWords {
  const path = pathInWords(pointer, raw);
  const [, rule, deed, what] = RESPONSE.exec(path) ?? [];
  if (rule !== undefined && deed !== undefined && what !== undefined) {
    const unit = what === 'delay' || what === 'lasts' ? 'min' : '';
    return { name: `${RESPONSES[what]} when rule "${rule}" says to ${deed}`, unit };
  }
  const steps = path.split(', ');
  const known = KNOWN.find(({ ends }) => path === ends || path.endsWith(`, ${ends}`));
  if (known === undefined) return { name: path, unit: UNITS[steps.at(-1) ?? ''] ?? '' };
  const of = path.slice(0, -known.ends.length).replace(/, $/, '').split(', ').at(-1) ?? '';
  const whose = SECTIONS.has(of) ? '' : of;
  return { name: whose === '' ? known.name : `${known.name}, ${whose}`, unit: known.unit };
}

interface Known {
  /** Last steps of the path in words. */
  readonly ends: string;
  readonly name: string;
  readonly unit: string;
}

const known = (ends: string, name: string, unit = ''): Known => ({ ends, name, unit });

const KNOWN: readonly Known[] = [
  known('humidity, bias', 'error of the humidity sensors', 'points'),
  known('temperature, bias', 'error of the temperature sensors', 'K'),
  ...(['humidity', 'temperature'] as const).flatMap((quantity) => [
    known(`sensors, ${quantity}, every`, `time between readings of ${quantity}`, 'min'),
    known(`sensors, ${quantity}, lag`, `lag of the ${quantity} sensors`, 'min'),
  ]),
  known('leakage, ach50', 'draughts, by a blower door', 'air changes/h at 50 Pa'),
  known('leakage, air changes', 'draughts', 'air changes/h'),
  known('background vents', 'trickle vents and air bricks', 'mm²'),
  known('wall u-value', 'U-value of the outer walls', 'W/m²K'),
  known('roof u-value', 'U-value of the roof', 'W/m²K'),
  known('floor u-value', 'U-value of the ground floor', 'W/m²K'),
  known('window u-value', 'U-value of the windows', 'W/m²K'),
  known('exposed floor u-value', 'U-value of floors over open air', 'W/m²K'),
  known('wall heat capacity', 'heat that walls hold', 'kJ/m²K'),
  known('window shading', 'share of the sun that is kept off windows'),
  known('open when mild', 'share of windows left open when mild'),
  known('moisture factor', 'water of people, over what is usual'),
  known('steady moisture', 'water at all hours', 'g/h'),
  known('steady heat', 'heat at all hours', 'W'),
  known('sensor, bias', 'thermostat reads too much', 'K'),
  known('emitters, power per area', 'heaters, by floor area', 'W/m²'),
  known('cold spot factor', 'cold spot factor of the walls'),
  known('party wall leakage', 'share of the draughts that comes from neighbours'),
  known('internal mass', 'heavy things in the rooms', 'kJ/m²K'),
  known('furnishing factor', 'furnishing that takes up water'),
  known('moisture buffer', 'what surfaces take up of water', 'g/m² per %'),
  known('deep moisture', 'what surfaces hold over weeks'),
  known('electricity, price', 'price of electricity', 'per kWh'),
  known('gas, price', 'price of gas', 'per kWh'),
  known('oil, price', 'price of oil', 'per kWh'),
  known('wood, price', 'price of wood', 'per kWh'),
  known('discount rate', 'interest forgone on the price', 'share a year'),
  known('awake, water', 'water from a person awake', 'g/h'),
  known('asleep, water', 'water from a person asleep', 'g/h'),
  ...SPECIES.flatMap(({ symbol, unit, sources: { body } }) =>
    (body === undefined ? [] : ['awake', 'asleep']).map((state) =>
      known(
        `${state}, ${body!.key}`,
        `${symbol} from a person ${state}`,
        unit === 'ppm' ? 'm³/h' : 'µg/h',
      ),
    ),
  ),
  known('awake, heat', 'heat from a person awake', 'W'),
  known('asleep, heat', 'heat from a person asleep', 'W'),
  known('build, front', 'direction that the front faces', '°'),
  known('panes, 0, area', 'window', 'm²'),
  known('openings, 0, area', 'part of the window that opens', 'm²'),
  known('openings, 0, height', 'height of the part of the window that opens', 'm'),
  known('window g-value', 'share of the sun that glass lets in'),
  known('window frame', 'share of the window that is frame'),
  known('window head', 'upper edge of the windows', 'm'),
  known('absorptance', 'share of the sun that outer walls take up'),
  known('albedo', 'share of the sun that the ground sends back'),
  known('home, height', 'height of the rooms', 'm'),
  known('usual airing', 'how far windows are opened, over what is usual'),
  known('tiled area', 'tiles that get wet', 'm²'),
  known('outer sides', 'sides that are outdoors'),
  known('emitters, radiant share', 'share of the heat that heaters radiate'),
  known('sensor, radiant share', 'how much of the walls a thermostat feels'),
  known('emitters, lag', 'how slowly heaters warm up', 'min'),
  known('wind station, height', 'height at which the wind was measured', 'm'),
  known('site, eaves', 'height of the eaves', 'm'),
  known('coil, temperature', 'temperature of the cooling coil', '°C'),
  known('coil, bypass factor', 'share of the air that passes the cooling coil untouched'),
  known('coil, airflow', 'air over the cooling coil', 'm³/h'),
  known('cooling, eer', 'cold a kWh of electricity gives', 'kWh/kWh'),
  known('doors, mixing', 'air that passes open doors at the least', 'm³/h'),
  known('heating, setpoint', 'thermostat', '°C'),
  known('heating, efficiency', 'efficiency of the heating'),
  known('heating, cop', 'heat a kWh of electricity gives', 'kWh/kWh'),
  known('season, mean below', 'heating begins when outdoor days are colder than', '°C'),
  known('season, cold by', 'people heat outside the season when a room is too cold by', 'K'),
  known('season, over', 'days over which the outdoor mean is taken', 'days'),
  known('target', 'target', '%'),
  known('water', 'water each time'),
  known('lasts', 'how long it takes'),
  known('energy', 'energy each time'),
  known('doors, shut', 'air that passes under shut doors', 'm³/h'),
  known('sun to air', 'share of the sun that warms the air at once'),
];

/** A response of a rule: the rule, what is to be done, and which of its numbers. */
const RESPONSE = /^rules, (.+), response, (.+), (probability|delay|lasts|open share)$/;
const RESPONSES: Readonly<Record<string, string>> = {
  probability: 'how likely somebody acts',
  delay: 'how late somebody acts',
  lasts: 'how long it lasts',
  'open share': 'how far it is opened',
};

/** Of last steps of paths that have no words of their own. */
const UNITS: Readonly<Record<string, string>> = {
  ...{ area: 'm²', height: 'm', width: 'm', power: 'W', flow: 'm³/h', lag: 'min', volume: 'm³' },
  ...{ storey: '', faces: '°', efficiency: '' },
};

/** Whose inputs need no name besides their own. */
const SECTIONS: ReadonlySet<string> = new Set([
  ...['', 'home', 'build', 'heating', 'money', 'household', 'bodies', 'sensors', 'site', 'leakage'],
  ...['electricity', 'gas', 'doors', 'rooms', 'activities', 'devices', 'cooling', 'coil'],
  'emitters',
]);
