// Puts a panel under each example of a page: the example as JavaScript, to be changed and run.

import workerText from 'worker:run.worker.ts';
import { h } from '../workbench/frame/dom.ts';
import { startWorker } from '../workbench/frame/worker.ts';

declare const self: { libraryText?: string };

/** An example that has not ended by then goes in circles. */
const PATIENCE_MS = 10_000;
const MOST_LINES = 500;

const here = (document.currentScript as HTMLScriptElement).src;

document.addEventListener('DOMContentLoaded', () => {
  document.querySelectorAll<HTMLScriptElement>('script.example').forEach((data, index) => {
    const block = data.previousElementSibling;
    const edited = panel(JSON.parse(data.textContent ?? '""') as string, index + 1);
    data.after(edited);
    // What is edited takes the place of what was read.
    edited.addEventListener('toggle', () => {
      if (block instanceof HTMLElement) block.hidden = edited.open;
    });
  });
});

function panel(source: string, number: number): HTMLDetailsElement {
  const id = `example-${number}`;
  const code = h('textarea', {
    id,
    spellcheck: 'false',
    autocomplete: 'off',
    autocapitalize: 'off',
    rows: Math.min(24, source.split('\n').length + 1),
  });
  code.value = source;
  const output = h('pre', {
    class: 'printed',
    tabindex: 0,
    role: 'region',
    'aria-label': `What example ${number} prints`,
  });
  const state = h('span', { role: 'status' });
  const [run, stop, back] = ['Run', 'Stop', 'Reset'].map((word) => h('button', { type: 'button' }, word)) as [
    HTMLButtonElement,
    HTMLButtonElement,
    HTMLButtonElement,
  ];
  stop.disabled = true;
  output.hidden = true;
  let end: (how: string) => void = () => {};

  run.addEventListener('click', () => {
    void start();
  });
  stop.addEventListener('click', () => end('Stopped.'));
  back.addEventListener('click', () => {
    code.value = source;
  });
  code.addEventListener('keydown', (event) => {
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) void start();
  });

  async function start(): Promise<void> {
    end('');
    output.textContent = '';
    output.hidden = false;
    state.textContent = 'Running.';
    const worker = startWorker(`${await libraryText()}\n${workerText}`);
    const timer = setTimeout(() => end(`Stopped after ${PATIENCE_MS / 1000} seconds.`), PATIENCE_MS);
    let lines = 0;
    stop.disabled = false;
    end = (how) => {
      worker.terminate();
      clearTimeout(timer);
      stop.disabled = true;
      state.textContent = how;
      end = () => {};
    };
    worker.onerror = (event) => end(event.message);
    worker.onmessage = ({ data }: { readonly data: { printed?: string; failed?: string } }) => {
      if (data.printed !== undefined) {
        if (++lines <= MOST_LINES) output.append(`${data.printed}\n`);
        else end(`Stopped after ${MOST_LINES} lines.`);
      } else end(data.failed ?? 'Done.');
    };
    worker.postMessage(code.value);
  }

  return h(
    'details',
    { class: 'try' },
    h('summary', {}, 'Edit and run'),
    h(
      'label',
      { for: id },
      'The example as JavaScript. It runs in this browser, apart from the page and without a network; Ctrl+Enter runs it.',
    ),
    code,
    h('p', {}, run, ' ', stop, ' ', back, ' ', state),
    output,
  );
}

/** The library's text, loaded when the first example is run. */
function libraryText(): Promise<string> {
  if (self.libraryText !== undefined) return Promise.resolve(self.libraryText);
  return new Promise((resolve, reject) => {
    const script = h('script', { src: new URL('library-text.js', here).href });
    script.addEventListener('load', () => resolve(self.libraryText ?? ''));
    script.addEventListener('error', () => reject(new Error('the library could not be loaded')));
    document.head.append(script);
  });
}
