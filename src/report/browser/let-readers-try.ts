import { AS_IT_IS } from '../../living/at-rest.ts';
import { unpackText } from '../../living/living-setup.ts';
import type { LivingAnswer, LivingFigures, LivingRequest } from '../../living/messages.ts';
import type { Trial } from '../../studies/trial/knobs.ts';
import { figureText } from '../../units/figure-text.ts';
import type { HeldTrial } from '../page/held-trial.ts';
import { atOtherPrice, triedFigures } from '../page/try-figures.ts';
import { AT_REST } from '../page/try-markup.ts';
import { drawDays } from './draw-days.ts';
import { type Runner, startRunner } from './run-again.ts';
import { showFigures } from './show-figures.ts';

/**
 * Shows the knobs, and runs the home again in workers when one is turned: first the parts of the
 * period, then all of it. Figures of before are marked until those asked for have come.
 */
export function letReadersTry(held: HeldTrial): void {
  const part = document.getElementById('try');
  if (part === null || typeof Worker === 'undefined') return;
  const knobs = knobsOf(held);
  const told = document.getElementById('try-told')!;
  part.hidden = false;
  leadTo(part);
  let runners: { readonly whole: Runner; readonly spans: Runner } | null = null;
  let turn = 0;
  /** As it is, by place: what all that is tried is compared with. */
  const before = new Map<string, LivingFigures>();
  const known = new Map<string, { is: LivingFigures; trial: Trial }>();

  const start = () => {
    const script = new Blob([unpackText(held.engine)], { type: 'text/javascript' });
    const address = URL.createObjectURL(script);
    return {
      whole: startRunner(address, held.setup),
      spans: startRunner(address, held.setup),
    };
  };

  const ask = (trial: Trial): void => {
    runners ??= start();
    const mine = ++turn;
    const rests = JSON.stringify(trial) === JSON.stringify(AS_IT_IS);
    part.classList.toggle('rest', rests);
    told.textContent = rests ? AT_REST : 'Running …';
    part.classList.add('stale');
    const chain = (k: number): void => {
      const place = held.spans[k];
      if (place === undefined) return;
      run(runners!.spans, place, trial, mine, (answer) => {
        take(place.name, trial, answer);
        chain(k + 1);
      });
    };
    chain(0);
    run(runners.whole, { name: WHOLE, span: null }, trial, mine, (answer) => {
      take(WHOLE, trial, answer);
      if ('problems' in answer) return;
      told.textContent = rests ? AT_REST : 'All figures are of what is tried.';
      part.classList.remove('stale');
    });
  };

  /**
   * Run one place; first as it is, where nobody has waited for that yet. What comes of it is told only
   * while no knob has been turned since.
   */
  function run(
    { ask: asked }: Runner,
    { name, span }: Pick<HeldTrial['spans'][number], 'name'> & Pick<LivingRequest, 'span'>,
    trial: Trial,
    mine: number,
    then: (answer: LivingAnswer) => void,
  ): void {
    const only = (answer: LivingAnswer): void => {
      if (mine === turn) then(answer);
    };
    if (before.has(name)) {
      asked({ trial, span }, only);
      return;
    }
    asked({ trial: AS_IT_IS, span }, (answer) => {
      const broken = 'problems' in answer;
      // Whatever has been turned since, these stay the figures of before.
      if (!broken) before.set(name, answer);
      if (mine !== turn) return;
      if (broken || trial === AS_IT_IS) then(answer);
      else asked({ trial, span }, only);
    });
  }

  function take(name: string, trial: Trial, answer: LivingAnswer): void {
    if ('problems' in answer) {
      told.textContent = `That cannot be run: ${answer.problems.join('; ')}.`;
      return;
    }
    known.set(name, { is: answer, trial });
    show(name);
    if (name !== WHOLE) return;
    drawDays(document.getElementById('try-lines')!, held.begins, before.get(name)!, answer);
    document.getElementById('try-command')!.textContent = commandOf(held, answer.settings);
    document.getElementById('try-plan')!.textContent = answer.plan;
  }

  function show(name: string, trial?: Trial): void {
    const found = known.get(name);
    if (found === undefined) return;
    const { is } = found;
    const was = before.get(name)!;
    const times = [found.trial.electricity, (trial ?? found.trial).electricity] as const;
    const now = atOtherPrice(is, held.offer.electricity ?? 0, times, held.years);
    showFigures(name, name === WHOLE, triedFigures(was, now, held.currency, name === WHOLE));
  }

  knobs.listen((trial) => {
    show(WHOLE, trial); // a price is known at once
    ask(trial);
  });
  document.getElementById('try-copy')!.addEventListener('click', () => {
    const text = document.getElementById('try-plan')!.textContent ?? '';
    navigator.clipboard.writeText(text).then(
      () => {
        told.textContent = 'The plan is copied.';
      },
      () => {
        told.textContent = 'This browser does not let a page copy: select the text.';
      },
    );
  });
  // The baseline is run when the knobs come into sight: nobody waits for it who reads on.
  const seen = new IntersectionObserver((entries) => {
    if (!entries.some(({ isIntersecting }) => isIntersecting) || turn > 0) return;
    seen.disconnect();
    ask(AS_IT_IS);
  });
  seen.observe(part);
}

