import type { NetworkMessage } from '../../report/index.ts';
import type { CodedText, Issue } from '../../result/index.ts';
import { textOf } from '../../result/internal.ts';
import { readNetworkLog } from '../log/read-log.ts';
import type { NetworkReading } from '../reader/reader.ts';
import { NETWORK_FAULTS, type NetworkFaultId } from './fault-list.ts';
import { said } from './texts.ts';

type NetworkSighting = NetworkFaultReport['findings'][number]['sightings'][number];

/**
 * Findings about a log, and how much of it was examined. Texts are in English, with code and params for `translate` of
 * `seahail/locale`.
 */
export interface NetworkFaultReport {
  readonly kind: 'network-fault-report';
  /** In the order in which to look. */
  readonly findings: readonly {
    readonly id: (typeof NETWORK_FAULTS)[number]['id'];
    readonly certainty: 'certain' | 'likely' | 'possible';
    readonly why: CodedText;
    readonly remedy: CodedText;
    /** How often it was seen. */
    readonly count: number;
    /** The first places, twenty at most. */
    readonly sightings: readonly {
      /** Line or frame of the log, counted from 1; `null` when it concerns the whole. */
      readonly line: number | null;
      /** The message that shows it, or a text. */
      readonly seen: string | CodedText;
    }[];
  }[];
  /** Whether nothing was found. */
  readonly clean: boolean;
  readonly messages: number;
  readonly calls: number;
  /** Checks that a log cannot answer, for when the findings do not explain the problem. */
  readonly outside: readonly CodedText[];
}

const MOST_SIGHTINGS = 20;
/** A packet begun before the log is given up within as many frames as a full bus carries in its pause. */
const EDGE_FRAMES = 1500;
/** A node claims its address within a minute of starting, and answers requests for it; a shorter log proves little. */
const LONG_ENOUGH_MS = 60_000;
/** Class and function of the NAME: communication; a radio telephone with selective calling was seen as 190. */
const COMMUNICATION = 70;
const [RADIO_STATE, GO_TO] = [129_799, 129_284];
const POSITIONS: readonly number[] = [129_025, 129_029];

const OUTSIDE = ['accepted', 'gateway', 'other-vessel'] as const;

/** A notice of a reading, and the fault that it shows. */
const BY_NOTICE: ReadonlyMap<string, NetworkFaultId> = /* @__PURE__ */ new Map<string, NetworkFaultId>([
  ['network-identity-tenth-digit', 'identity-code'],
  ['network-text-cut-off', 'message-cut-off'],
  ['network-message-short', 'message-cut-off'],
  ['network-date-early', 'date-early'],
]);

/**
 * Finds why a call never appeared on the display, in a log of the network.
 *
 * Each finding says what was seen and where, why it matters, what to do and how certain it is. Distress first: a
 * display that shows nothing is no reason to wait; listen on channel 16 and look at the radio.
 *
 * @param log - text, or bytes of a text or of a capture file, as for {@link readNetworkLog}
 * @param options - own identity
 * @returns the findings; never throws on any log
 * @throws TypeError when the own identity is not text, RangeError when it is not nine digits
 *
 * @see {@link NETWORK_FAULTS}
 *
 * @example
 * ```ts
 * import { findNetworkFaults } from 'seahail/network';
 *
 * for (const { id, certainty } of findNetworkFaults('').findings) console.log(id, certainty); // no-frames certain
 * ```
 */
export function findNetworkFaults(
  log: string | Uint8Array,
  options: {
    /** Own identity, nine digits. */
    readonly own?: string | undefined;
  } = {},
): NetworkFaultReport {
  const readings = readNetworkLog(log, options);
  const sightings = new Map<NetworkFaultId, { count: number; places: NetworkSighting[] }>();
  const see = (id: NetworkFaultId, line: number | null, seen: string | CodedText): void => {
    const known = sightings.get(id) ?? { count: 0, places: [] };
    known.count++;
    if (known.places.length < MOST_SIGHTINGS) known.places.push({ line, seen });
    sightings.set(id, known);
  };
  const messages = readings.flatMap(({ kind, sources }) => (kind === 'damaged' ? [] : sources));
  if (messages.length === 0)
    see('no-frames', null, said('network-seen-no-frames', { count: readings.length }));
  const end = readings.at(-1)?.line ?? 0;
  for (const reading of readings) {
    if (!isEdge(reading, end)) lookAt(reading, options?.own, see);
  }
  lookAtNodes(readings, see);
  lookAtGroups(messages, readings, see);
  const findings = NETWORK_FAULTS.flatMap(({ id, certainty, why, remedy }) => {
    const seen = sightings.get(id);
    return seen === undefined
      ? []
      : [{ id, certainty, why, remedy, count: seen.count, sightings: seen.places }];
  });
  return {
    kind: 'network-fault-report',
    findings,
    clean: findings.length === 0,
    messages: messages.length,
    calls: readings.filter(({ kind }) => kind === 'call').length,
    outside: OUTSIDE.map((check) => said('network-outside', { check })),
  };
}

