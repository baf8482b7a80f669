import type { Rule } from '../../control/automation.ts';
import type { WeekSchedule } from '../../control/household.ts';
import type { Device } from '../../home/devices.ts';
import type { Notice } from '../../home/notices.ts';
import type { CautionContext } from './caution-context.ts';
import { heatAgainstCold } from './heat-against-cold.ts';
import { heatOutOfWindows } from './heat-out-of-windows.ts';
import { waterAgainstDrying } from './water-against-drying.ts';

/** What stands beside the figures of a plan for the sake of its devices, in the order of weight. */
export function deviceCautions(context: CautionContext): Notice[] {
  return [
    ...ofKinds(context, 'stove'),
    ...starved(context),
    ...spillage(context),
    ...electrics(context),
    ...ofKinds(context, 'dehumidifier', 'humidifier', 'purifier'),
    ...waterAgainstDrying(context),
    ...heatAgainstCold(context),
    ...heatOutOfWindows(context),
    ...singleDuct(context),
    ...sleepersUnseen(context),
    ...infantRoom(context),
  ];
}

const ofKind = ({ home }: CautionContext, ...kinds: Device['does']['kind'][]): Device[] =>
  home.devices.filter(({ does }) => kinds.includes(does.kind));

/** What goes with every device of some kinds. */
const ofKinds = (context: CautionContext, ...kinds: readonly (keyof typeof OF_KIND)[]): Notice[] =>
  kinds.flatMap((kind) =>
    ofKind(context, kind).length === 0 ? [] : [{ id: kind, text: OF_KIND[kind] }],
  );

/** A stove that burns the air of a home so tight that it gets too little. */
function starved(context: CautionContext): Notice[] {
  const { home } = context;
  if (!hasOpenStove(context) || !isTight(home)) return [];
  return [{ id: 'stove-air', text: STARVED }];
}

/** Whether a stove burns the air of its room. */
const hasOpenStove = ({ home }: CautionContext): boolean =>
  home.devices.some(({ does }) => does.kind === 'stove' && does.roomAir > 0);

/** By what a blower door finds, else by a twentieth of that, which comes in over a year. */
function isTight({ leakage, rooms }: CautionContext['home']): boolean {
  const { ach50, how } = leakage;
  if (ach50 !== null) return ach50 < TIGHT;
  const volume = rooms.reduce((sum, room) => sum + room.volume, 0);
  return how.by === 'rate' && (3600 * how.flow) / volume < TIGHT / AT_50_PA;
}

/** Fans that suck can draw fumes from a flue that takes its air from the rooms. */
function spillage(context: CautionContext): Notice[] {
  const fans = ofKind(context, 'extract fan');
  if (fans.length === 0 && !hasDuct(context)) return [];
  const open = hasOpenStove(context);
  const burns = context.home.sources.some(({ fuel }) => BURNT.has(fuel));
  if (!open && !burns) return [];
  const sucks = fans.length > 0 ? 'An extract fan' : 'An air conditioner with a single duct';
  const what = open
    ? `${sucks} and a stove that draws on the rooms`
    : `${sucks} in a home with an appliance that burns fuel: if that takes its air from the rooms, the two`;
  return [
    {
      id: 'spillage',
      text: `${what} can make fumes spill, even from another room. It takes a competent person to test it, with doors and windows shut and all fans on; local rules may forbid it. No figure here tells.`,
    },
  ];
}

function electrics(context: CautionContext): Notice[] {
  const at = context.automation.deviceControls.filter(({ device, permitted }) => {
    const { kind } = context.home.devices[device]!.does;
    return (kind === 'dehumidifier' || kind === 'heater') && runsAtNight(permitted);
  });
  if (at.length === 0) return [];
  const names = [...new Set(at.map(({ device }) => context.home.devices[device]!.name))].join(', ');
  const cheap = context.nightTariff ? ' Cheap night hours are no reason to leave it alone.' : '';
  return [
    {
      id: 'unattended',
      text: `These may run while people sleep or are out: ${names}. Look for recalls, keep clear space around it, plug it straight into the wall and dry no laundry on it.${cheap}`,
    },
  ];
}

/** Whether it may run in the small hours of some day. */
function runsAtNight({ base, spells }: WeekSchedule): boolean {
  if (base > 0) return true;
  return spells.some(
    ({ from, to, value }) =>
      value > 0 && (from < SMALL_HOURS.to || to > 1440 + SMALL_HOURS.from) && to > SMALL_HOURS.from,
  );
}

