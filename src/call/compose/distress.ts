import type { GeographicArea, ReportedPosition, TimeOfDay } from '../../position/index.ts';
import type { Call, CallAddress, DistressCall } from '../call.ts';
import { DISTRESS_KINDS } from '../kinds.ts';
import type { FirstTelecommand, NatureOfDistress, UnknownSymbol } from '../symbol.ts';
import { given } from '../wrong-type.ts';
import {
  type ComposeOptions,
  composed,
  distressedIdentity,
  ofKind,
  ownIdentity,
  stationOrGroup,
  wantOptions,
} from './arguments.ts';

/** What is known of the distress. */
export interface DistressOptions extends ComposeOptions {
  /** `'undesignated'` unless stated; `'epirb-emission'` is read only, M.493-16 removed it. */
  readonly nature?: NatureOfDistress | UnknownSymbol | null | undefined;
  /** `null`, ten 9s on the air, unless stated. */
  readonly position?: ReportedPosition | null | undefined;
  /** UTC of the position; `null`, 8888 on the air, unless stated. */
  readonly time?: TimeOfDay | null | undefined;
  /**
   * How the traffic will be sent: `'telephony-simplex'` unless stated, the only one on VHF; `null`, no information,
   * about the signal of an emergency beacon (nature 112, received from older sets).
   */
  readonly subsequent?: FirstTelecommand | UnknownSymbol | null | undefined;
  /** The call that told of the distress: what it says is taken over, unless another option says otherwise. */
  readonly about?: DistressCall | undefined;
  /** Identity of the vessel in distress, `null` when unknown; that of `about` unless stated. */
  readonly distressed?: string | null | undefined;
}

/** What every distress call can tell. */
const KNOWN = ['nature', 'position', 'time', 'subsequent'] as const;

/**
 * A distress alert. **Only to be sent from a vessel or by a person in grave and imminent danger** that needs
 * immediate assistance, by the authority of the person responsible; a false alert must be cancelled at once.
 *
 * @param options - `from`: own identity; the rest as far as it is known
 * @returns the alert
 * @throws TypeError, RangeError when a value has no symbols or the identity cannot be a vessel's own
 *
 * Source: ITU-R M.493-16 table A1-4.1; ten 9s and 8888: ITU-R M.541-11 Annex 1.
 *
 * @see {@link composeDistressSelfCancel}
 * @see {@link composeTestCall}
 *
 * @example
 * ```ts
 * import { encodeFields, composeDistressAlert } from 'seahail/call';
 *
 * const alert = composeDistressAlert({ from: '232999218', nature: 'flooding' });
 * console.log(encodeFields(alert).position); // [ 99, 99, 99, 99, 99 ]
 * ```
 */
export function composeDistressAlert(
  options: Omit<DistressOptions, 'about' | 'distressed'>,
): Call<'distress-alert'> {
  wantOptions(options, ...KNOWN);
  const from = distressedIdentity(ownIdentity(options.from), 'from');
  return composed(
    { kind: 'distress-alert', to: { kind: 'all-stations' }, from, ...details(options) },
    options,
  );
}

/**
 * A distress acknowledgement. It stops the repeats of an alert, so it is for the coastguard, a rescue co-ordination
 * centre or a designated coast station; a ship sends one only after consulting one of them (47 CFR 80.103(c),
 * 80.1117(a), 80.1121(d)).
 *
 * @param options - `from`: own identity; `about`: the alert, or its data one by one
 * @returns the acknowledgement, to all ships
 * @throws TypeError, RangeError when a value has no symbols or the vessel in distress is not named
 *
 * Source: ITU-R M.493-16 table A1-4.2.
 *
 * @example
 * ```ts
 * import { composeDistressAcknowledgement, composeDistressAlert } from 'seahail/call';
 *
 * const about = composeDistressAlert({ from: '232999218', nature: 'flooding' });
 * const acknowledgement = composeDistressAcknowledgement({ from: '002329990', about });
 * console.log(acknowledgement.distressed, acknowledgement.nature); // 232999218 flooding
 * ```
 */
export function composeDistressAcknowledgement(options: DistressOptions): Call<'distress-acknowledgement'> {
  wantAbout(options, 'distressed');
  const from = ownIdentity(options.from);
  const distressed = subject(options);
  if (distressed === null) throw new RangeError('Vessel in distress: expected nine digits, got none');
  if (from === distressed)
    throw new RangeError(
      'Vessel in distress: expected another vessel, got the own identity; cancel an own alert with composeDistressSelfCancel',
    );
  return composed(
    { kind: 'distress-acknowledgement', to: { kind: 'all-ships' }, from, distressed, ...details(options) },
    options,
  );
}

/**
 * The cancellation of an own false alert. Cancel by voice on channel 16 at once as well: the voice cancellation is
 * always required, the DSC one where the radio offers it.
 *
 * @param options - `from`: own identity, also the vessel in distress; `about`: the alert that was sent
 * @returns the self-cancel, to all ships
 * @throws TypeError, RangeError when a value has no symbols
 *
 * Source: an acknowledgement of the own ship, RR 2024 Nos. 32.53B to 32.53E; layout from memory.
 *
 * @see {@link composeDistressAlert}
 *
 * @example
 * ```ts
 * import { composeDistressSelfCancel } from 'seahail/call';
 *
 * const cancel = composeDistressSelfCancel({ from: '232999871' });
 * console.log(cancel.from === cancel.distressed); // true
 * ```
 */
