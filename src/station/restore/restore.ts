import { failure, type Notice, type Result, success } from '../../result/index.ts';
import { type Failure, quote, type TermOf } from '../../result/internal.ts';
import { lasting } from '../engine/action.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { Effects } from '../model/effect.ts';
import { isRecord, readCall, readCoordinates, readCount, readInstant, readText } from '../model/form.ts';
import { completeSettings, type StationSettings, settingsForm } from '../model/settings.ts';
import {
  createStation,
  MOST_ALERTS,
  MOST_DIALOGUES,
  MOST_PROVISIONAL,
  type StationState,
} from '../model/state.ts';
import { issue, type stationTexts } from '../texts.ts';
import { type Restored, readDialogue } from './restore-dialogue.ts';

/** What each version of the layout lacked of the next. */
const migrations: Readonly<Record<number, Readonly<Record<string, unknown>>>> = {
  1: { tunedTo: null, provisional: [] },
  2: { provisional: [] },
};

const VERSION = 3;

/**
 * A station from stored data, of this version of the library or an older one.
 *
 * Anything inside that makes no sense is replaced by its usual value or left out, with a notice; what is left is fit
 * for {@link step}. Give it a `clock` event next: alarms sound again, everything in hand is shown and asked again, and
 * waits whose time has passed end.
 *
 * A restored station transmits nothing, and leaves the radio on its channel, until a person or a call received says
 * otherwise: a dialogue that would transmit asks first. A dialogue that cannot have come about is set aside; its notice
 * holds all of it.
 *
 * @param value - what `JSON.parse` gave
 * @param options - whether the app vouches for its store
 * @returns the state; an issue when it is no station state, or one of a newer library. Never throws.
 *
 * @see {@link createStation}
 *
 * @example
 * ```ts
 * import { createStation, restoreStation } from 'seahail/station';
 *
 * const stored = JSON.stringify(createStation({ mmsi: '232999871' }));
 * const restored = restoreStation(JSON.parse(stored));
 * console.log(restored.ok && restored.value.settings.mmsi); // 232999871
 * ```
 */
export function restoreStation(
  value: unknown,
  options: {
    /**
     * The app vouches that this is its own state and that nobody else could change it: the instant of the restore, epoch
     * milliseconds. Without it, nothing in the state transmits or repeats until a person says so. With it, calls in hand
     * go on, and so does an own distress alert whose next repeat is less than a repeat away; other distress is always put to
     * a person first.
     */
    readonly vouchedAt?: number;
  } = {},
): Result<StationState> {
  try {
    return readStation(value, options?.vouchedAt);
  } catch {
    return wrong('plain', value);
  }
}

function readStation(value: unknown, vouchedAt: unknown): Result<StationState> {
  if (!isRecord(value) || value.kind !== 'station') {
    return wrong('station', value);
  }
  const { version } = value;
  if (version !== VERSION && !(typeof version === 'number' && Object.hasOwn(migrations, version))) {
    return typeof version === 'number' && version > VERSION
      ? failure(issue('station-state-newer', { version: VERSION }, { received: `${version}` }))
      : wrong('version', version);
  }
  const notices: Notice[] = [];
  const stored = version === VERSION ? value : { ...migrations[version], ...value };
  return success(read(stored, readInstant(vouchedAt), notices), notices);
}

function read(
  stored: Readonly<Record<string, unknown>>,
  vouchedAt: number | null,
  notices: Notice[],
): StationState {
  const repair: Repair = (part, received) => {
    notices.push(issue('station-state-repaired', { part }, { at: [part], received: shown(received) }));
  };
  const settings = readSettings(stored.settings, repair);
  const fresh = createStation(settings);
  /** A part of its own, the usual one where it is missing, and repaired where it makes no sense. */
  const take = <T>(key: keyof StationState, readPart: (value: unknown) => T | null, usual: T): T => {
    const value = stored[key];
    const part = value === undefined || value === null ? null : readPart(value);
    if (part === null && value !== null && value !== usual) repair(key, value);
    return part ?? usual;
  };
  const readNumber = (value: unknown) => readCount(value, 1);
  const now = take('now', readInstant, 0);
  const bare: StationState = { ...fresh, now, fix: take('fix', readFix, null) };
  const gap = vouchedAt === null ? null : vouchedAt - now;
  const dialogues = readDialogues(stored.dialogues, { state: bare, gap }, notices);
  const ids = dialogues.map(({ id }) => id);
  const isId = (value: unknown) => ids.find((id) => id === value) ?? null;
  const transmitting = take('transmitting', isId, null);
  const onAir = dialogues.find((dialogue) => dialogue.id === transmitting && isOnAir(dialogue));
  return {
    ...bare,
    tunedTo: take('tunedTo', readText, null),
    channelBusy: take('channelBusy', (value) => (typeof value === 'boolean' ? value : null), false),
    transmitting: onAir?.id ?? null,
    dialogues,
    active: take('active', isId, ids.at(-1) ?? null),
    sounding: readList('sounding', stored.sounding, readAlarm, repair),
    heardAlerts: readList('heardAlerts', stored.heardAlerts, readAlert, repair).slice(-MOST_ALERTS),
    provisional: readList('provisional', stored.provisional, readProvisional, repair).slice(
      -MOST_PROVISIONAL,
    ),
    restored: true,
    wakeAt: null,
    nextDialogue: Math.max(take('nextDialogue', readNumber, 1), ...ids.map((id) => id + 1)),
    nextLogEntry: take('nextLogEntry', readNumber, 1),
    random: take(
      'random',
      (value) => (Number.isFinite(value) ? (value as number) >>> 0 : null),
      fresh.random,
    ),
  };
}

