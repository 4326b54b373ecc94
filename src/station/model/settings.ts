import { type Call, type EquipmentClass, type Reason, reasons } from '../../call/index.ts';
import { neverAssignable } from '../../channel/index.ts';
import { parseIdentity, usesOf } from '../../identity/index.ts';
import { workingChannel } from './channel.ts';
import { isRecord } from './form.ts';
import { isTimer, type TimerName } from './timer.ts';

/**
 * What happens with a call of some kind: `'automatic'` answers (or tunes) at once, `'by-hand'` asks the person,
 * `'reject-…'` answers "unable to comply" with that reason at once.
 *
 * Only a call received clean and addressed to this station itself is ever answered automatically; distress never is.
 */
export type Policy = 'automatic' | 'by-hand' | `reject-${Reason}`;

/** Settings of a station: identity, equipment and its owner's choices. Plain data, kept in the state. */
export interface StationSettings {
  /** Own identity, nine digits; `null` until one is stored: such a station only receives. */
  readonly mmsi: string | null;
  /** Class of equipment; `'D'`, a fixed set of a small craft, unless stated. */
  readonly equipment: EquipmentClass;
  /**
   * Whether this coast station is designated to acknowledge distress by DSC (47 CFR 80.103(c)): the coastguard or a
   * rescue co-ordination centre. `false` unless stated: a marina, a club or a port follows the guidance for ships and
   * reports to the coastguard. Without effect on other equipment.
   */
  readonly designated: boolean;
  /** Group identities this station belongs to, nine digits each. */
  readonly groups: readonly string[];
  /** By kind of call. Individual calls are answered by hand unless the owner chose otherwise. */
  readonly policies: Readonly<
    Record<'individual' | 'position' | 'test' | 'polling' | 'group' | 'area' | 'all-ships', Policy>
  >;
  /** By caller; the first that fits goes before `policies`. */
  readonly callers: readonly {
    /** Nine digits. */
    readonly caller: string;
    /** For this kind of call only; for every kind when absent. */
    readonly subject?: keyof StationSettings['policies'];
    readonly policy: Policy;
  }[];
  /**
   * Whether the radio may change its channel automatically; `'automatic'` unless stated. Set `'by-hand'` where a watch
   * on another channel is required, such as bridge-to-bridge or vessel traffic.
   */
  readonly tuning: 'automatic' | 'by-hand';
  /**
   * Working channels this station can use, most preferred first, kept as digits of ITU-R M.1084: for the waters it is
   * in, for instance by `workingChannels` of `seahail/channel`. A call that proposes another is never answered
   * automatically, and the radio never changes to another automatically unless this station asked for it. 72, 77, 08 and 06 unless
   * stated, which are channels between ships in the international plan: state those of your waters.
   */
  readonly channels: readonly string[];
  /**
   * Voice channels on which a continuous watch is required, such as 13 or a vessel traffic channel, kept as digits of
   * ITU-R M.1084; none unless stated. Whenever the radio is tuned away from one, a `show` effect says so.
   */
  readonly watched: readonly string[];
  /** Also log calls that are for somebody else. */
  readonly logOthers: boolean;
  /** Lengths of timers in milliseconds, at least 1, that differ from those of `timers`: for training and tests. */
  readonly timers: Readonly<Partial<Record<TimerName, number>>>;
  /** Start of the random numbers; any integer. Give each station another one. */
  readonly seed: number;
}

/** Settings with everything but the identity left as it usually is; policies are named one by one. */
export type SettingsInput = Pick<StationSettings, 'mmsi'> & SettingsChange;

/** The settings to change; what is left out stays. */
export type SettingsChange = {
  readonly [Key in Exclude<keyof StationSettings, 'policies'>]?: StationSettings[Key] | undefined;
} & { readonly policies?: Partial<StationSettings['policies']> | undefined };

// deviation: D-station-5 (which subjects answer by themselves out of the box).
/** The policies of a set as it comes. */
const usualPolicies: Readonly<Record<keyof StationSettings['policies'], Policy>> = {
  individual: 'by-hand',
  position: 'by-hand',
  test: 'automatic',
  polling: 'automatic',
  group: 'by-hand',
  area: 'by-hand',
  'all-ships': 'by-hand',
};

const usual: StationSettings = {
  mmsi: null,
  equipment: 'D',
  designated: false,
  groups: [],
  policies: usualPolicies,
  callers: [],
  tuning: 'automatic',
  channels: ['72', '77', '08', '06'],
  watched: [],
  logOthers: false,
  timers: {},
  seed: 1,
};

/**
 * The settings with whatever was left out: from those before, or else the usual ones. Lists are copied, so that nobody
 * else can change them, and channels are named as calls name them.
 */
