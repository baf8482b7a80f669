import { CARBON_DIOXIDE } from '../../species/carbon-dioxide.ts';
import { theRoom } from '../../units/the-room.ts';
import { usualIn } from '../presets/currencies.ts';
import { firstUsedAs } from '../presets/rooms.ts';
import { livedIn, type PlanFacts } from './plan-facts.ts';
import { adviceToAir, type OfferedRule, withoutRestraint } from './rule-offers.ts';

/** A plan that fits what was answered: what it asks, what it changes, what has to be bought. */
export interface PlanOffer {
  readonly name: string;
  readonly description: string;
  readonly change: object;
  readonly purchases?: readonly { what: string; price: number; lasts: string }[];
}

/**
 * Plans that fit what bothers most, beside the home as it is lived in; the first of each matter, then
 * the second, and so on.
 *
 * @param bothers  any of cost, damp, dry, cold, heat, air, alerts
 */
export function planOffers(
  facts: PlanFacts,
  bothers: readonly string[] = BOTHERS,
  most = MOST,
): PlanOffer[] {
  const seen = new Set<string>();
  const wanted = BOTHERS.filter((one) => bothers.includes(one));
  const lists = (wanted.length > 0 ? wanted : ['cost' as const]).map((one) =>
    OFFERS[one].map((offer) => offer(facts)).filter((offer) => offer !== null),
  );
  const offers: PlanOffer[] = [];
  for (let k = 0; k < Math.max(...lists.map((list) => list.length)); k++) {
    for (const list of lists) {
      const offer = list[k];
      if (offer === undefined || seen.has(offer.name) || offers.length >= most) continue;
      seen.add(offer.name);
      offers.push(pricedIn(facts.currency, offer));
    }
  }
  return offers;
}

/** An offer with prices of pounds or euros in another currency. */
function pricedIn(currency: string, { purchases = [], ...offer }: PlanOffer): PlanOffer {
  if (purchases.length === 0) return offer;
  const usual = usualIn(currency);
  return { ...offer, purchases: purchases.map((buy) => ({ ...buy, price: usual(buy.price) })) };
}

type Offer = (facts: PlanFacts) => PlanOffer | null;

const BOTHERS = ['cost', 'damp', 'dry', 'cold', 'heat', 'air', 'alerts'] as const;
const MOST = 6;

/** A colder or warmer setting. */
const otherSetpoint =
  (name: string, step: number): Offer =>
  (facts) => {
    if (facts.setpoint === null) return null;
    const setpoint = facts.setpoint + step;
    const description = `${setpoint} °C instead of ${facts.setpoint} °C`;
    return { name, description, change: { heating: { setpoint } } };
  };

const oneColder = otherSetpoint('one-degree-less', -1);
const oneWarmer = otherSetpoint('one-degree-more', 1);

/** Heat all the time against heat when it is needed, whichever of the two is not so yet. */
const otherHours: Offer = (facts) => {
  if (!facts.heated) return null;
  if (facts.dayAndNight) {
    const hours = ['06:30-09:00', '16:30-22:30'];
    const description = 'heated mornings and evenings only, 16 °C in between';
    return { name: 'when-needed', description, change: { heating: { hours, setback: 16 } } };
  }
  const description = 'the same setting, day and night';
  return { name: 'always-on', description, change: { heating: { hours: 'always' } } };
};

/** Rooms heated only while somebody is in them. */
const whenPresent: Offer = (facts) => {
  if (!facts.heated) return null;
  const rooms = facts.rooms.length;
  const single = facts.oneThermostat;
  const valves = { what: 'smart valves', price: 45 * rooms, lasts: '8 years' };
  const sensors = { what: 'presence sensors', price: 25 * rooms, lasts: '8 years' };
  return {
    name: 'when-present',
    description: 'rooms are heated only while a sensor sees somebody in them, 16 °C otherwise',
    change: {
      heating: {
        ...(single && { thermostat: null }),
        ...{ hours: 'always', setback: 16, gate: 'when present', lead: 'learned' },
      },
    },
    purchases: [...(single ? [valves] : []), ...(facts.sensors.presence ? [] : [sensors])],
  };
};

/** Windows wide open for ten minutes, twice a day. */
const airing: Offer = () => ({
  name: 'airing',
  description: 'all windows wide open for ten minutes more, mornings and evenings',
  change: {
    household: {
      airing: {
        add: [{ rooms: 'all', at: ['07:30', '19:00'], lasts: '10 min', 'open share': '100 %' }],
      },
    },
  },
});

const dehumidifier: Offer = (facts) => {
  if (facts.has('dehumidifier')) return null;
  const room = facts.worst;
  return {
    name: 'dehumidifier',
    description: `a dehumidifier in ${theRoom(room)} keeps it near 55 %`,
    change: {
      devices: {
        dehumidifier: {
          ...{ kind: 'dehumidifier', room, label: '12 L/day', 'tested at': '30 °C/80 %' },
          ...{ power: '200 W', tank: '2 L', target: '55 %' },
        },
      },
    },
    purchases: [{ what: 'dehumidifier', price: 180, lasts: '8 years' }],
  };
};

const humidifier: Offer = (facts) => {
  if (facts.has('humidifier')) return null;
  const room = facts.worst;
  return {
    name: 'humidifier',
    description: `a humidifier in ${theRoom(room)} keeps it near 45 %`,
    change: { devices: { humidifier: { kind: 'humidifier', room, target: '45 %' } } },
    purchases: [{ what: 'humidifier', price: 60, lasts: '5 years' }],
  };
};

