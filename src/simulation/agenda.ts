/** Things to come, the earliest first; of the same instant, the one that was put in first. */
export interface Agenda<T> {
  /** Puts a thing in for an instant. */
  readonly add: (at: number, thing: T) => void;
  /** Takes out the next thing; `null` when there is none. */
  readonly take: () => { readonly at: number; readonly thing: T } | null;
}

interface Entry<T> {
  readonly at: number;
  readonly order: number;
  readonly thing: T;
}

/** An empty agenda: a binary heap. */
export function createAgenda<T>(): Agenda<T> {
  const heap: Entry<T>[] = [];
  let order = 0;
  return {
    add: (at, thing) => {
      heap.push({ at, order: order++, thing });
      rise(heap);
    },
    take: () => {
      const first = heap[0];
      const last = heap.pop();
      if (first === undefined || last === undefined) return null;
      if (heap.length > 0) {
        heap[0] = last;
        sink(heap);
      }
      return first;
    },
  };
}

function isBefore<T>(one: Entry<T>, other: Entry<T>): boolean {
  return one.at < other.at || (one.at === other.at && one.order < other.order);
}

function rise<T>(heap: Entry<T>[]): void {
  let child = heap.length - 1;
  while (child > 0) {
    const parent = (child - 1) >> 1;
    if (!swapIfBefore(heap, child, parent)) return;
    child = parent;
  }
}

function sink<T>(heap: Entry<T>[]): void {
  let parent = 0;
  for (;;) {
    const left = 2 * parent + 1;
    const right = left + 1;
    if (left >= heap.length) return;
    const child =
      right < heap.length && isBefore(heap[right] as Entry<T>, heap[left] as Entry<T>) ? right : left;
    if (!swapIfBefore(heap, child, parent)) return;
    parent = child;
  }
}

function swapIfBefore<T>(heap: Entry<T>[], child: number, parent: number): boolean {
  const [lower, upper] = [heap[child] as Entry<T>, heap[parent] as Entry<T>];
  if (!isBefore(lower, upper)) return false;
  heap[parent] = lower;
  heap[child] = upper;
  return true;
}