export function completeSettings(input: SettingsChange, before: StationSettings = usual): StationSettings {
  const all = {
    ...before,
    ...withoutGaps(input),
    policies: { ...before.policies, ...withoutGaps(input.policies) },
  };
  return {
    ...all,
    groups: copyOf(all.groups),
    callers: copyOf(all.callers),
    channels: copyOf(all.channels, (name) => workingChannel(name) ?? name),
    watched: copyOf(all.watched, (name) => workingChannel(name) ?? name),
    timers: { ...all.timers },
  };
}

/** A setting that is stated as undefined is left out. */
function withoutGaps<T extends object>(
  given: T | undefined,
): { [Key in keyof T]?: Exclude<T[Key], undefined> } {
  const stated = Object.entries(given ?? {}).filter(([, value]) => value !== undefined);
  return Object.fromEntries(stated) as { [Key in keyof T]?: Exclude<T[Key], undefined> };
}

/** What is no list stays as it is, for {@link settingsForm} to find. */
function copyOf<T>(list: readonly T[], change: (entry: T) => T = (entry) => entry): readonly T[] {
  return Array.isArray(list) ? list.map(change) : list;
}

/** The subject whose policy decides about a call; none decides about other kinds. */
const subjectOf: Readonly<Partial<Record<Call['kind'], keyof StationSettings['policies']>>> = {
  'individual-call': 'individual',
  'position-request': 'position',
  'test-call': 'test',
  'polling-call': 'polling',
  'group-call': 'group',
  'area-call': 'area',
  'all-ships-call': 'all-ships',
};

/** The policy that decides about a call. */
export function policyFor(settings: StationSettings, call: Call): Policy {
  const subject = subjectOf[call.kind];
  if (subject === undefined) return 'by-hand';
  const own = settings.callers.find(
    (row) => row.caller === call.from && (row.subject === undefined || row.subject === subject),
  );
  return own?.policy ?? settings.policies[subject];
}

/** The valid form of each setting, whether it comes from a program, an event or stored data. */
export const settingsForm: Readonly<Record<keyof StationSettings, (value: unknown) => boolean>> = {
  mmsi: (value) => value === null || canBeOwn(value),
  equipment: (value) => classes.includes(value),
  designated: (value) => typeof value === 'boolean',
  groups: (value) => isList(value) && value.every(isText),
  policies: (value) =>
    isRecord(value) &&
    subjects.every((subject) => isPolicy(value[subject])) &&
    Object.keys(value).length === subjects.length,
  callers: (value) => isList(value) && value.every(isCallerPolicy),
  tuning: (value) => value === 'automatic' || value === 'by-hand',
  channels: (value) => isList(value) && value.every(isTalkChannel),
  watched: (value) => isList(value) && value.every(isTalkChannel),
  logOthers: (value) => typeof value === 'boolean',
  timers: (value) => isRecord(value) && Object.entries(value).every(isLength),
  seed: isFinite,
};

/** The settings that are not as they must be, and those that do not exist: a name may be misspelt. */
export function misfitsOf(settings: StationSettings): readonly string[] {
  const forms: Readonly<Record<string, (value: unknown) => boolean>> = settingsForm;
  const given: Readonly<Record<string, unknown>> = { ...settings };
  return Object.keys({ ...forms, ...given }).filter((name) => !forms[name]?.(given[name]));
}

const classes: readonly unknown[] = ['A', 'D', 'H', 'M', 'coast'] satisfies readonly EquipmentClass[];

const subjects = Object.keys(usualPolicies);

/** Whether a group identity is one is for {@link checkSetup} to say. */
function isText(value: unknown): boolean {
  return typeof value === 'string';
}

/** Whether an identity may stand as a station's own. */
function canBeOwn(mmsi: unknown): mmsi is string {
  const identity = parseIdentity(mmsi);
  return identity.ok && identity.value.mmsi === mmsi && usesOf(identity.value).own;
}

/** Where people can talk in some waters, after some call: 16 for safety traffic among them. */
function isTalkChannel(value: unknown): boolean {
  return (
    typeof value === 'string' && workingChannel(value) === value && neverAssignable(value, 'safety') === null
  );
}

function isPolicy(value: unknown): boolean {
  if (value === 'automatic' || value === 'by-hand') return true;
  return reasons.rows.some(([, reason]) => value === `reject-${reason}`);
}

function isCallerPolicy(value: unknown): boolean {
  return (
    isRecord(value) &&
    Object.keys(value).every((name) => /^(caller|subject|policy)$/.test(name)) &&
    typeof value.caller === 'string' &&
    isPolicy(value.policy) &&
    (value.subject === undefined || subjects.some((subject) => subject === value.subject))
  );
}

function isLength([timer, length]: readonly [string, unknown]): boolean {
  return isTimer(timer) && (length === undefined || (isFinite(length) && length >= 1));
}

function isList(value: unknown): value is readonly unknown[] {
  return Array.isArray(value);
}

function isFinite(value: unknown): value is number {
  return typeof value === 'number' && Number.isFinite(value);
}
