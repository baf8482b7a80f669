import { join } from 'node:path';

/**
 * The folder that the system has for what can be fetched again.
 *
 * @param platform  as Node names it
 * @param env       of the process
 * @param home      of the person
 */
export function cacheFolder(
  platform: string,
  env: Readonly<Record<string, string | undefined>>,
  home: string,
): string {
  const set = env['XDG_CACHE_HOME'] ?? '';
  if (set.startsWith('/')) return join(set, NAME); // XDG Base Directory: relative ones are ignored
  if (platform === 'darwin') return join(home, 'Library', 'Caches', NAME);
  if (platform === 'win32')
    return join(env['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local'), NAME);
  return join(home, '.cache', NAME);
}

const NAME = 'roombalance';