type Repair = (at: string, received: unknown) => void;

/** The dialogues that may go on. One that cannot have come about is set aside, all of it in its notice. */
function readDialogues(stored: unknown, restored: Restored, notices: Notice[]): readonly Dialogue[] {
  const setAside = (part: string, entry: unknown) => {
    notices.push(issue('station-state-set-aside', { part }, { at: [part], received: inFull(entry) }));
  };
  if (!Array.isArray(stored)) {
    setAside('dialogues', stored);
    return [];
  }
  const dialogues: Dialogue[] = [];
  stored.forEach((entry: unknown, index) => {
    const part = `dialogues ${index}`;
    const noted: Notice[] = [];
    const dialogue = readDialogue(entry, restored, (code) =>
      noted.push(issue(code, { part }, { at: [part] })),
    );
    const fits =
      dialogue !== null &&
      dialogues.length < MOST_DIALOGUES &&
      dialogues.every((other) => other.id < dialogue.id && !isOwnTwice(other, dialogue));
    if (!fits) {
      setAside(part, entry);
      return;
    }
    dialogues.push(dialogue);
    notices.push(...noted);
  });
  return dialogues;
}

/** Every character of what was stored: nothing is lost. */
function inFull(entry: unknown): string {
  try {
    return JSON.stringify(entry) ?? String(entry);
  } catch {
    return typeof entry;
  }
}

function isOwnTwice(one: Dialogue, other: Dialogue): boolean {
  return one.procedure === 'own-distress' && other.procedure === 'own-distress';
}

function isOnAir({ phase }: Dialogue): boolean {
  return phase === 'sending' || phase === 'cancel-sending' || phase === 'acknowledge-sending';
}

function readFix(stored: unknown): NonNullable<StationState['fix']> | null {
  if (!isRecord(stored)) return null;
  const position = readCoordinates(stored.position);
  const at = readInstant(stored.at);
  if (position === null || at === null) return null;
  return {
    position,
    at,
    source: stored.source === 'person' ? 'person' : 'instrument',
    warned: stored.warned === true,
  };
}

function readAlert(stored: unknown): StationState['heardAlerts'][number] | null {
  const lastAt = isRecord(stored) ? readInstant(stored.lastAt) : null;
  if (!isRecord(stored) || lastAt === null) return null;
  return { distressed: readText(stored.distressed), nature: readText(stored.nature), lastAt };
}

function readProvisional(stored: unknown): StationState['provisional'][number] | null {
  if (!isRecord(stored)) return null;
  const { event } = stored;
  const call = readCall(stored.call);
  if (call === null || (typeof event !== 'number' && typeof event !== 'string')) return null;
  return { event, call, dialogue: readCount(stored.dialogue, -Infinity) };
}

function readAlarm(stored: unknown): Effects['sound']['alarm'] | null {
  return lasting.find((alarm) => alarm === stored) ?? null;
}

/** The entries that make sense; each that does not is repaired away. */
function readList<T>(
  at: string,
  stored: unknown,
  readEntry: (entry: unknown) => T | null,
  repair: Repair,
): readonly T[] {
  if (!Array.isArray(stored)) {
    repair(at, stored);
    return [];
  }
  return stored.flatMap((entry: unknown, index) => {
    const read = readEntry(entry);
    if (read === null) repair(`${at} ${index}`, entry);
    return read === null ? [] : [read];
  });
}

function shown(received: unknown): string {
  return typeof received === 'string' ? quote(received) : typeof received;
}

function wrong(form: TermOf<typeof stationTexts, 'state-form'>, received: unknown): Failure {
  return failure(issue('station-state-form', { form }, { received: shown(received) }));
}

/** Settings that a state of version 2 may lack. */
const LATER: readonly string[] = ['designated', 'watched'] satisfies readonly (keyof StationSettings)[];

/** Settings from stored data, whatever makes no sense replaced by the usual value. */
function readSettings(stored: unknown, repair: Repair): StationSettings {
  const usual = completeSettings({});
  if (!isRecord(stored)) {
    repair('settings', stored);
    return usual;
  }
  const kept = Object.entries(settingsForm).flatMap(([key, fits]) => {
    // Stored before the setting existed: nothing is damaged.
    if (LATER.includes(key) && !Object.hasOwn(stored, key)) return [];
    const value = Object.hasOwn(stored, key) ? stored[key] : undefined;
    if (fits(value)) return [[key, value]];
    repair(`settings ${key}`, value);
    return [];
  });
  return completeSettings(Object.fromEntries(kept), usual);
}
