import { type KnownSpecies, SPECIES } from '../species/species-table.ts';
import type { LoggedQuantity, ReadingKind } from './log.ts';

/** What the program knows of a quantity that homes log. */
export interface LoggedQuantityFacts {
  readonly name: LoggedQuantity;
  /** Inside the program. */
  readonly unit: string;
  /** Name in the middle of a sentence. */
  readonly words: string;
  /** Numbers beyond these are no readings. [unit] */
  readonly range: readonly [number, number];
  /** Of readings in its own unit; a unit of energy or volume makes it a meter. */
  readonly reading: ReadingKind;
  /** How headers of columns call it, in small letters and digits with single blanks. */
  readonly called: RegExp;
}

/** The facts of a quantity by its name, or undefined for none. */
export const factsOf = (name: string): LoggedQuantityFacts | undefined =>
  LOGGED_QUANTITIES.find((facts) => facts.name === name);

/** Any of some whole words, between blanks, so that letters with accents belong to them. */
function anyOf(...forms: readonly string[]): RegExp {
  return new RegExp(`(?<![^ ])(${forms.join('|')})(?![^ ])`);
}

const HOUSE: readonly LoggedQuantityFacts[] = [
  {
    ...{ name: 'dew point', unit: '°C', words: 'dew point', range: [-60, 60] },
    ...{ reading: 'instant', called: /\bdew ?point\b|\bdew\b/ },
  },
  {
    ...{ name: 'valve opening', unit: '-', words: 'valve opening', range: [0, 1] },
    ...{ reading: 'state', called: /\bvalve\b/ },
  },
  {
    ...{ name: 'heating electricity', unit: 'W', words: 'electricity of heating', range: [0, 1e5] },
    ...{
      reading: 'instant',
      called:
        /\bheat ?pump( (outdoor|indoor) unit)? (electric(ity|al)?|power|energy|consumption|input|meter)\b|\bheating electric(ity|al)?\b|\belectric(al)? (heating|heaters?|radiators?)\b/,
    },
  },
  {
    ...{ name: 'heating power', unit: 'W', words: 'heating power', range: [0, 1e5] },
    ...{
      reading: 'instant',
      called:
        /\b(heat ?pump|heating|heat|radiator|heater) (power|output|heat|thermal|meter|energy|w|kw|kwh)\b/,
    },
  },
  {
    ...{ name: 'relative humidity', unit: '%', words: 'relative humidity', range: [0, 105] },
    ...{
      reading: 'instant',
      called: anyOf(
        '(relative )?humidity|r ?h|(rel )?hum|humid',
        '(rel |relative )?(außen|aussen)?(luft|raum)?feucht(e|igkeit)',
        'humedad( relativa)?|umidità( relativa)?|humidité( relative)?',
        '(relatieve )?(lucht)?vochtigheid|(luft)?fukt(ighet)?|(luft)?fugtighed',
      ),
    },
  },
  {
    ...{ name: 'temperature', unit: '°C', words: 'temperature', range: [-60, 70] },
    ...{
      reading: 'instant',
      called: anyOf(
        'temp(eratur[ea]?)?|t|celsius|fahrenheit|température|temperatuur',
        '((außen|aussen|innen)?luft|raum|innen|außen|aussen|ute|inne)temperatur|(binnen|buiten|kamer)temperatuur',
      ),
    },
  },
  {
    ...{ name: 'window', unit: '-', words: 'window', range: [0, 1] },
    ...{
      reading: 'state',
      called: anyOf('windows?|contact|fenster|ventana|finestra|fenêtre|raam|fönster|vindue?'),
    },
  },
  {
    ...{ name: 'presence', unit: '-', words: 'presence', range: [0, 50] },
    ...{
      reading: 'state',
      called: anyOf(
        'presence|occup(ancy|ied|ants)|motion|people|persons',
        'anwesenheit|bewegung|presencia|presenza|présence',
      ),
    },
  },
  {
    ...{ name: 'gas', unit: 'W', words: 'gas', range: [0, 1e5] },
    ...{ reading: 'instant', called: anyOf('gas(zähler|zaehler|verbrauch)?') },
  },
  {
    ...{ name: 'electricity', unit: 'W', words: 'electricity', range: [-1e5, 1e5] },
    ...{
      reading: 'instant',
      called: anyOf(
        'electric(ity|al)?|mains|power|energy|meter',
        'strom(zähler|zaehler|verbrauch)?',
      ),
    },
  },
  {
    ...{ name: 'device power', unit: 'W', words: 'power of a device', range: [-1e5, 1e5] },
    ...{ reading: 'instant', called: /\bdevice power\b/ },
  },
];

/** What is known of a species that is logged, be it of the table or one that a scenario names itself. */
export const factsOfSpecies = (species: KnownSpecies): LoggedQuantityFacts => ({
  name: species.name,
  unit: species.unit,
  words: species.plainName,
  range: [0, species.limits.band * 20],
  reading: 'instant',
  called: calledLike([species.name, species.symbol, species.words, species.plainName]),
});

const OF_AIR: readonly LoggedQuantityFacts[] = SPECIES.map(factsOfSpecies);

/** Species first: "pollen count" is no count of people. */
export const LOGGED_QUANTITIES: readonly LoggedQuantityFacts[] = [...OF_AIR, ...HOUSE];

/** Any of some names, with or without blanks where letters meet digits or marks. */
function calledLike(names: readonly string[]): RegExp {
  const forms = names.map((name) =>
    name
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, ' ')
      .replaceAll(/([a-z])(?=\d)|(\d)(?=[a-z])/g, '$& ?')
      .replaceAll(' ', ' ?')
      .replaceAll('??', '?'),
  );
  return new RegExp(`\\b(${forms.join('|')})\\b`);
}
