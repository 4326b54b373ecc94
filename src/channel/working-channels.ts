import type { CodedText, Notice } from '../result/index.ts';
import { requireOptions } from '../result/internal.ts';
import type { Channel, ChannelPlan, Fitness } from './channel.ts';
import { absent, channelNamed, channelsNumbered, isPlan, noPlan } from './find-channel.ts';
import { frequenciesInWords } from './frequency.ts';
import { fitnessFor, type WorkingPurpose } from './purpose.ts';
import { issue, workingText } from './texts.ts';
import { barTo, checkWorkingChannel, useOf } from './working-channel.ts';

/** A channel that serves under every plan asked about. */
export type WorkingChannel = WorkingChannels['ranked'][number];

/** A channel that does not serve under at least one of the plans. */
export type RuledOutChannel = WorkingChannels['ruledOut'][number];

/** Every channel of the plans asked about, sorted into those that serve and those that do not. */
export interface WorkingChannels {
  readonly kind: 'working-channels';
  readonly purpose: WorkingPurpose;
  /** Names of the plans. */
  readonly plans: readonly string[];
  /** Names of the plans that the sets are programmed with, where they were given. */
  readonly sets: readonly string[];
  /** Best first. */
  readonly ranked: readonly {
    readonly kind: 'working-channel';
    /** As the first plan writes it; the others may write it otherwise. */
    readonly designator: string;
    /** The channel in each plan, in the order of the plans. */
    readonly channels: readonly Channel[];
    /** The least that any of the plans says of it. */
    readonly fitness: 'preferred' | 'allowed' | 'restricted';
    /** The name that each radio shows for it, in the order of the sets; empty where no sets were given. */
    readonly onSets: readonly string[];
    /** Why, in plain words, plan by plan; `code` and `params` say it in another language. */
    readonly reason: string;
    readonly code: string;
    readonly params: CodedText['params'];
    /** Cautions, with clauses. */
    readonly notices: readonly Notice[];
  }[];
  /** In order of number, plan by plan. */
  readonly ruledOut: readonly {
    readonly kind: 'ruled-out-channel';
    readonly designator: string;
    /** The channel in those plans that have it. */
    readonly channels: readonly Channel[];
    /** The first thing that rules it out, in plain words: the message of the first notice. */
    readonly reason: string;
    /** Everything that rules it out, with clauses. */
    readonly notices: readonly [Notice, ...Notice[]];
  }[];
}

/**
 * Working channels that are good for every given plan, best first, each with its reason; and for every
 * other channel the reason why not.
 *
 * Give the plan of the waters, whose rules hold for every ship in them, or two plans where waters meet. What a set
 * from elsewhere can tune is another question: `sets` asks only whether it has the frequencies, not what its plan
 * would use them for. A channel counts as the same in two plans when the frequencies are the same,
 * whatever it is called. The tables describe; national rules, the licence and local assignment decide,
 * and a channel is listened to before it is used.
 *
 * @param plans - one plan or several
 * @param purpose - what the channel is for
 * @param options - `sets`: what the two sets can tune
 * @returns ranked and ruled-out channels; together they hold every channel of every plan once
 * @throws RangeError when no plan is given, or the purpose is none of them
 *
 * @see {@link checkWorkingChannel}
 * @see {@link encodeChannel}
 *
 * @example
 * ```ts
 * import { workingChannels } from 'seahail/channel';
 * import { internationalPlan } from 'seahail/channel/international';
 * import { unitedStatesPlan } from 'seahail/channel/united-states';
 *
 * const { ranked, ruledOut } = workingChannels([internationalPlan, unitedStatesPlan], 'intership-non-commercial');
 * console.log(ranked[0]?.designator); // 72
 * const visitor = workingChannels(internationalPlan, 'intership-non-commercial', { sets: [unitedStatesPlan] });
 * console.log(visitor.ranked.slice(0, 4).map(({ designator }) => designator).join(' ')); // 72 08 77 06
 * console.log(ruledOut.find(({ designator }) => designator === '77')?.reason); // Channel 77 is not for non-commercial talk between ships in the United States plan: talk with pilots about movement and docking (with pilots only)
 * ```
 */
export function workingChannels(
  plans: ChannelPlan | readonly ChannelPlan[],
  purpose: WorkingPurpose,
  options: {
    /** The plan that each ship's set is programmed with: which frequencies it has, whatever that plan says of their use. */
    readonly sets?: readonly ChannelPlan[] | undefined;
  } = {},
): WorkingChannels {
  const given = plansOf(plans);
  requireOptions('workingChannels', options, ['sets']);
  const sets = plansOf(options.sets ?? []);
  if (given.length === 0) throw new RangeError('workingChannels: expected at least one plan, got none');
  const ranked: WorkingChannel[] = [];
  const ruledOut: RuledOutChannel[] = [];
  for (const candidate of candidatesOf(given)) {
    const tuned = sets.map((set) => channelOnSet(candidate, set));
    const [first, ...others] = [
      ...obstacles(candidate, given, purpose),
      ...sets.flatMap((set, place) => (tuned[place] === undefined ? [notOnSet(candidate, set)] : [])),
    ];
    const { designator } = candidate;
    const channels = candidate.channels.filter((channel) => channel !== undefined);
    if (first === undefined) {
      ranked.push({
        kind: 'working-channel',
        designator,
        channels,
        fitness: LEVELS[worst(channels, purpose)] as Exclude<Fitness, 'prohibited'>,
        onSets: (tuned as Channel[]).map((channel) => channel.designator),
        ...reasonFor(channels),
        notices: channels.flatMap((channel) => checkWorkingChannel(channel, purpose)),
      });
    } else {
      ruledOut.push({
        kind: 'ruled-out-channel',
        designator,
        channels,
        reason: first.message,
        notices: [first, ...others],
      });
    }
  }
  ranked.sort((a, b) => standing(a, purpose) - standing(b, purpose));
  return {
    kind: 'working-channels',
    purpose,
    plans: given.map(({ name }) => name),
    sets: sets.map(({ name }) => name),
    ranked,
    ruledOut,
  };
}