export function composeDistressSelfCancel(
  options: Omit<DistressOptions, 'distressed'>,
): Call<'distress-self-cancel'> {
  wantAbout(options);
  const from = distressedIdentity(ownIdentity(options.from), 'from');
  return composed(
    { kind: 'distress-self-cancel', to: { kind: 'all-ships' }, from, distressed: from, ...details(options) },
    options,
  );
}

/**
 * A distress relay. A distress that nobody acknowledges within about five minutes is passed on to one coast station
 * (RR 2024 Nos. 32.16 and 32.19B), in United States waters by voice or any other means but DSC (47 CFR 80.1121(b)).
 * **To all ships or an area on VHF or MF only** when the vessel in distress cannot alert herself and the master judges
 * that more help is needed (MSC.1/Circ.1657).
 *
 * @param options - `from`: own identity; `to`: whom it is for, nine digits of a station or group, a rectangle, or all ships unless stated; `distressed`: `null` when unknown
 * @returns the relay
 * @throws TypeError, RangeError when a value has no symbols
 *
 * Source: ITU-R M.493-16 table A1-4.3.
 *
 * @see {@link composeDistressRelayAcknowledgement}
 *
 * @example
 * ```ts
 * import { composeDistressRelay } from 'seahail/call';
 *
 * const relay = composeDistressRelay({ from: '232999871', to: '002329990', nature: 'sinking' });
 * console.log(relay.to.kind, relay.distressed); // station null
 * ```
 */
export function composeDistressRelay(
  options: DistressOptions & {
    readonly to?: string | GeographicArea | CallAddress<'all-ships'> | undefined;
  },
): Call<'distress-relay'> {
  wantAbout(options, 'distressed', 'to');
  const from = ownIdentity(options.from);
  const to = relayTarget(options.to);
  const distress = { distressed: subject(options), ...details(options) };
  return composed({ kind: 'distress-relay', to, from, ...distress }, options);
}

/**
 * The acknowledgement of a relay, to the station that sent it or, from a coast station, to all ships.
 *
 * @param options - `from`: own identity; `about`: the relay; `to`: the sender of the relay, or all ships when the
 * relay was for many, unless stated
 * @returns the acknowledgement
 * @throws TypeError, RangeError when a value has no symbols
 *
 * Source: ITU-R M.493-16 table A1-4.4.
 *
 * @example
 * ```ts
 * import { composeDistressRelay, composeDistressRelayAcknowledgement } from 'seahail/call';
 *
 * const about = composeDistressRelay({ from: '232999871', to: '002329990', nature: 'sinking' });
 * const answer = composeDistressRelayAcknowledgement({ from: '002329990', about });
 * console.log(answer.to); // { kind: 'station', mmsi: '232999871' }
 * ```
 */
export function composeDistressRelayAcknowledgement(
  options: DistressOptions & {
    readonly to?: string | GeographicArea | CallAddress<'all-ships'> | undefined;
  },
): Call<'distress-relay-acknowledgement'> {
  wantAbout(options, 'distressed', 'to');
  const from = ownIdentity(options.from);
  const { about } = options;
  const back = about?.to.kind === 'station' && about.from !== null ? about.from : undefined;
  const to = relayTarget(options.to ?? back);
  const distress = { distressed: subject(options), ...details(options) };
  return composed({ kind: 'distress-relay-acknowledgement', to, from, ...distress }, options);
}

function wantAbout(
  options: DistressOptions & { readonly to?: unknown },
  ...names: readonly ('distressed' | 'to')[]
): void {
  wantOptions(options, ...KNOWN, 'about', ...names);
  if (options.about !== undefined) ofKind('about', options.about, DISTRESS_KINDS);
}

function details(options: Omit<DistressOptions, 'distressed'>) {
  const { about } = options;
  if (options.nature === 'epirb-emission' || options.nature === 'symbol-112') {
    throw new RangeError(
      `Nature of distress: expected one of ITU-R M.493-16, got ${options.nature}, which that edition removed`,
    );
  }
  const nature = options.nature ?? about?.nature ?? 'undesignated';
  return {
    nature,
    position: options.position === undefined ? (about?.position ?? null) : options.position,
    time: options.time === undefined ? (about?.time ?? null) : options.time,
    subsequent:
      options.subsequent === undefined ? (about?.subsequent ?? usualSubsequent(nature)) : options.subsequent,
  } as const;
}

// An emergency beacon does not talk; deviation: D-call-16
function usualSubsequent(nature: Call<'distress-alert'>['nature']): FirstTelecommand | null {
  return nature === 'epirb-emission' ? null : 'telephony-simplex';
}

function subject(options: DistressOptions): string | null {
  const { about, distressed } = options;
  if (distressed !== undefined) return distressedIdentity(distressed);
  if (about === undefined) return null;
  // As received: who says so is not for a composer to refuse.
  return about.kind === 'distress-alert' ? about.from : about.distressed;
}

function relayTarget(
  to: string | GeographicArea | CallAddress<'all-ships'> | undefined,
): Call<'distress-relay'>['to'] {
  if (to === undefined) return { kind: 'all-ships' };
  if (typeof to === 'string') return stationOrGroup(to);
  const kind = to?.kind;
  if (kind === 'all-ships') return { kind };
  if (kind === 'geographic-area') return { kind: 'area', area: to as GeographicArea };
  throw new TypeError(`to: expected nine digits, a geographic area or all ships, got ${given(to)}`);
}
