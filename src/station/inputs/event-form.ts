import type { Call } from '../../call/index.ts';
import type { Issue } from '../../result/index.ts';
import { quote } from '../../result/internal.ts';
import type { StationEvent } from '../model/event.ts';
import { hasParties, hasSymbols, isNature, isRecord } from '../model/form.ts';
import { issue } from '../texts.ts';

/**
 * What an event lacks to be one, `null` when nothing. The types see to it in TypeScript; plain JavaScript and stored
 * events come without them. What a call or settings hold is looked at where they are used.
 */
export function malformationOf(event: unknown): Issue | null {
  if (!isRecord(event)) return issue('station-event-form', {}, { received: typeof event });
  const { kind } = event;
  if (typeof kind !== 'string' || !Object.hasOwn(parts, kind))
    return issue('station-event-kind', {}, { received: quote(String(kind)) });
  const needed = Object.entries({ at: isNumber, ...parts[kind as StationEvent['kind']] });
  const lacking = needed.find(([name, fits]) => !fits(event[name]));
  if (lacking === undefined) return null;
  const [part] = lacking;
  return issue('station-event-part', { kind, part }, { at: [part] });
}

type Parts = Readonly<Record<string, (value: unknown) => boolean>>;

const isText = (value: unknown): boolean => typeof value === 'string';

const isNumber = (value: unknown): boolean => typeof value === 'number';

const isNumberIfAny = (value: unknown): boolean => value === undefined || Number.isFinite(value);

const isReceivedCall = (value: unknown): boolean => hasParties(value) && hasSymbols(value as Call);

const isVerdict = (value: unknown): boolean =>
  value === 'clean' || value === 'repaired' || value === 'doubtful';

const nothing: Parts = {};

const onDialogue: Parts = { dialogue: isNumber };

const parts: Readonly<Record<StationEvent['kind'], Parts>> = {
  clock: nothing,
  received: {
    call: isReceivedCall,
    verdict: isVerdict,
    event: (value) => value === undefined || typeof value === 'number' || typeof value === 'string',
    stage: (value) => value === undefined || value === 'provisional' || value === 'final',
  },
  channel: { busy: (value) => typeof value === 'boolean' },
  tuned: { channel: isText },
  sent: onDialogue,
  'send-failed': onDialogue,
  fix: {
    position: isRecord,
    source: (value) => value === 'instrument' || value === 'person',
    fixedAt: isNumberIfAny,
  },
  settings: { settings: isRecord },
  call: { call: hasParties },
  answer: onDialogue,
  reject: onDialogue,
  'counter-propose': onDialogue,
  confirm: onDialogue,
  decline: onDialogue,
  retry: onDialogue,
  dismiss: onDialogue,
  select: onDialogue,
  spoken: onDialogue,
  assist: onDialogue,
  'stand-by': onDialogue,
  traffic: onDialogue,
  'no-traffic': onDialogue,
  acknowledge: onDialogue,
  silence: nothing,
  'prepare-alert': { nature: (value) => value === undefined || isNature(value) },
  'press-alert': nothing,
  'release-alert': nothing,
  'stop-alert': nothing,
  'cancel-alert': nothing,
  'describe-alert': { nature: isNature },
  note: { text: isText, corrects: isNumberIfAny },
};