const hasDuct = ({ home }: CautionContext): boolean =>
  (home.cooling ?? []).some(({ source }) => source === 'single duct');

function singleDuct(context: CautionContext): Notice[] {
  if (!hasDuct(context)) return [];
  return [
    {
      id: 'single-duct',
      text: 'An air conditioner with a single duct blows room air out, so that warm outdoor air comes in elsewhere. A window that stands ajar for its hose lets in more, and that is not counted here.',
    },
  ];
}

/** Whether a rule switches something by who is in a room. */
function switchesByPresence({ all, gate, room: own, actions }: Rule, room: number): boolean {
  const place = own ?? all.find((one) => one.room >= 0)?.room;
  const asked = all.some((one) => one.quantity === 'presence' && one.room === room);
  const gated = gate.present === 'in the room' && place === room;
  return (asked || gated) && actions.some((one) => one.do === 'setpoint' || one.do === 'device');
}

/** A gate or rule that goes by presence in a room where people sleep. */
function sleepersUnseen({ home, household, automation }: CautionContext): Notice[] {
  const rooms = home.rooms.filter((_, index) => {
    const sensor = automation.presenceSensors[index];
    const asleep = household.people.some(({ schedule }) =>
      schedule.some((stay) => stay.room === index && stay.asleep),
    );
    const gated =
      automation.thermostats[index]!.gate.present === 'in the room' ||
      automation.coolingGates?.[index]?.present === 'in the room' ||
      automation.deviceControls.some(
        ({ device, gate }) =>
          gate.present === 'in the room' && home.devices[device]!.room === index,
      ) ||
      automation.rules.some((rule) => switchesByPresence(rule, index));
    return asleep && gated && sensor !== null && (sensor?.missesAsleep ?? 0) > 0;
  });
  if (rooms.length === 0) return [];
  const names = rooms.map(({ name }) => name).join(', ');
  return [
    {
      id: 'sleepers-unseen',
      text: `Presence sensors often miss people who are asleep: heat, cooling and devices in ${names} may stop while somebody sleeps there.`,
    },
  ];
}

function infantRoom({ home, household, people }: CautionContext): Notice[] {
  const infants = household.people.filter((_, k) => people[k]?.who === 'infant');
  const beds = new Set(
    infants.flatMap(({ schedule }) =>
      schedule.filter(({ asleep }) => asleep).map(({ room }) => room),
    ),
  );
  const near = home.devices.filter(({ room, does }) => beds.has(room) && HOT_OR_WET.has(does.kind));
  if (near.length === 0) return [];
  const names = near.map(({ name }) => name).join(', ');
  return [
    {
      id: 'infant-room',
      text: `Where an infant sleeps: ${names}. Cords and hot parts out of reach, no overheating, and nothing that only a reading looks after.`,
    },
  ];
}

/**
 * At an air permeability of 5 m3/(h m2) and less even a small stove wants an air vent of its own (England,
 * Approved Document J, from memory); of most homes that is about as many air changes at 50 Pa. [1/h]
 */
const TIGHT = 5;
/** Air changes at 50 Pa over those of a year; a common rule of thumb, see the handbook's estimate. */
const AT_50_PA = 20;
const STARVED =
  'A stove that burns the air of its room needs a vent to outdoors that nobody can shut, all the more in a tight home: have a competent person see to it before draughts are stopped. Short of air, it can fill the room with smoke and carbon monoxide.';
const OF_KIND = {
  stove:
    'A stove: the alarm belongs in its room; have the chimney swept and the seals seen to, and burn dry wood. Its effect on the air that neighbours breathe is not counted here.',
  dehumidifier:
    'A dehumidifier treats a symptom: leaks and rising damp come first. It brings no fresh air, and its tank wants emptying.',
  humidifier:
    'A humidifier that is not emptied and cleaned as its maker says, every few days or daily, blows germs and scale into the room; water that it adds ends on the coldest corner.',
  purifier:
    'A purifier brings no fresh air: it removes neither what people breathe out nor carbon monoxide nor damp, and cleans less and less until its filter is changed.',
} as const;
/** Fuels that are burnt in the home. */
export const BURNT: ReadonlySet<string> = new Set(['gas', 'oil', 'lpg', 'wood']);
const HOT_OR_WET: ReadonlySet<string> = new Set(['dehumidifier', 'humidifier', 'heater', 'stove']);
/** [min] */
const SMALL_HOURS = { from: 60, to: 300 };
