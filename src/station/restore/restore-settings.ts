import { type EquipmentClass, type Reason, reasons } from '../../call/index.ts';
import {
  type CallerPolicy,
  completeSettings,
  type Policy,
  type PolicySubject,
  type StationSettings,
  usualPolicies,
} from '../state/settings.ts';
import { type TimerName, timers } from '../state/timer.ts';
import { isWorkingChannel } from '../turn/working-channel.ts';
import { isRecord, readText } from './read-plain.ts';

/** Settings from stored data, whatever makes no sense replaced by the usual value. */
export function readSettings(
  stored: unknown,
  mend: (at: string, received: unknown) => void,
): StationSettings {
  const usual = completeSettings({ mmsi: null });
  if (!isRecord(stored)) {
    mend('settings', stored);
    return usual;
  }
  const take = <T>(key: keyof StationSettings, fits: (value: unknown) => value is T, otherwise: T): T => {
    const value = stored[key];
    if (fits(value)) return value;
    mend(`settings ${key}`, value);
    return otherwise;
  };
  return {
    mmsi: take('mmsi', isTextOrNull, null),
    equipment: take('equipment', isEquipment, usual.equipment),
    groups: take('groups', isTexts, []),
    policies: take('policies', isPolicies, usual.policies),
    callers: take('callers', areCallerPolicies, []),
    tuning: take('tuning', isTuning, usual.tuning),
    channels: take('channels', isTexts, usual.channels).filter(isWorkingChannel),
    speed: take('speed', isSpeed, usual.speed),
    logOthers: take('logOthers', isBoolean, false),
    timers: take('timers', areTimers, {}),
    seed: take('seed', isNumber, usual.seed),
  };
}

const classes: readonly unknown[] = ['A', 'D', 'H', 'M', 'coast'] satisfies readonly EquipmentClass[];

function isTextOrNull(value: unknown): value is string | null {
  return value === null || readText(value) !== null;
}

function isEquipment(value: unknown): value is EquipmentClass {
  return classes.includes(value);
}

function isTexts(value: unknown): value is readonly string[] {
  return Array.isArray(value) && value.every((entry) => typeof entry === 'string');
}

function isPolicy(value: unknown): value is Policy {
  if (value === 'automatic' || value === 'by-hand') return true;
  return reasons.rows.some(([, reason]: readonly [number, Reason]) => value === `refuse-${reason}`);
}

function isSubject(value: unknown): value is PolicySubject {
  return typeof value === 'string' && Object.hasOwn(usualPolicies, value);
}

function isPolicies(value: unknown): value is Readonly<Record<PolicySubject, Policy>> {
  return isRecord(value) && Object.keys(usualPolicies).every((subject) => isPolicy(value[subject]));
}

function areCallerPolicies(value: unknown): value is readonly CallerPolicy[] {
  return (
    Array.isArray(value) &&
    value.every(
      (row) =>
        isRecord(row) &&
        typeof row.caller === 'string' &&
        isPolicy(row.policy) &&
        (row.subject === undefined || isSubject(row.subject)),
    )
  );
}

function isTuning(value: unknown): value is StationSettings['tuning'] {
  return value === 'automatic' || value === 'by-hand';
}

function isNumber(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}

function isSpeed(value: unknown): value is number {
  return isNumber(value) && value >= 0;
}

function isBoolean(value: unknown): value is boolean {
  return typeof value === 'boolean';
}

function areTimers(value: unknown): value is Readonly<Partial<Record<TimerName, number>>> {
  return (
    isRecord(value) &&
    Object.entries(value).every(
      ([timer, length]) => timers.some((row) => row.timer === timer) && typeof length === 'number',
    )
  );
}
