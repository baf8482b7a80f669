/**
 * The known name that stands for what people call the same thing otherwise, such as "flat" for "apartment";
 * null where none of the known ones does.
 *
 * @param typed  in small letters, its words apart
 */
export function everydayName(typed: readonly string[], known: readonly string[]): string | null {
  const found = known.filter((name) =>
    (EVERYDAY.get(name) ?? []).some((phrase) =>
      phrase.split(' ').every((word) => typed.includes(word)),
    ),
  );
  return found.length === 1 ? found[0]! : null;
}

/** Own list of what people say, American and British. */
const EVERYDAY: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    flat: ['apartment', 'appartment', 'apartement', 'condo', 'studio', 'maisonette'],
    terrace: ['terraced', 'rowhouse', 'row house', 'townhouse'],
    'end terrace': ['end terraced'],
    'semi-detached': ['duplex'],
    detached: ['bungalow', 'single family'],
    boiler: ['furnace', 'gas', 'oil', 'combi', 'burner'],
    'direct electric': ['electric', 'electricity', 'resistance', 'storage heaters', 'infrared'],
    'district heat': ['district heating', 'district', 'heat network'],
    split: ['air conditioner', 'air conditioning', 'aircon', 'ac', 'mini split'],
    'extract fan': ['exhaust fan', 'extractor', 'extractor fan', 'bathroom fan', 'cooker hood'],
    'balanced ventilation': ['hrv', 'erv', 'mvhr', 'heat recovery'],
    purifier: ['air cleaner', 'air filter', 'hepa'],
    stove: ['fireplace', 'wood burner', 'woodburner', 'log burner'],
    'works at home': ['home office', 'remote', 'works from home'],
    'works away on weekdays': ['commutes', 'at work', 'office worker'],
    'at home': ['retired', 'housewife', 'home all day'],
    'school child': ['pupil', 'student', 'school'],
    child: ['kid', 'teenager', 'teen', 'toddler'],
    infant: ['baby', 'newborn'],
    'frail adult': ['elderly', 'pensioner', 'senior', 'ill', 'old'],
    'roller shutter': ['shutter', 'shutters', 'rolladen'],
    latitude: ['lat'],
    longitude: ['lon', 'lng', 'long'],
    timezone: ['tz', 'zone'],
    elevation: ['altitude'],
    'floor area': ['area', 'size', 'm2', 'sqm'],
    panes: ['windows', 'window', 'glass'],
    setpoint: ['temperature', 'temp', 'target', 'heat', 'heat to'],
    'frost guard': ['frost protection'],
    humidity: ['rh', 'hum'],
    temperature: ['temp'],
    tell: ['notify', 'notification', 'alert', 'alarm', 'message', 'warn', 'say'],
    run: ['start', 'turn on', 'switch on'],
    stop: ['turn off', 'switch off'],
    when: ['if', 'condition', 'conditions', 'trigger', 'triggers'],
    response: ['action', 'actions', 'do'],
  }),
);
