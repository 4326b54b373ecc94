import { failure, type Issue, type Result, success } from '../result/index.ts';
import { safely, want } from '../result/internal.ts';
import type { Channel, ChannelPlan, ChannelUse, Evidence } from './channel.ts';
import { isRecord, planIssues } from './check-plan.ts';
import { parseDesignator } from './designator.ts';
import { frozen } from './expand-plan.ts';
import { noPlan } from './find-channel.ts';
import { frequencyOf } from './frequency-of.ts';
import { RECEIVE_ONLY } from './not-speech.ts';

/** A channel that is not yet part of a plan: {@link definePlan} adds the name of the plan. */
export type PlanlessChannel = OwnPlan['channels'][number];

/** Options of a channel of your own; each may be left out. */
export interface OwnChannelOptions {
  /** `['intership', 'non-commercial']` unless stated. */
  readonly uses?: readonly ChannelUse[] | undefined;
  /** What it is for, in plain words. */
  readonly note?: string | undefined;
  readonly aliases?: readonly string[] | undefined;
  /** Who may transmit; `'ships-and-coast'` unless stated. */
  readonly transmitters?: Channel['transmitters'] | undefined;
  readonly users?: Channel['users'] | undefined;
  readonly region?: string | undefined;
  readonly caution?: string | undefined;
  /** Fitness for talk between ships; `'allowed'` on one frequency, `'prohibited'` on two, unless stated. */
  readonly intership?: Channel['intership'] | undefined;
  /** Why a call must not name it; unless stated, it may be named if ships transmit on it and M.1084 has digits for it. */
  readonly notAssignableReason?: string | undefined;
  /** Lowest ship power limit in normal use, watts; 25 unless stated. */
  readonly powerLimitW?: number | undefined;
  /** Where its frequency and use are written; `'common practice'` unless stated. */
  readonly source?: string | undefined;
}

/** A plan of your own: name and channels, and what else there is to say. */
export interface OwnPlan {
  readonly name: string;
  /** Channels of your own, or of another plan: `...internationalPlan.channels`. Each name may occur once. */
  readonly channels: readonly (Omit<Channel, 'plan'> & { readonly plan?: string | undefined })[];
  readonly edition?: string | undefined;
  readonly sources?: readonly string[] | undefined;
  readonly cautions?: readonly string[] | undefined;
  /** `['16']` where the plan has it, else none, unless stated. */
  readonly callingChannels?: readonly string[] | undefined;
  readonly rules?: readonly string[] | undefined;
}

/**
 * A channel with one frequency, for {@link definePlan}.
 *
 * @param designator - its name, 1 to 40 characters; found whatever the case it is typed in
 * @param kHz - its frequency, whole kilohertz
 * @param options - what it is for
 *
 * @see {@link duplexChannel}
 *
 * @example
 * ```ts
 * import { simplexChannel } from 'seahail/channel';
 *
 * console.log(simplexChannel('Club 1', 155_900).mode); // simplex
 * ```
 */
export function simplexChannel(
  designator: string,
  kHz: number,
  options: OwnChannelOptions = {},
): OwnPlan['channels'][number] {
  want('simplexChannel', 'options', options);
  const { transmitters: by } = options;
  return ownChannel(designator, by === 'coast' ? null : kHz, by === 'ships' ? null : kHz, options);
}

/**
 * A channel with one frequency for ships and another for coast stations, for {@link definePlan}.
 *
 * @param designator - its name, 1 to 40 characters; found whatever the case it is typed in
 * @param shipKHz - where ships transmit, whole kilohertz
 * @param coastKHz - where coast stations transmit, whole kilohertz
 * @param options - what it is for
 *
 * @see {@link simplexChannel}
 *
 * @example
 * ```ts
 * import { duplexChannel } from 'seahail/channel';
 *
 * console.log(duplexChannel('31', 157_550, 162_150, { uses: ['marina'] }).intership.nonCommercial); // prohibited
 * ```
 */
export function duplexChannel(
  designator: string,
  shipKHz: number,
  coastKHz: number,
  options: OwnChannelOptions = {},
): OwnPlan['channels'][number] {
  want('duplexChannel', 'options', options);
  return ownChannel(designator, shipKHz, coastKHz, options);
}

/**
 * A plan of your own, such as a club's or a country's: checked, frozen, and good for every function that takes a plan.
 * It is plain data: `JSON.stringify` writes it and {@link parsePlan} reads it back.
 *
 * A plan is a description, not a permission: the licence decides what may be used.
 *
 * @param plan - its name and channels
 * @throws TypeError when a field is missing or is not what it must be; its `issues` list every such field
 *
 * @see {@link simplexChannel}
 * @see {@link duplexChannel}
 * @see {@link parsePlan}
 *
 * @example
 * ```ts
 * import { definePlan, findChannel, simplexChannel } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 *
 * const club = definePlan({
 *   name: 'Ardle Sailing Club',
 *   channels: [...internationalPlan.channels, simplexChannel('Club 1', 155_900, { note: 'races' })],
 * });
 * const found = findChannel(club, 'club 1');
 * console.log(found.ok && found.value.note); // races
 * ```
 */
