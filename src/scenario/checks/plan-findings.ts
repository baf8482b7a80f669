import { mergedFor, planChain } from '../plan-chain.ts';
import type { Finding } from '../unplaced-problem.ts';
import { isMapping } from '../yaml/merge-patch.ts';
import { changeFindings } from './change-findings.ts';
import { mapping, type UncheckedMapping } from './tolerant-readers.ts';

/**
 * What is wrong with plans as plans: their order, and changes that change nothing.
 *
 * @param checked  which plans to look at
 */
export function planFindings(raw: UncheckedMapping, checked: readonly string[]): Finding[] {
  const plans = mapping(raw['plans']);
  const names = Object.keys(plans);
  return checked.flatMap((name): Finding[] => {
    const at = ['plans', name];
    const { on, change } = mapping(plans[name]);
    const chain = planChain(raw, name);
    if ('missing' in chain) {
      if (chain.missing.child !== name) return [];
      const expected = `the name of another plan: ${names.filter((n) => n !== name).join(', ')}`;
      return [{ path: [...at, 'based on'], expected, names }];
    }
    if ('cycle' in chain) {
      const got = [...chain.cycle, chain.cycle[0]].join(' on ');
      return [
        { path: [...at, 'based on'], expected: 'plans that do not build on themselves', got },
      ];
    }
    if (!isMapping(change)) return [];
    const fixed = FIXED.filter((key) => key in change).map((key) => ({
      path: [...at, 'change', key],
      expected: 'a change of the home or its people',
      got: `${key}, which all plans share`,
      key: true,
    }));
    const before = mergedFor(raw, chain.names.slice(0, -1));
    const missing = changeFindings(change, before, [...at, 'change']);
    const baseline = name === names[0] && on === undefined && Object.keys(change).length === 0;
    const same =
      !baseline &&
      fixed.length + missing.length === 0 &&
      sameValue(mergedFor(raw, chain.names), before);
    if (!same) return [...fixed, ...missing];
    const expected = `a change to ${on === undefined ? 'the home as it is' : `plan ${on}`}`;
    const got = Object.keys(change).length === 0 ? 'none' : 'only what is there already';
    return [{ path: [...at, 'change'], expected, got, hint: NOTHING_HINT }];
  });
}

function sameValue(a: unknown, b: unknown): boolean {
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((item, k) => sameValue(item, b[k]));
  }
  if (!isMapping(a) || !isMapping(b)) return Object.is(a, b);
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length && keys.every((k) => k in b && sameValue(a[k], b[k]))
  );
}

const FIXED = ['plans', 'title', 'invented', 'weather', 'period', 'step', 'doubts', 'fitted'];
const NOTHING_HINT = 'only the first plan, the baseline, may have an empty change';
