import {
  hasLegs,
  inAppendix18,
  isSingleFrequency,
  LEG_DISTANCE_KHZ,
  lowerLegKHz,
  m1084Digits,
} from './appendix-18.ts';
import type { Channel, ChannelPlan, ChannelUse, ConditionalPowerLimit, Fitness } from './channel.ts';
import { NOT_SPEECH, RECEIVE_ONLY } from './not-speech.ts';

/** One line of a plan's table: everything its channels have in common, defaults left out. */
export interface PlanRow {
  /**
   * Designators with a comma between; `=` before an alias, `@` before a frequency in kHz that does not
   * follow from the number, two of them where the sides differ: `'1022,1023'`, `'21B=WX8'`, `'WX1@162550'`,
   * `'31@157550/162150'`.
   */
  readonly channels: string;
  readonly uses: readonly ChannelUse[];
  readonly note: string;
  readonly region?: string;
  readonly users?: Channel['users'];
  readonly service?: Channel['service'];
  /** Who transmits; without it ships and coast stations do. */
  readonly by?: Channel['transmitters'];
  readonly mode?: Channel['mode'];
  readonly powerW?: number;
  readonly powerRule?: string;
  readonly automaticPowerReduction?: boolean;
  readonly conditionalPowerLimits?: readonly ConditionalPowerLimit[];
  /** Without it the limit of the table for voice channels. */
  readonly coastPowerW?: number | null;
  /** Fitness between ships: one word for everyone, or two, for pleasure craft and for commercial vessels. */
  readonly intership?: Fitness | readonly [Fitness, Fitness];
  readonly caution?: string;
  /** Why a call must not name it. Services other than speech need no such line. */
  readonly never?: string;
  readonly evidence?: Partial<Channel['evidence']>;
}

/** A plan's heading, its rows, and the evidence of a row that names none of its own. */
export interface PlanTable extends Omit<ChannelPlan, 'kind' | 'channels' | 'rules'> {
  readonly rules?: ChannelPlan['rules'];
  readonly evidence: Channel['evidence'];
  /** Power limit of coast stations on voice channels, where the rules give one. */
  readonly coastPowerW?: number;
  /** Where the rules let digital messages share voice channels: the channels they except. */
  readonly noDataMessagesOn?: readonly string[];
  readonly selectiveCallRule?: string;
  readonly rows: readonly PlanRow[];
}

/**
 * A plan from its table. A channel in a later row replaces the same channel of an earlier one.
 *
 * The rows are expanded when the channels are first asked for, so that importing a plan costs nothing. All of it is
 * frozen: one plan serves everybody who imports it.
 */
export function expandPlan(table: PlanTable): ChannelPlan {
  const { name, edition, sources, cautions, callingChannels, rules = [] } = table;
  let channels: readonly Channel[] | undefined;
  return Object.freeze({
    kind: 'channel-plan',
    ...frozen({ name, edition, sources, cautions, callingChannels, rules }),
    get channels() {
      channels ??= frozen(expandRows(table));
      return channels;
    },
  });
}

/** The value, frozen with everything in it. */
export function frozen<T>(value: T): T {
  if (!Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value as object)) frozen(part);
  }
  return value;
}

function expandRows(table: PlanTable): readonly Channel[] {
  const channels = new Map<string, Channel>();
  for (const row of table.rows) {
    for (const entry of row.channels.split(',')) {
      const channel = expandRow(table, row, entry);
      channels.set(channel.designator, channel);
    }
  }
  return [...channels.values()].sort((a, b) => rank(a.designator) - rank(b.designator));
}

