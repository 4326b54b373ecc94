import { type EquipmentClass, reasons } from '../../call/index.ts';
import { barredEverywhere } from '../../channel/index.ts';
import { isRecord } from '../restore/read-plain.ts';
import { canBeOwn } from '../turn/own-identity.ts';
import { workingChannel } from '../turn/working-channel.ts';
import { type StationSettings, usualPolicies } from './settings.ts';
import { timers } from './timer.ts';

/** What each setting must be like, whoever gives it: a program, an event or stored data. */
export const settingsForm: Readonly<Record<keyof StationSettings, (value: unknown) => boolean>> = {
  mmsi: (value) => value === null || canBeOwn(value),
  equipment: (value) => classes.includes(value),
  designated: (value) => typeof value === 'boolean',
  groups: (value) => isList(value) && value.every(isText),
  policies: (value) => isRecord(value) && subjects.every((subject) => isPolicy(value[subject])),
  callers: (value) => isList(value) && value.every(isCallerPolicy),
  tuning: (value) => value === 'automatic' || value === 'by-hand',
  channels: (value) => isList(value) && value.every(isTalkChannel),
  watched: (value) => isList(value) && value.every(isTalkChannel),
  speed: (value) => isFinite(value) && value >= 0,
  logOthers: (value) => typeof value === 'boolean',
  timers: (value) => isRecord(value) && Object.entries(value).every(isLength),
  seed: isFinite,
};

/** The settings that are not as they must be. */
export function misfitsOf(settings: StationSettings): readonly (keyof StationSettings)[] {
  return (Object.keys(settingsForm) as (keyof StationSettings)[]).filter(
    (key) => !settingsForm[key](settings[key]),
  );
}

const classes: readonly unknown[] = ['A', 'D', 'H', 'M', 'coast'] satisfies readonly EquipmentClass[];
const subjects = Object.keys(usualPolicies);

/** Whether a group identity is one is for {@link checkSetup} to say. */
function isText(value: unknown): boolean {
  return typeof value === 'string';
}

/** Where people can talk in some waters, after some call: 16 for safety traffic among them. */
function isTalkChannel(value: unknown): boolean {
  return (
    typeof value === 'string' && workingChannel(value) === value && barredEverywhere(value, 'safety') === null
  );
}

function isPolicy(value: unknown): boolean {
  if (value === 'automatic' || value === 'by-hand') return true;
  return reasons.rows.some(([, reason]) => value === `refuse-${reason}`);
}

function isCallerPolicy(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value.caller === 'string' &&
    isPolicy(value.policy) &&
    (value.subject === undefined || subjects.some((subject) => subject === value.subject))
  );
}

function isLength([timer, length]: readonly [string, unknown]): boolean {
  return (
    timers.some((row) => row.timer === timer) && (length === undefined || (isFinite(length) && length >= 1))
  );
}

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

function isFinite(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
