import { createLivingHome, type LivingHome } from '../../living/living-home.ts';
import { unpackSetup } from '../../living/living-setup.ts';
import type { LivingRequest } from '../../living/messages.ts';

// What runs in a worker of the page: first comes the setup, then requests, each with its number.

type Message =
  | { readonly setup: string }
  | { readonly id: number; readonly request: LivingRequest };

let home: LivingHome | null = null;

addEventListener('message', ({ data }: MessageEvent<Message>) => {
  if ('setup' in data) home = createLivingHome(unpackSetup(data.setup));
  else postMessage({ id: data.id, answer: home!.answer(data.request) });
});