function plansOf(given: ChannelPlan | readonly ChannelPlan[]): readonly ChannelPlan[] {
  const plans: readonly unknown[] = Array.isArray(given) ? given : [given];
  return plans.map((plan) => {
    if (isPlan(plan)) return plan;
    throw new TypeError(`workingChannels: ${noPlan(plan).message}`);
  });
}

/** What a set programmed with a plan shows for the frequencies of a channel, where ships may transmit on them. */
function channelOnSet({ key }: Candidate, set: ChannelPlan): Channel | undefined {
  return set.channels.find((channel) => !channel.receiveOnly && frequencyKey(channel) === key);
}

function notOnSet({ designator }: Candidate, set: ChannelPlan): Notice {
  const namesake = channelNamed(set, designator);
  return issue(
    'channel-not-on-set',
    {
      channel: designator,
      plan: set.name,
      ...(namesake && { frequencies: frequenciesInWords(namesake) }),
    },
    { received: designator, clause: set.edition },
  );
}

interface Candidate {
  /** Its frequencies. */
  readonly key: string;
  readonly designator: string;
  /** One place a plan; undefined where the plan has no channel of these frequencies. */
  readonly channels: (Channel | undefined)[];
}

/** Channels of all plans, those of equal frequencies together. */
function candidatesOf(plans: readonly ChannelPlan[]): Iterable<Candidate> {
  const candidates = new Map<string, Candidate>();
  plans.forEach((plan, place) => {
    for (const channel of plan.channels) {
      const key = frequencyKey(channel);
      const candidate = candidates.get(key) ?? {
        key,
        designator: channel.designator,
        channels: plans.map(() => undefined),
      };
      candidate.channels[place] = channel;
      candidates.set(key, candidate);
    }
  });
  return candidates.values();
}

/** The same for channels of equal frequencies: a side that does not transmit listens where the other does. */
function frequencyKey({ shipKHz, coastKHz }: Channel): string {
  return `${shipKHz ?? coastKHz}/${coastKHz ?? shipKHz}`;
}

function obstacles(candidate: Candidate, plans: readonly ChannelPlan[], purpose: WorkingPurpose): Notice[] {
  const bars = candidate.channels.flatMap((channel) => (channel && barTo(channel, purpose)) ?? []);
  const missing = plans.flatMap((plan, place) =>
    candidate.channels[place] ? [] : [absence(candidate, plan)],
  );
  return [...bars, ...missing];
}

/** Why a plan without these frequencies rules them out: the number may even mean something else there. */
function absence({ designator, channels }: Candidate, plan: ChannelPlan): Notice {
  const digits = channels.find((channel) => channel?.m1084)?.m1084?.slice(-2);
  const namesake = channelNamed(plan, designator) ?? (digits && channelsNumbered(plan, Number(digits))[0]);
  if (!namesake) return absent(plan, designator);
  return issue(
    'channel-meaning-differs',
    {
      channel: designator,
      plan: plan.name,
      other: namesake.designator,
      frequencies: frequenciesInWords(namesake),
    },
    { received: designator, clause: plan.edition },
  );
}

function reasonFor(channels: readonly Channel[]): Pick<WorkingChannel, 'reason' | 'code' | 'params'> {
  const reasons = channels.map((channel) => workingText('channel-use', useOf(channel)));
  const { code, params, message } = workingText('channel-serves', { reasons });
  return { reason: message, code, params };
}

const LEVELS: readonly Fitness[] = ['preferred', 'allowed', 'restricted'];

function worst(channels: readonly Channel[], purpose: WorkingPurpose): number {
  return Math.max(...channels.map((channel) => LEVELS.indexOf(fitnessFor(channel, purpose))));
}

/**
 * Small is good: first the least any plan says, then what the plans say together, then 72, the one
 * ordinary intership channel that all plans share, then channels kept for ships alone.
 * deviation: D-channel-10
 */
function standing({ channels }: WorkingChannel, purpose: WorkingPurpose): number {
  const levels = channels.map((channel) => LEVELS.indexOf(fitnessFor(channel, purpose)));
  const together = levels.reduce((sum, level) => sum + level, 0) / levels.length;
  const shared = channels.some((channel) => channel.designator === '72') ? 0 : 2;
  const kept = channels.every((channel) => channel.transmitters === 'ships') ? 0 : 1;
  return Math.max(...levels) * 1000 + together * 100 + shared + kept;
}
