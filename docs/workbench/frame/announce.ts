import { byId } from './dom.ts';

let waiting: ReturnType<typeof setTimeout> | undefined;

/** Announces the answer in short: in the page at once, to screen readers when typing has paused. */
export function announce(text: string): void {
  byId('in-short').textContent = text;
  clearTimeout(waiting);
  waiting = setTimeout(() => {
    byId('said').textContent = text;
  }, 700);
}
