import { type Failure, failure, type Notice, quote, type Result, success } from '../../result/index.ts';
import type { Dialogue } from '../state/dialogue.ts';
import type { AlarmKind } from '../state/effect.ts';
import {
  createStation,
  type HeardAlert,
  MOST_ALERTS,
  MOST_DIALOGUES,
  type StationFix,
  type StationState,
} from '../state/state.ts';
import { canBeOwn } from '../turn/own-identity.ts';
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
  const mend = (at: string, received: unknown): void => {
    notices.push({
      code: 'station-state-mended',
      message: `Stored state: ${at} made no sense and was replaced or left out`,
      at: [at],
      received: shown(received),
    });
  };
  const settings = readSettings(stored.settings, mend);
  const fresh = createStation({ ...settings, mmsi: canBeOwn(settings.mmsi) ? settings.mmsi : null });
  const now = readInstant(stored.now);
  if (now === null) mend('now', stored.now);
  const dialogues = readDialogues(stored.dialogues, { now: now ?? 0, timers: settings.timers }, mend);
  const ids = dialogues.map(({ id }) => id);
  const active = ids.find((id) => id === stored.active) ?? ids.at(-1) ?? null;
  return {
    ...fresh,
    now: now ?? 0,
    fix: readFix(stored.fix),
    tunedTo: readText(stored.tunedTo),
    channelBusy: stored.channelBusy === true,
    transmitting:
      dialogues.find((dialogue) => dialogue.id === stored.transmitting && isOnAir(dialogue))?.id ?? null,
    dialogues,
    active,
    sounding: readList(stored.sounding).filter((alarm): alarm is AlarmKind => lasting.includes(alarm)),
    heardAlerts: readList(stored.heardAlerts).flatMap(readAlert).slice(-MOST_ALERTS),
    wakeAt: null,
    nextDialogue: Math.max(count(stored.nextDialogue), ...ids.map((id) => id + 1)),
    nextLogEntry: count(stored.nextLogEntry),
    random: typeof stored.random === 'number' ? stored.random >>> 0 : fresh.random,
  };
}

function readDialogues(
  stored: unknown,
  restored: Restored,
  mend: (at: string, received: unknown) => void,
): readonly Dialogue[] {
  const dialogues: Dialogue[] = [];
  readList(stored).forEach((entry, index) => {
    const dialogue = readDialogue(entry, restored);
    const fits =
      dialogue !== null &&
      dialogues.length < MOST_DIALOGUES &&
      dialogues.every((other) => other.id < dialogue.id && !isOwnTwice(other, dialogue));
    if (fits) dialogues.push(dialogue);
    else mend(`dialogues ${index}`, entry);
  });
  return dialogues;
}

function isOwnTwice(one: Dialogue, other: Dialogue): boolean {
  return one.procedure === 'own-distress' && other.procedure === 'own-distress';
}

function isOnAir({ phase }: Dialogue): boolean {
  return phase === 'sending' || phase === 'cancel-sending' || phase === 'acknowledge-sending';
}

const lasting: readonly unknown[] = ['distress', 'urgency'];

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

function readAlert(stored: unknown): HeardAlert[] {
  const lastAt = isRecord(stored) ? readInstant(stored.lastAt) : null;
  if (!isRecord(stored) || lastAt === null) return [];
  return [{ distressed: readText(stored.distressed), nature: readText(stored.nature), lastAt }];
}

function readList(stored: unknown): readonly unknown[] {
  return Array.isArray(stored) ? stored : [];
}

function count(stored: unknown): number {
  return typeof stored === 'number' && Number.isSafeInteger(stored) && stored >= 1 ? stored : 1;
}

function shown(received: unknown): string {
  return typeof received === 'string' ? quote(received) : `a value of type ${typeof received}`;
}

function wrong(code: string, expected: string, received: unknown): Failure {
  const message = `Stored state: ${expected} is needed, got ${shown(received)}`;
  return failure({ code, message, at: [], expected, received: shown(received) });
}
