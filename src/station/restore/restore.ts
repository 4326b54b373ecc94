import { type Failure, failure, type Notice, quote, type Result, success } from '../../result/index.ts';
import type { Dialogue } from '../state/dialogue.ts';
import type { AlarmKind } from '../state/effect.ts';
import type { StationSettings } from '../state/settings.ts';
import {
  createStation,
  type HeardAlert,
  MOST_ALERTS,
  MOST_DIALOGUES,
  type StationFix,
  type StationState,
} from '../state/state.ts';
import { isRecord, readCoordinates, readInstant, readText } from './read-plain.ts';
import { type Restored, readDialogue } from './restore-dialogue.ts';
import { readSettings } from './restore-settings.ts';

/** What each version of the layout lacked of the next. */
const migrations: Readonly<Record<number, Readonly<Record<string, unknown>>>> = {
  1: { tunedTo: null },
};

/**
 * Brings a station back from stored data, of this version of the library or an older one.
 *
 * Anything inside that makes no sense is replaced by its usual value or left out, with a notice; what is left is fit
 * for {@link step}. Give it a `clock` event next: waits whose time has passed meanwhile then end.
 *
 * @param value - what `JSON.parse` gave
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
export function restoreStation(value: unknown): Result<StationState> {
  if (!isRecord(value) || value.kind !== 'station') {
    return wrong('station-state-form', "an object with kind 'station'", value);
  }
  const { version } = value;
  if (version !== 2 && !(typeof version === 'number' && Object.hasOwn(migrations, version))) {
    return typeof version === 'number' && version > 2
      ? wrong('station-state-newer', 'version 2 or older', version)
      : wrong('station-state-form', 'a version', version);
  }
  const notices: Notice[] = [];
  const stored = version === 2 ? value : { ...value, ...migrations[version] };
  return success(read(stored, notices), notices);
}

function read(stored: Readonly<Record<string, unknown>>, notices: Notice[]): StationState {
  const mend: Mend = (at, received) => {
    notices.push({
      code: 'station-state-mended',
      message: `Stored state: ${at} made no sense and was replaced or left out`,
      at: [at],
      received: shown(received),
    });
  };
  const settings = readSettings(stored.settings, mend);
  const fresh = createStation(settings);
  /** A part of its own, the usual one where it is missing, and mended where it makes no sense. */
  const take = <T>(key: keyof StationState, readPart: (value: unknown) => T | null, usual: T): T => {
    const value = stored[key];
    const part = value === undefined || value === null ? null : readPart(value);
    if (part === null && value !== null && value !== usual) mend(key, value);
    return part ?? usual;
  };
  const now = take('now', readInstant, 0);
  const dialogues = readDialogues(stored.dialogues, settings, { now, timers: settings.timers }, mend);
  const ids = dialogues.map(({ id }) => id);
  const onAir = dialogues.find((dialogue) => dialogue.id === stored.transmitting && isOnAir(dialogue));
  return {
    ...fresh,
    now,
    fix: take('fix', readFix, null),
    tunedTo: take('tunedTo', readText, null),
    channelBusy: take('channelBusy', readFlag, false),
    transmitting: take('transmitting', () => onAir?.id ?? null, null),
    dialogues,
    active: take('active', (value) => ids.find((id) => id === value) ?? null, ids.at(-1) ?? null),
    sounding: readList('sounding', stored.sounding, readAlarm, mend),
    heardAlerts: readList('heardAlerts', stored.heardAlerts, readAlert, mend).slice(-MOST_ALERTS),
    wakeAt: null,
    nextDialogue: Math.max(take('nextDialogue', readCount, 1), ...ids.map((id) => id + 1)),
    nextLogEntry: take('nextLogEntry', readCount, 1),
    random: take('random', readSeed, fresh.random),
  };
}

type Mend = (at: string, received: unknown) => void;

function readDialogues(
  stored: unknown,
  { mmsi }: StationSettings,
  restored: Restored,
  mend: Mend,
): readonly Dialogue[] {
  const dialogues: Dialogue[] = [];
  readList(
    'dialogues',
    stored,
    (entry) => {
      const dialogue = readDialogue(entry, restored);
      const fits =
        dialogue !== null &&
        (mmsi !== null || !isSender(dialogue)) &&
        dialogues.length < MOST_DIALOGUES &&
        dialogues.every((other) => other.id < dialogue.id && !isOwnTwice(other, dialogue));
      if (fits) dialogues.push(dialogue);
      return fits ? dialogue : null;
    },
    mend,
  );
  return dialogues;
}

/** Nothing is sent without an own identity (M.493-16, from memory). */
function isSender({ procedure }: Dialogue): boolean {
  return procedure === 'own-distress' || procedure === 'outgoing';
}

function isOwnTwice(one: Dialogue, other: Dialogue): boolean {
  return one.procedure === 'own-distress' && other.procedure === 'own-distress';
}

function isOnAir({ phase }: Dialogue): boolean {
  return phase === 'sending' || phase === 'cancel-sending' || phase === 'acknowledge-sending';
}

const lasting: readonly AlarmKind[] = ['distress', 'urgency'];

function readFix(stored: unknown): StationFix | null {
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

function readAlert(stored: unknown): HeardAlert | null {
  const lastAt = isRecord(stored) ? readInstant(stored.lastAt) : null;
  if (!isRecord(stored) || lastAt === null) return null;
  return { distressed: readText(stored.distressed), nature: readText(stored.nature), lastAt };
}

function readAlarm(stored: unknown): AlarmKind | null {
  return lasting.find((alarm) => alarm === stored) ?? null;
}

function readFlag(stored: unknown): boolean | null {
  return typeof stored === 'boolean' ? stored : null;
}

function readCount(stored: unknown): number | null {
  return typeof stored === 'number' && Number.isSafeInteger(stored) && stored >= 1 ? stored : null;
}

function readSeed(stored: unknown): number | null {
  return typeof stored === 'number' && Number.isFinite(stored) ? stored >>> 0 : null;
}

/** The entries that make sense; each that does not is mended away. */
function readList<T>(
  at: string,
  stored: unknown,
  readEntry: (entry: unknown) => T | null,
  mend: Mend,
): readonly T[] {
  if (!Array.isArray(stored)) {
    mend(at, stored);
    return [];
  }
  return stored.flatMap((entry: unknown, index) => {
    const read = readEntry(entry);
    if (read === null) mend(`${at} ${index}`, entry);
    return read === null ? [] : [read];
  });
}

function shown(received: unknown): string {
  return typeof received === 'string' ? quote(received) : `a value of type ${typeof received}`;
}

function wrong(code: string, expected: string, received: unknown): Failure {
  const message = `Stored state: ${expected} is needed, got ${shown(received)}`;
  return failure({ code, message, at: [], expected, received: shown(received) });
}
