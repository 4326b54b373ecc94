/** A worker from its own text, so that it starts from any place the page is served from. */
export function startWorker(text: string): Worker {
  const url = URL.createObjectURL(new Blob([text], { type: 'text/javascript' }));
  const worker = new Worker(url);
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
  return worker;
}