function expandRow(table: PlanTable, row: PlanRow, entry: string): Channel {
  const [names, frequencies = ''] = entry.split('@') as [string, string?];
  const [designator, ...given] = names.split('=') as [string, ...string[]];
  const numbered = readNumber(designator);
  const twin = numbered && legName(designator, numbered);
  const aliases = twin === undefined || given.includes(twin) ? given : [twin, ...given];
  const m1084 = numbered
    ? m1084Digits(numbered.number, numbered.leg)
    : (given.find((name) => readNumber(name)) ?? null);
  const [frequency, upper] = frequencies.split('/');
  const base = numbered ? lowerLegKHz(numbered.number) : 0;
  const shipKHz = frequency ? Number(frequency) : numbered?.leg === 'coast' ? base + LEG_DISTANCE_KHZ : base;
  const pair = !frequency && numbered?.leg === 'as-listed' && !isSingleFrequency(numbered.number);
  const coastKHz = upper ? Number(upper) : pair ? base + LEG_DISTANCE_KHZ : shipKHz;
  const transmitters = row.by ?? 'ships-and-coast';
  const receiveOnly = transmitters === 'coast';
  const service = row.service ?? 'voice';
  const notAssignableReason = row.never ?? NOT_SPEECH[service] ?? (receiveOnly ? RECEIVE_ONLY : null);
  const fitness = row.intership ?? 'prohibited';
  const [nonCommercial, commercial] = typeof fitness === 'string' ? [fitness, fitness] : fitness;
  return {
    kind: 'channel',
    plan: table.name,
    designator,
    aliases,
    m1084,
    shipKHz: receiveOnly ? null : shipKHz,
    coastKHz: transmitters === 'ships' ? null : coastKHz,
    mode: row.mode ?? (shipKHz === coastKHz ? 'simplex' : 'duplex'),
    service,
    uses: row.uses,
    note: row.note,
    region: row.region ?? null,
    transmitters,
    receiveOnly,
    users: row.users ?? 'all',
    powerLimitW: receiveOnly ? null : (row.powerW ?? 25),
    powerRule: row.powerRule ?? null,
    automaticPowerReduction: row.automaticPowerReduction ?? false,
    conditionalPowerLimits: row.conditionalPowerLimits ?? [],
    coastPowerLimitW: coastPower(table, row, service),
    dataMessages: dataMessages(table, row, designator, service),
    intership: { nonCommercial, commercial },
    caution: row.caution ?? null,
    assignable: notAssignableReason === null,
    notAssignableReason,
    selectiveCallRule: table.selectiveCallRule ?? null,
    evidence: { ...table.evidence, ...row.evidence },
  };
}

function coastPower({ coastPowerW }: PlanTable, row: PlanRow, service: Channel['service']): number | null {
  if (row.by === 'ships') return null;
  if (row.coastPowerW !== undefined) return row.coastPowerW;
  return service === 'voice' || service === 'distress' ? (coastPowerW ?? null) : null;
}

function dataMessages(
  { noDataMessagesOn }: PlanTable,
  { by, users }: PlanRow,
  designator: string,
  service: Channel['service'],
): Channel['dataMessages'] {
  if (noDataMessagesOn === undefined) return null;
  if (noDataMessagesOn.includes(designator)) return 'prohibited';
  return service === 'voice' && by !== 'coast' && users !== 'authority' ? 'permitted' : null;
}

interface Numbered {
  readonly number: number;
  readonly leg: 'as-listed' | 'ship' | 'coast';
}

/** Number and leg of `'22'`, `'22A'`, `'1022'`; undefined for names and for numbers outside Appendix 18. */
function readNumber(designator: string): Numbered | undefined {
  const [, prefix, digits, letter] = /^([12]0)?(\d\d)([AB])?$/.exec(designator) ?? [];
  if (!inAppendix18(Number(digits))) return undefined;
  const leg =
    prefix === '10' || letter === 'A' ? 'ship' : prefix === '20' || letter === 'B' ? 'coast' : 'as-listed';
  return { number: Number(digits), leg };
}

/**
 * The other spelling of one leg: `'1022'` for `'22A'` and back. 2006 has no letter form.
 * deviation: D-channel-11
 */
function legName(designator: string, { number, leg }: Numbered): string | undefined {
  if (leg === 'as-listed' || !hasLegs(number)) return undefined;
  const lettered = m1084Digits(number, 'as-listed') + (leg === 'ship' ? 'A' : 'B');
  return designator === lettered ? m1084Digits(number, leg) : lettered;
}

/** 01, 1001, 01A, 2001, 02 ...; names keep the order of the table. */
function rank(designator: string): number {
  const numbered = readNumber(designator);
  if (numbered === undefined) return 1000;
  return numbered.number * 3 + (numbered.leg === 'ship' ? 1 : numbered.leg === 'coast' ? 2 : 0);
}
