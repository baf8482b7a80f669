import { describe, expect, test } from 'vitest';
import { mergePatch } from '../../../src/scenario/yaml/merge-patch.ts';
import { readSettings, withSetting } from '../../../src/scenario/yaml/settings.ts';
import { settingsFromPatch } from '../../../src/scenario/yaml/settings-from-patch.ts';

describe('a change as settings', () => {
  test('one for each leaf, with names that need it escaped or quoted', () => {
    expect(settingsFromPatch({ heating: { setpoint: 19 }, 'a/b~c': { d: null } })).toEqual([
      '/heating/setpoint=19',
      '/a~1b~0c/d=null',
    ]);
    expect(settingsFromPatch({ rooms: { 'a=b "c"': 'x' } })).toEqual(['"/rooms/a=b \\"c\\""="x"']);
  });

  test.each(['plain', 'a=b', '=', '"', '"=', 'a/b', '~=~', '\\', '\\"=', 'é=ü', '<b x="1">'])(
    'of a room named %s gives what the merge patch gives',
    (name) => {
      const raw = { home: { rooms: { [name]: { area: 9, use: 'hall' }, other: {} } } };
      const change = { home: { rooms: { [name]: { area: 12, use: null } } } };
      const laidOn = readSettings(settingsFromPatch(change)).reduce<unknown>(withSetting, raw);
      expect(laidOn).toEqual(mergePatch(raw, change));
    },
  );
});
