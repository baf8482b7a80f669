import { describe, expect, test } from 'vitest';
import { preparePlan } from '../../../src/scenario/prepare-plan.ts';
import { useInName, useOfName } from '../../../src/scenario/presets/rooms.ts';
import { completed } from '../../../src/scenario/start/question.ts';
import { QUESTIONNAIRE } from '../../../src/scenario/start/questionnaire.ts';
import { scenarioText } from '../../../src/scenario/start/write-scenario.ts';
import { readOnce } from '../read-once.ts';

describe('what a room is for, by its name', () => {
  test.each([
    [
      'bathroom',
      [
        ...[
          'Bad',
          'Gäste-WC',
          'Badezimmer',
          'salle de bains',
          'Badkamer',
          'en-suite',
          'baño',
          'aseo',
        ],
      ],
    ],
    [
      'bedroom',
      [
        ...['Schlafzimmer', 'Kinderzimmer 2', 'Chambre', 'slaapkamer', 'Box room', 'Sovrum'],
        ...['cuarto de los niños', 'Cuarto 2', 'habitacion', 'camera', 'logeerkamer', 'barnrum'],
      ],
    ],
    ['kitchen', ['Küche', 'Kueche', 'Wohnküche', 'keuken', 'Cucina']],
    ['utility', ['Waschküche', 'bijkeuken', 'utility']], // though a kitchen stands in their names
    ['dining', ['Esszimmer', 'salle à manger']],
    ['hall', ['Flur', 'hallway', 'Corridor', 'gang', 'upstairs landing', 'recibidor']],
    ['study', ['Arbeitszimmer', 'home office', 'Büro']],
    ['storage', ['Keller', 'store room', 'Abstellraum']],
    ['living', ['Wohnzimmer', 'Lounge', 'woonkamer']],
  ])('%s', (use, names) => {
    expect(names.map(useOfName)).toEqual(names.map(() => use));
    expect(names.map(useInName)).toEqual(names.map(() => use));
  });

  test('in either way in which Unicode writes an umlaut', () => {
    expect(useInName('Ku\u0308che')).toBe('kitchen');
    expect(useInName('Bu\u0308ro')).toBe('study');
  });

  test('a short word counts only where it stands alone', () => {
    expect(useInName('badminton')).toBeNull();
    expect(useInName('Ganges')).toBeNull();
    expect(useOfName('Ganges')).toBe('living');
  });
});

describe('a first scenario', () => {
  const answered = (kind: string) => {
    const rooms = 'Wohnzimmer 20, Bad 5, Erker 4';
    const { answers } = completed(QUESTIONNAIRE, { kind, rooms }, { weather: [] });
    return scenarioText(answers, { weather: 'w.csv', schema: 's', usual: [], remark: null });
  };

  test('says which use is a guess', () => {
    expect(answered('flat')).toContain('    Bad: { use: bathroom, floor area: 5 }\n');
    expect(answered('flat')).toContain(
      '    Erker: { use: living, floor area: 4 } # its name does not tell its use; put in what it is\n',
    );
  });

  test('puts a flat under the roof, or on the ground', () => {
    expect(answered('flat')).not.toMatch(/above|below/);
    expect(answered('flat under the roof')).toContain('    shape: flat\n');
    expect(answered('flat under the roof').match(/above: roof/g)).toHaveLength(3);
    expect(answered('flat on the ground floor').match(/below: ground/g)).toHaveLength(3);
  });

  test('leads rooms upstairs to the hall below where there is none upstairs', () => {
    const doors = (rooms: string) => {
      const given = { kind: 'detached', rooms };
      const { answers } = completed(QUESTIONNAIRE, given, { weather: [] });
      const text = scenarioText(answers, { weather: 'w', schema: 's', usual: [], remark: null });
      return [...text.matchAll(/between: \[ ([^\]]*) \]/g)].map((found) => found[1]);
    };
    expect(doors('living 20, hall 8 / dressing 5, bedroom 14')).toEqual([
      ...['living, hall', 'dressing, hall', 'bedroom, hall'],
    ]);
    expect(doors('living 20, hall 8 / bedroom 14, landing 5')).toEqual([
      ...['hall, landing', 'living, hall', 'bedroom, landing'],
    ]);
    expect(doors('lounge 20, kitchen 8 / bedroom 14')).toEqual([
      ...['kitchen, lounge', 'bedroom, lounge'],
    ]);
  });

  test('puts rooms upstairs over those below that have room for them', () => {
    const rooms = 'living 20, kitchen 9, hall 10 / bedroom 16, study 9, bathroom 6';
    const { answers } = completed(QUESTIONNAIRE, { kind: 'detached', rooms }, { weather: [] });
    const text = scenarioText(answers, { weather: 'w', schema: 's', usual: [], remark: null });
    expect([...text.matchAll(/^ +(\w+): .* over: (\w+)/gm)].map(([, a, b]) => [a, b])).toEqual([
      ['bedroom', 'living'],
      ['study', 'kitchen'],
      ['bathroom', 'hall'], // 4 m2 are left over the living room, none over the kitchen
    ]);
  });

  test('lets a room that just fits stand over no larger hall', () => {
    const given = { kind: 'detached', rooms: 'living 10, hall 12 / bedroom 10, landing 3' };
    const { answers } = completed(QUESTIONNAIRE, given, { weather: [] });
    const text = scenarioText(answers, { weather: 'w', schema: 's', usual: [], remark: null });
    expect(text).toMatch(/bedroom: .* over: living/);
    expect(text).toMatch(/landing: .* over: hall/);
  });

  test.each(['3', '4', '5', '6'])('has no room over nothing in a usual house of %s', (size) => {
    const { answers } = completed(QUESTIONNAIRE, { kind: 'detached', size }, { weather: [] });
    const text = scenarioText(answers, { weather: 'w', schema: 's', usual: [], remark: null });
    const scenario = readOnce(text, 'h.yaml');
    const { cautions } = preparePlan(scenario, {
      ...{ plan: null, set: ['/site/elevation=30'], files: new Map() },
    });
    expect(cautions.filter(({ id }) => id === 'levels-apart')).toEqual([]);
    const lived = Object.keys(
      (scenario.yaml.value as { home: { rooms: object } }).home.rooms,
    ).filter((name) => /bedroom|living|dining/.test(name));
    expect(lived).toHaveLength(Number(size));
  });
});
