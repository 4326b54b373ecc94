/** Whether a fact was read in the source named, or is remembered and waits for a better source. */
export type Evidence = Channel['evidence']['frequency'];

/** Uses of a channel. Words of Radio Regulations Appendix 18 and of the national tables. */
export type ChannelUse =
  | 'ais'
  | 'aircraft-support'
  | 'asm'
  | 'autonomous-devices'
  | 'calling'
  | 'coast-guard'
  | 'coast-guard-liaison'
  | 'commercial'
  | 'distress-safety-calling'
  | 'dredging'
  | 'dsc'
  | 'environmental-broadcast'
  | 'fishing'
  | 'government'
  | 'intership'
  | 'marina'
  | 'nautical-information'
  | 'navigation-safety'
  | 'non-commercial'
  | 'on-board'
  | 'pilotage'
  | 'pollution-control'
  | 'port-operations'
  | 'public-correspondence'
  | 'safety'
  | 'safety-broadcast'
  | 'search-and-rescue'
  | 'ship-movement'
  | 'ship-to-coast'
  | 'towing'
  | 'vdes'
  | 'vessel-traffic'
  | 'weather-broadcast';

/** How fit a channel is for a kind of talk, from first choice to not at all. */
export type Fitness = Channel['intership']['commercial'];

/** A power limit of a ship that applies on a condition, beside the ordinary limit of the channel. */
export type ConditionalPowerLimit = Channel['conditionalPowerLimits'][number];

/**
 * One channel as one plan has it.
 *
 * Frequencies are whole kilohertz, and name the side that **transmits**; the other side listens there.
 * National rules and the licence decide what may be done on it: this is a description, not a permission.
 */
export interface Channel {
  readonly kind: 'channel';
  /** Name of the plan the channel was taken from, e.g. `'United States'`. */
  readonly plan: string;
  /** As the plan writes it: `'06'`, `'1022'`, `'21B'`, `'AIS 1'`, `'WX3'`. */
  readonly designator: string;
  /** Other ways this plan's channel is written, e.g. `'22A'` for `'1022'`. */
  readonly aliases: readonly string[];
  /** Digits after ITU-R M.1084 Annex 4: `'06'`, `'1022'`; `null` where no rule gives any (weather, UK 0, M, M2). */
  readonly m1084: string | null;
  /** Where ships transmit, kHz; `null` when they must not. */
  readonly shipKHz: number | null;
  /** Where coast stations transmit, kHz; `null` on channels between ships only. */
  readonly coastKHz: number | null;
  /** One frequency for both sides, one for each, or coast stations alone. */
  readonly mode: 'simplex' | 'duplex' | 'coast-broadcast';
  readonly service: 'voice' | 'distress' | 'dsc' | 'ais' | 'asm' | 'vdes' | 'data' | 'weather';
  /** Most typical use first. */
  readonly uses: readonly ChannelUse[];
  /** Its use in the plan, in plain words. */
  readonly note: string;
  /** Where in the plan's waters this holds, in plain words; `null` for all of them. */
  readonly region: string | null;
  readonly transmitters: 'ships' | 'ships-and-coast' | 'coast';
  /** True when a ship may only listen. */
  readonly receiveOnly: boolean;
  /** Whom the plan has in mind. `'authority'` is a coastguard, a navy or another branch of government. */
  readonly users: 'all' | 'commercial' | 'non-commercial' | 'authority';
  /** Lowest ship power limit that applies in normal use, watts; `null` where ships do not transmit. */
  readonly powerLimitW: number | null;
  /** The power rule in words, where there is more to say than the number. */
  readonly powerRule: string | null;
  /** True where the rules require a set to reduce its output to `powerLimitW` automatically. */
  readonly automaticPowerReduction: boolean;
  /** Other limits for ships, each with the condition on which it applies; empty where there is none. */
  readonly conditionalPowerLimits: readonly {
    /** Most power, watts. */
    readonly watts: number;
    /** How the watts are measured: output of the transmitter, or power radiated from the aerial. */
    readonly measure: 'output' | 'radiated';
    /** When the limit applies, in plain words. */
    readonly when: string;
  }[];
  /** Power limit of coast stations, watts; `null` where they do not transmit or no limit is known. */
  readonly coastPowerLimitW: number | null;
  /** Whether short digital messages may share a voice channel; `null` where the plan knows no rule. */
  readonly dataMessages: 'permitted' | 'prohibited' | null;
  /** Fitness for ordinary talk between two ships. */
  readonly intership: Readonly<
    Record<'nonCommercial' | 'commercial', 'preferred' | 'allowed' | 'restricted' | 'prohibited'>
  >;
  /** Caution before using it, in plain words. */
  readonly caution: string | null;
  /** Whether a call may name it as the working channel for speech at all. */
  readonly assignable: boolean;
  /** Why not, when `assignable` is false. */
  readonly notAssignableReason: string | null;
  /** Restriction on selective calls of every kind in these waters, in plain words; `null` where nothing does. */
  readonly selectiveCallRule: string | null;
  /** How the frequency, the uses and the power were obtained. */
  readonly evidence: Readonly<
    Record<
      'frequency' | 'use' | 'power',
      {
        readonly basis: 'source' | 'memory';
        /** Document and section; for a remembered fact, the document it is remembered from. */
        readonly source: string;
      }
    >
  >;
}

/** The channels allotted by one administration for its waters. */
export interface ChannelPlan {
  readonly kind: 'channel-plan';
  /** Short English name, e.g. `'Canada'`. */
  readonly name: string;
  /** Which edition of the rules the table follows. */
  readonly edition: string;
  /** Documents the table was taken from. */
  readonly sources: readonly string[];
  /** Known weaknesses of the table, in plain words. */
  readonly cautions: readonly string[];
  /** Channels for calling by voice, the first choice first. */
  readonly callingChannels: readonly string[];
  /** Rules that hold on all channels of these waters, in plain words, each with its clause. */
  readonly rules: readonly string[];
  /** In order of number; channels with names come after those with numbers. */
  readonly channels: readonly Channel[];
}