export function definePlan(plan: OwnPlan): ChannelPlan {
  const {
    name,
    channels,
    edition = 'defined by its user',
    sources = [],
    cautions = [],
    callingChannels,
    rules = [],
  } = plan ?? {};
  const list: unknown = channels;
  const has16 = Array.isArray(list) && list.some((channel) => channel?.designator === '16');
  const made = {
    kind: 'channel-plan',
    name,
    edition,
    sources,
    cautions,
    callingChannels: callingChannels ?? (has16 ? ['16'] : []),
    rules,
    channels: Array.isArray(list)
      ? list.map((channel) => (isRecord(channel) ? { ...channel, plan: name } : channel))
      : list,
  };
  const read = parsePlan(made);
  if (read.ok) return read.value;
  const error: TypeError & { issues?: readonly Issue[] } = new TypeError(read.issues[0].message);
  error.issues = read.issues;
  throw error;
}

/**
 * A plan from a file, a server or another program: JSON text, or what was made of it.
 *
 * @param input - JSON text or an object
 * @returns the plan, frozen; or what is wrong with its fields, at most twenty findings. Never throws
 *
 * @see {@link definePlan}
 *
 * @example
 * ```ts
 * import { parsePlan } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 *
 * console.log(parsePlan(JSON.stringify(internationalPlan)).ok); // true
 * const wrong = parsePlan({ ...internationalPlan, channels: [{ designator: 'P1' }] });
 * console.log(wrong.ok || wrong.issues[0].message); // Channel plan channels[0].kind: expected channel, got undefined
 * ```
 */
export function parsePlan(input: unknown): Result<ChannelPlan> {
  const value = typeof input === 'string' ? fromJson(input) : input;
  return safely(
    () => {
      const [first, ...others] = planIssues(value);
      return first === undefined
        ? success(frozen(structuredCopy(value as ChannelPlan)))
        : failure(first, ...others);
    },
    () => failure(noPlan(value)),
  );
}

/** The fields of a plan and no others, so that freezing touches nothing of the caller's. */
function structuredCopy(plan: ChannelPlan): ChannelPlan {
  return JSON.parse(JSON.stringify(plan)) as ChannelPlan;
}

function fromJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return text;
  }
}

function ownChannel(
  designator: string,
  shipKHz: number | null,
  coastKHz: number | null,
  options: OwnChannelOptions,
): PlanlessChannel {
  const m1084 = digitsOf(designator, shipKHz, coastKHz);
  const unfit = shipKHz === null ? RECEIVE_ONLY : m1084 === null ? NO_DIGITS : null;
  const { source = 'common practice', notAssignableReason = unfit } = options;
  const evidence: Evidence = { basis: 'source', source };
  const isDuplex = shipKHz !== null && coastKHz !== null && shipKHz !== coastKHz;
  const fitness = isDuplex ? 'prohibited' : 'allowed';
  return {
    kind: 'channel',
    designator,
    aliases: options.aliases ?? [],
    m1084,
    shipKHz,
    coastKHz,
    mode: isDuplex ? 'duplex' : 'simplex',
    service: 'voice',
    uses: options.uses ?? ['intership', 'non-commercial'],
    note: options.note ?? 'a channel of its user',
    region: options.region ?? null,
    transmitters: options.transmitters ?? 'ships-and-coast',
    receiveOnly: shipKHz === null,
    users: options.users ?? 'all',
    powerLimitW: shipKHz === null ? null : (options.powerLimitW ?? 25),
    powerRule: null,
    automaticPowerReduction: false,
    conditionalPowerLimits: [],
    coastPowerLimitW: null,
    dataMessages: null,
    intership: options.intership ?? { nonCommercial: fitness, commercial: fitness },
    caution: options.caution ?? null,
    assignable: notAssignableReason === null,
    notAssignableReason,
    selectiveCallRule: null,
    evidence: { frequency: evidence, use: evidence, power: evidence },
  };
}

const NO_DIGITS = 'it has no digits for a call';

/** Digits that a call names it by: those of its number where the frequencies are those of Appendix 18, else none. */
function digitsOf(designator: string, shipKHz: number | null, coastKHz: number | null): string | null {
  const read = parseDesignator(designator);
  if (!read.ok || read.value.kind !== 'numbered-channel') return null;
  const { m1084 } = read.value;
  const listed = frequencyOf(read.value);
  const isListed =
    (shipKHz === null || listed?.shipKHz === shipKHz) && (coastKHz === null || listed?.coastKHz === coastKHz);
  return isListed ? m1084 : null;
}
