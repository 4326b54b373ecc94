import workerText from 'worker:./read.worker.ts';
import { parseIdentity } from 'seahail/identity';
import type { Reading } from 'seahail/report';
import { announce } from '../frame/announce.ts';
import { inBlanks } from '../frame/blanks.ts';
import { byId, fill, h } from '../frame/dom.ts';
import { bindDrop } from '../frame/drop.ts';
import { bindFinding, bindShare, type Question } from '../frame/finding.ts';
import { findings, ledger } from '../frame/ledger.ts';
import { saveFile } from '../frame/save.ts';
import { startWorker } from '../frame/worker.ts';
import { eveningLog, eveningNetworkLog } from './example.ts';
import { callItem, faultItem, repairedItem } from './lists.ts';
import { type Entries, type FromLogReader, type ListName, PIECE, type ToLogReader } from './messages.ts';
import { placesLink } from './places-link.ts';
import { reportOf } from './report.ts';
import { timeLine } from './time-line.ts';

const NOTHING: Readonly<Record<ListName, string>> = {
  calls: 'No call in it.',
  faults: 'None.',
  repaired: 'Nothing to repair.',
};

const progress = byId<HTMLProgressElement>('progress');
let worker: Worker | null = null;
let file: File | null = null;
let read = '';
let waiting: ReturnType<typeof setTimeout> | undefined;

const form = byId<HTMLFormElement>('question');
const finding = bindFinding(form, answer);
bindShare(finding, () =>
  file === null
    ? null
    : `Not copied: a link cannot hold ${file.name}. Send the file itself, or paste the lines that matter.`,
);
byId('example').addEventListener('click', () => finding.set({ log: eveningLog }));
byId('network-example').addEventListener('click', () => finding.set({ log: eveningNetworkLog }));
byId('save').addEventListener('click', () => tell({ kind: 'repaired-log' }));
byId('stop').addEventListener('click', () => {
  finish();
  announce('Stopped.');
});
bindDrop(byId('drop'), byId<HTMLInputElement>('file'), takeFile);

function takeFile(chosen: File): void {
  file = chosen;
  finding.set({ log: '' });
}

function answer(question: Question): void {
  if ((question['log'] ?? '') !== '') file = null;
  showOwn(question['own'] ?? '');
  const what = JSON.stringify([question, file?.name, file?.lastModified]);
  if (what === read) return;
  read = what;
  clearTimeout(waiting);
  waiting = setTimeout(() => start(question), 200);
}

/** A wrong own number is said, and the log is read without it. */
function showOwn(text: string): void {
  const own = parseIdentity(text);
  const wrong = text.trim() === '' || own.ok ? [] : own.issues.map((issue) => ({ ...issue, at: ['own'] }));
  fill(
    byId('issues'),
    findings(inBlanks(form, wrong), (suggestion) => finding.set({ own: suggestion })),
  );
}

function start(question: Question): void {
  const source = file ?? question['log'] ?? '';
  if (source === '') {
    byId('answer').hidden = true;
    announce('Nothing to read yet.');
    return;
  }
  const own = parseIdentity(question['own']);
  worker?.terminate();
  worker = startWorker(workerText);
  worker.onmessage = ({ data }: { readonly data: FromLogReader }) => hear(data);
  worker.onerror = ({ message }) => {
    finish();
    announce(`The reader failed: ${message}`);
  };
  tell({
    kind: 'read',
    source,
    direction: question['direction'] as Reading<'call'>['direction'],
    unchecked: question['unchecked'] === 'yes',
    waypoints: question['waypoints'] === 'yes',
    ...(own.ok && { own: own.value.mmsi }),
  });
  progress.value = 0;
  byId('progress-line').hidden = false;
  byId('in-short').textContent =
    file === null ? 'Reading.' : `Reading ${file.name}, ${megabytes(file.size)}.`;
}

function tell(message: ToLogReader): void {
  worker?.postMessage(message);
}

