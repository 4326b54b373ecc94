// Runs one example, away from the page: no network, no storage, and stopped from outside when it takes too long.
// The library comes before this text and has put its entry points into `self.doors`.
import { inspected } from './inspect.ts';

declare const self: {
  doors: Record<string, Record<string, unknown>>;
  onmessage: ((event: { readonly data: string }) => void) | null;
  postMessage(message: unknown): void;
  [name: string]: unknown;
};

for (const name of [
  'fetch',
  'XMLHttpRequest',
  'WebSocket',
  'WebTransport',
  'EventSource',
  'BroadcastChannel',
  'Worker',
  'importScripts',
  'indexedDB',
  'caches',
]) {
  for (let at: object | null = self; at !== null; at = Object.getPrototypeOf(at)) {
    if (Object.hasOwn(at, name))
      Object.defineProperty(at, name, { value: undefined, configurable: true, writable: true });
  }
}

const print = (...values: unknown[]): void => {
  self.postMessage({
    printed: values.map((value) => (typeof value === 'string' ? value : inspected(value))).join(' '),
  });
};
for (const name of ['log', 'info', 'warn', 'error', 'debug'] as const) console[name] = print;

self.onmessage = ({ data }) => {
  const code = data.replace(
    /\bfrom\s*(['"])(seahail(?:\/[\w/-]*)?)\1/g,
    (_, quote: string, door: string) => `from ${quote}${addressOf(door)}${quote}`,
  );
  import(moduleOf(code)).then(
    () => self.postMessage({ done: true }),
    (error: unknown) =>
      self.postMessage({
        failed: error instanceof Error ? `${error.name}: ${error.message}` : String(error),
      }),
  );
};

/** A module that hands on what an entry of the library exports. */
function addressOf(door: string): string {
  const names = Object.keys(self.doors[door] ?? {});
  return moduleOf(names.map((name) => `export const ${name} = self.doors['${door}']['${name}'];`).join('\n'));
}

function moduleOf(text: string): string {
  return URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
}