/** What a shell takes to run the same. */
function commandOf({ file, set }: HeldTrial, settings: readonly string[]): string {
  const quoted = (word: string): string => `'${word.replaceAll("'", "'\\''")}'`;
  const words = [...set, ...settings].map((one) => ` --set ${quoted(one)}`);
  return `roombalance run ${/^[\w./-]+$/.test(file) ? file : quoted(file)}${words.join('')}`;
}

const WHOLE = 'the whole period';

interface Knobs {
  readonly listen: (turned: (trial: Trial) => void) => void;
}

function knobsOf({ offer, currency }: HeldTrial): Knobs {
  const input = (id: string) => document.getElementById(`try-${id}`) as HTMLInputElement | null;
  const number = (id: string, else_: number): number => Number(input(id)?.value ?? else_);
  const read = (): Trial => ({
    warmer: number('warmer', 0),
    night:
      offer.night !== null && number('night', offer.night) !== offer.night
        ? number('night', 0)
        : null,
    presence: input('presence')?.checked ?? false,
    airing: number('airing', 0),
    dehumidifier: input('dehumidifier')?.checked ? number('target', 55) : null,
    electricity: number('electricity', 1),
  });
  const tell = (trial: Trial): void => {
    const say = (id: string, text: string): void => {
      const output = document.getElementById(`try-${id}-told`);
      if (output !== null) output.textContent = text;
    };
    const more = `${trial.warmer < 0 ? '−' : '+'}${Math.abs(trial.warmer)} °C`;
    const at = offer.setpoint === null ? '' : `${offer.setpoint + trial.warmer} °C`;
    say('warmer', at === '' ? more : trial.warmer === 0 ? at : `${at} (${more})`);
    say('night', `${trial.night ?? (offer.night ?? 0) + trial.warmer} °C`);
    say('airing', trial.airing === 0 ? 'not besides today’s habits' : `${trial.airing} min`);
    say('target', `${number('target', 55)} %`);
    say(
      'electricity',
      `${figureText((offer.electricity ?? 0) * trial.electricity, 3)} ${currency}/kWh`,
    );
    const target = input('target');
    if (target !== null) target.disabled = trial.dehumidifier === null;
  };
  return {
    listen: (turned) => {
      const form = document.getElementById('try-form') as HTMLFormElement;
      form.reset(); // some browsers keep what was chosen before a reload
      tell(AS_IT_IS);
      form.addEventListener('submit', (event) => event.preventDefault());
      form.addEventListener('input', () => {
        const trial = read();
        tell(trial);
        turned(trial);
      });
      document.getElementById('try-reset')!.addEventListener('click', () => {
        form.reset();
        tell(AS_IT_IS);
        turned(AS_IT_IS);
      });
    },
  };
}

/** A link to the knobs among those to the sections, behind the section that they are in. */
function leadTo(part: HTMLElement): void {
  const section = part.closest('section')?.id;
  const link = document.createElement('a');
  link.href = `#${part.id}`;
  link.textContent = document.getElementById('try-title')!.textContent;
  const item = document.createElement('li');
  item.append(link);
  document.querySelector(`nav a[href="#${section}"]`)?.closest('li')?.after(item);
}