/** Whether a torn packet was torn by the beginning or the end of the log. */
function isEdge(reading: NetworkReading, end: number): boolean {
  if (reading.kind !== 'damaged') return false;
  const [issue] = reading.issues;
  if (issue === undefined || !isTorn(issue)) return false;
  return reading.line >= end || (issue.code === 'network-packet-no-start' && reading.line <= EDGE_FRAMES);
}

function isTorn({ code }: Issue): boolean {
  return code === 'network-packet-torn' || code === 'network-packet-no-start';
}

type See = (id: NetworkFaultId, line: number | null, seen: string | CodedText) => void;

function lookAt(reading: NetworkReading, own: string | undefined, see: See): void {
  const { line } = reading;
  for (const notice of reading.notices) {
    const id = BY_NOTICE.get(notice.code);
    if (id !== undefined) see(id, line, textOf(notice));
  }
  if (reading.kind === 'damaged') {
    const [issue] = reading.issues;
    if (issue !== undefined) see(isTorn(issue) ? 'packet-torn' : 'not-frames', line, textOf(issue));
  } else if (reading.kind === 'call') {
    const bytes = reading.sources[0]?.payload ?? '';
    const [format, category] = [0, 2].map((from) => Number.parseInt(bytes.slice(from, from + 2), 16));
    if (format !== undefined && format < 100)
      see('two-digit-codes', line, said('network-seen-format', { format }));
    else if (format !== undefined && format !== 112 && category === 255)
      see('category-lost', line, said('network-seen-no-category', { format }));
    if (reading.repeat > 0)
      see(
        'call-repeated',
        line,
        said('network-seen-repeat', { event: reading.event, count: reading.repeat + 1 }),
      );
  } else if (reading.kind === 'ais' && !reading.own && own !== undefined && reading.report.mmsi === own) {
    see('own-report-as-target', line, reading.sources[0]?.raw ?? '');
  }
}

function lookAtNodes(readings: readonly NetworkReading[], see: See): void {
  const claims = new Map<number, Map<string, number>>();
  const heard = new Map<number, number>();
  for (const reading of readings) {
    const source = reading.sources[0]?.source;
    if (source === undefined || reading.kind === 'damaged') continue;
    if (reading.kind === 'node' && reading.name !== null) {
      const names = claims.get(source) ?? new Map<string, number>();
      names.set(reading.name, (names.get(reading.name) ?? 0) + 1);
      claims.set(source, names);
    } else if (!heard.has(source)) heard.set(source, reading.line);
  }
  for (const [source, names] of claims) {
    if (names.size > 1)
      see('address-disputed', null, said('network-seen-names', { address: source, count: names.size }));
  }
  const times = readings.flatMap(({ at }) => at ?? []);
  const span = times.length < 2 ? 0 : (times.at(-1) as number) - (times[0] as number);
  // Without any claim the log began after them all.
  if (span < LONG_ENOUGH_MS || claims.size === 0) return;
  for (const [source, line] of heard) {
    if (!claims.has(source)) see('no-address-claim', line, said('network-seen-address', { address: source }));
  }
}

function lookAtGroups(
  messages: readonly NetworkMessage[],
  readings: readonly NetworkReading[],
  see: See,
): void {
  const sources = new Map<number, Set<number>>();
  for (const { pgn, source } of messages) sources.set(pgn, (sources.get(pgn) ?? new Set()).add(source));
  for (const pgn of POSITIONS) {
    const senders = sources.get(pgn);
    if (senders !== undefined && senders.size > 1)
      see('two-positions', null, said('network-seen-positions', { pgn, addresses: [...senders] }));
  }
  const isRadio = readings.some(
    ({ kind, ...node }) => kind === 'node' && 'deviceClass' in node && node.deviceClass === COMMUNICATION,
  );
  const calls = readings.some(({ kind }) => kind === 'call');
  if (!calls && (isRadio || sources.has(RADIO_STATE)))
    see(
      'no-call-message',
      null,
      sources.has(RADIO_STATE)
        ? `PGN ${RADIO_STATE}`
        : said('network-seen-radio', { deviceClass: COMMUNICATION }),
    );
  if (sources.has(GO_TO) && ![129_285, 130_074].some((pgn) => sources.has(pgn)))
    see('waypoint-not-listed', null, `PGN ${GO_TO}`);
}