const bathroomFan: Offer = (facts) => {
  const bathroom = facts.rooms[firstUsedAs(facts.rooms, 'bathroom')];
  if (bathroom === undefined || facts.has('extract fan') || facts.openFlue) return null;
  return {
    name: 'bathroom-fan',
    description: 'an extract fan in the bathroom runs during showers and for half an hour after',
    change: { devices: { 'bathroom fan': showerFan(bathroom.name) } },
    purchases: [{ what: 'fan', price: 180, lasts: '12 years' }],
  };
};

const laundryOut: Offer = (facts) =>
  facts.laundry === null
    ? null
    : {
        name: 'laundry-elsewhere',
        description: 'no laundry dries indoors',
        change: { household: { activities: { drop: [facts.laundry] } } },
      };

const draughtProofing: Offer = (facts) =>
  facts.tight
    ? null
    : {
        name: 'draught-proofing',
        description: 'draught-proofed doors, windows and boards',
        change: { home: { build: { draughts: 'tight' } } },
        purchases: [{ what: 'draught-proofing', price: 400, lasts: '15 years' }],
      };

/** A plug-in heater where it is coldest. */
const heater: Offer = (facts) => {
  const room = facts.worst;
  const target = Math.max(19, facts.setpoint ?? 19);
  return {
    name: 'plug-in-heater',
    description: `a plug-in heater keeps ${theRoom(room)} at ${target} °C while somebody is in it`,
    change: {
      devices: {
        'plug-in heater': { kind: 'heater', room, power: '1500 W', target, gate: 'when present' },
      },
    },
    purchases: [{ what: 'heater', price: 60, lasts: '10 years' }],
  };
};

const purifier: Offer = (facts) => {
  if (facts.has('purifier')) return null;
  const room = facts.worst;
  return {
    name: 'purifier',
    description: `an air purifier in ${theRoom(room)}`,
    change: { devices: { purifier: { kind: 'purifier', room } } },
    purchases: [{ what: 'purifier', price: 150, lasts: '8 years' }],
  };
};

/** Shutters that close by themselves while the sun is on them and the room is warm. */
const shutters: Offer = (facts) =>
  facts.shaded
    ? null
    : {
        name: 'shutters',
        description: 'shutters outside, shut while the sun is on them and it is warm indoors',
        change: {
          blinds: [
            { rooms: 'all', kind: 'roller shutter', 'sun over': 150, 'temperature over': 23 },
          ],
        },
        purchases: [{ what: 'shutters', price: 300 * livedIn(facts).length, lasts: '20 years' }],
      };

/** Windows half open for a night, once it is cooler outdoors than in. */
const nightAir: Offer = (facts) => {
  const reading = (room: string, level: object) => ({ room, reading: 'temperature', ...level });
  return {
    name: 'night-air',
    description: 'windows half open from warm evenings on, once it is cool outdoors',
    change: {
      household: {
        airing: {
          add: [
            {
              ...{ name: 'cool night air', rooms: livedIn(facts) },
              when: [reading(facts.worst, { over: 24 }), reading('outdoors', { under: 22 })],
              until: [reading(facts.worst, { under: 21 })],
              ...{ lasts: '8 h', 'open share': '50 %' },
            },
          ],
        },
      },
    },
  };
};

const airConditioner: Offer = (facts) => {
  if (facts.cooled) return null;
  const room = facts.worst;
  return {
    name: 'air-conditioner',
    description: `an air conditioner in ${theRoom(room)}, its hot part outdoors, keeps it at 25 °C or less`,
    change: { cooling: { source: 'split', setpoint: 25, rooms: [room] } },
    purchases: [{ what: 'air conditioner', price: 1500, lasts: '12 years' }],
  };
};

/** Word when air is stale or damp and windows would help, at most four times a day. */
const advice: Offer = (facts) => ({
  name: 'advice',
  description: 'word to open windows when the air is stale, or damp and drier outside',
  ...withRules(facts, adviceToAir(livedIn(facts))),
});

/** Such advice whoever hears it: what alerts that nobody can act on come to. */
const adviceAlways: Offer = (facts) => ({
  name: 'advice-always',
  description: 'the same advice from every room, at all hours',
  ...withRules(facts, withoutRestraint(adviceToAir(livedIn(facts)))),
});

/** Rules, and sensors for them. */
function withRules(facts: PlanFacts, rules: readonly OfferedRule[]) {
  const sensors = {
    what: `${CARBON_DIOXIDE.symbol} sensors`,
    price: 50 * facts.rooms.length,
    lasts: '8 years',
  };
  return {
    change: { rules: facts.rules ? { add: rules } : rules },
    purchases: facts.sensors.air ? [] : [sensors],
  };
}

/** An extract fan that runs with showers. */
export const showerFan = (room: string): object => ({
  ...{ kind: 'extract fan', room, flow: '54 m3/h', power: '8 W' },
  ...{ runs: 'with activities', with: ['shower'], 'run on': '30 min' },
});

const OFFERS: Readonly<Record<(typeof BOTHERS)[number], readonly Offer[]>> = {
  cost: [oneColder, otherHours, whenPresent, draughtProofing],
  damp: [airing, dehumidifier, laundryOut, bathroomFan],
  dry: [humidifier, oneColder, draughtProofing],
  cold: [oneWarmer, draughtProofing, heater],
  heat: [shutters, nightAir, airConditioner],
  air: [airing, purifier, bathroomFan],
  alerts: [advice, adviceAlways],
};
