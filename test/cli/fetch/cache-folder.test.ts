import { expect, test } from 'vitest';
import { cacheFolder } from '../../../src/cli/fetch/cache-folder.ts';

// XDG Base Directory specification; what macOS and Windows document for caches (from memory).
test.each([
  ['linux', {}, '/home/a/.cache/roombalance'],
  ['linux', { XDG_CACHE_HOME: '/var/kept' }, '/var/kept/roombalance'],
  ['linux', { XDG_CACHE_HOME: 'kept' }, '/home/a/.cache/roombalance'],
  ['darwin', {}, '/home/a/Library/Caches/roombalance'],
  ['win32', { LOCALAPPDATA: '/local' }, '/local/roombalance'],
  ['win32', {}, '/home/a/AppData/Local/roombalance'],
])('on %s with %j it is %s', (platform, env, folder) => {
  expect(cacheFolder(platform, env, '/home/a')).toBe(folder);
});