function finish(): void {
  worker?.terminate();
  worker = null;
  byId('progress-line').hidden = true;
}

function hear(message: FromLogReader): void {
  if (message.kind === 'progress') {
    progress.value = message.done;
    return;
  }
  if (message.kind === 'piece') {
    append(message.list, message.entries);
    return;
  }
  if (message.kind === 'repaired-log') {
    saveFile('repaired.log', message.log, 'text/plain');
    return;
  }
  // The worker stays: it holds the rest of the lists.
  byId('progress-line').hidden = true;
  byId('answer').hidden = false;
  byId('repairing').hidden = message.cable === 'network';
  const { calls, faults } = message.totals;
  announce(
    `${plural(message.lines, 'line')}: ${plural(calls, 'call')}, ${faults} with problems${message.cut ? ', the first 32 MB' : ''}.`,
  );
  fill(
    byId('counts'),
    timeLine(message.marks, message.lines),
    countsOf(message),
    placesLink(message.places, message.own, message.last),
  );
  // One part a frame, so that the page stays responsive.
  const lists = ['calls', 'faults', 'repaired'] as const;
  inTurn([
    ...lists.map((list) => () => begin(list, message.totals[list], message.first[list])),
    () => fill(byId('report'), reportOf(message.report, message.reportCut)),
  ]);
}

function inTurn([first, ...others]: readonly (() => void)[]): void {
  if (first === undefined) return;
  first();
  requestAnimationFrame(() => setTimeout(() => inTurn(others)));
}

function countsOf({ counts, lines }: Extract<FromLogReader, { kind: 'read' }>): HTMLElement {
  const names = {
    call: 'Calls',
    expansion: 'Expansions without a call',
    'own-position': 'Own positions',
    clock: 'Clock',
    waypoint: 'Waypoints',
    target: 'Targets',
    ais: 'AIS reports',
    motion: 'Courses, speeds and headings',
    radio: 'Radio states',
    'man-overboard': 'Man overboard',
    'safety-text': 'Safety texts',
    node: 'Who is on the network',
    other: 'Other sound sentences or messages',
    damaged: 'Damaged',
  } as const;
  return ledger([
    { what: 'Lines', answer: lines.toLocaleString('en') },
    ...Object.entries(counts).map(([kind, count]) => ({
      what: names[kind as keyof typeof names],
      answer: count.toLocaleString('en'),
    })),
  ]);
}

function begin(list: ListName, total: number, first: Entries[ListName]): void {
  if (total === 0) {
    fill(byId(list), h('p', {}, NOTHING[list]));
    return;
  }
  const items = h('ol', { class: 'entries' });
  const more = h('button', {
    type: 'button',
    onclick: () => tell({ kind: 'more', list, from: items.childElementCount }),
  });
  fill(byId(list), items, h('p', {}, more));
  more.dataset['total'] = String(total);
  append(list, first);
}

function append(list: ListName, entries: Entries[ListName]): void {
  const items = byId(list).querySelector('ol');
  const more = byId(list).querySelector<HTMLButtonElement>(':scope > p > button');
  if (items === null || more === null) return;
  items.append(...itemsOf(list, entries));
  const left = Number(more.dataset['total']) - items.childElementCount;
  more.hidden = left === 0;
  more.textContent = `${Math.min(PIECE, left)} more of ${left.toLocaleString('en')}`;
}

function itemsOf(list: ListName, entries: Entries[ListName]): readonly HTMLElement[] {
  if (list === 'calls') return (entries as Entries['calls']).map(callItem);
  if (list === 'faults') return (entries as Entries['faults']).map(faultItem);
  return (entries as Entries['repaired']).map(repairedItem);
}

function plural(count: number, word: string): string {
  return `${count.toLocaleString('en')} ${word}${count === 1 ? '' : 's'}`;
}

function megabytes(size: number): string {
  return size < 100_000 ? `${Math.ceil(size / 1000)} kB` : `${(size / 1e6).toFixed(1)} MB`;
}
