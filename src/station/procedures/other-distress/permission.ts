import type { Call } from '../../../call/index.ts';
import type { CodedText } from '../../../result/index.ts';
import type { Permission } from '../../model/advice.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import { isCoastIdentity, isDesignated, maySend } from '../../model/equipment.ts';
import type { StationState } from '../../model/state.ts';
import { type AdviceCode, advise } from '../../texts.ts';

/** Whether a coast station relayed this distress: it is then in charge, and asks ships for help. */
export function isRelayedByCoast({ call }: Dialogue<'heard-distress'>): boolean {
  return call.kind === 'distress-relay' && isCoastIdentity(call.from);
}

/** Whether only a relay was received: then the relay is acknowledged, not an alert. */
export function isAboutRelay(
  dialogue: Dialogue<'heard-distress'>,
): dialogue is Dialogue<'heard-distress'> & { readonly call: Call<'distress-relay'> } {
  return dialogue.call.kind === 'distress-relay' && dialogue.alerts === 0;
}

/** Why, as part of another text. */
export function asCoded({ code, params, why }: Permission): CodedText {
  return { code, params, message: why };
}

function permission(allowed: boolean, because: AdviceCode, source: string): Permission {
  const { text: why, ...said } = advise(because);
  return { allowed, ...said, why, clause: source };
}

function yes(because: AdviceCode, source: string): Permission {
  return permission(true, because, source);
}

function no(because: AdviceCode, source: string): Permission {
  return permission(false, because, source);
}

/** Whether to acknowledge by voice on channel 16. */
export function voicePermission(
  { settings }: StationState,
  dialogue: Dialogue<'heard-distress'>,
): Permission {
  const { phase } = dialogue;
  if (isDesignated(settings)) return yes('station-voice-designated', clause.acknowledgement);
  if (isRelayedByCoast(dialogue)) return yes('station-voice-relayed', clause.coastRelay);
  if (isCoastIdentity(dialogue.acknowledgedBy)) return yes('station-voice-acknowledged', clause.flow);
  if (phase === 'coast-answered') return yes('station-voice-traffic', clause.flow);
  return phase === 'listening' || phase === 'shown'
    ? no('station-voice-wait', '47 CFR 80.1121(b)')
    : yes('station-voice-near', 'RR 2024 Nos. 32.28 and 32.29A; 47 CFR 80.1121(b)');
}

/**
 * Whether to acknowledge by DSC: a designated coast station without delay; any station a relay addressed to it; a ship
 * an alert only with class A, to stop one that goes on without any acknowledgement, from a vessel in the vicinity.
 */
export function dscPermission({ settings }: StationState, dialogue: Dialogue<'heard-distress'>): Permission {
  const { distressed, acknowledgedBy, alerts, call, phase } = dialogue;
  const source = clause.acknowledgement;
  if (settings.mmsi === null) return no('station-dsc-no-identity', clause.identity);
  const acknowledgement = isAboutRelay(dialogue)
    ? ({ kind: 'distress-relay-acknowledgement', to: dialogue.call.to } as const)
    : ({ kind: 'distress-acknowledgement', to: { kind: 'all-ships' } } as const);
  if (!maySend(settings.equipment, acknowledgement)) return no('station-dsc-class', clause.equipment);
  if (isAboutRelay(dialogue)) {
    if (call.from === null) return no('station-dsc-relay-unsigned', source);
    if (isDesignated(settings)) return yes('station-dsc-designated', source);
    return dialogue.call.to.kind === 'station'
      ? yes('station-dsc-relay-addressed', clause.coastRelay)
      : no('station-dsc-relay-by-voice', clause.coastRelay);
  }
  if (distressed === null) return no('station-dsc-unidentified', source);
  if (isDesignated(settings)) return yes('station-dsc-designated', source);
  if (settings.equipment === 'coast') return no('station-dsc-not-designated', '47 CFR 80.103(c)');
  if (acknowledgedBy !== null) return no('station-dsc-acknowledged', source);
  if (phase === 'coast-answered' || phase === 'assisting') return no('station-dsc-traffic', source);
  if (phase !== 'undecided' && phase !== 'inform-coast') return no('station-dsc-wait', source);
  if (alerts < 2) return no('station-dsc-not-repeated', source);
  return yes('station-dsc-to-stop', 'MSC.1/Circ.1657; 47 CFR 80.1121(d)');
}

/** Whether to pass the distress on to one coast station by DSC: RR 2024 Nos. 32.16, 32.17 and 32.19B. deviation: D-station-12 */
export function relayPermission(
  { settings }: StationState,
  dialogue: Pick<Dialogue<'heard-distress'>, 'phase' | 'acknowledgedBy' | 'call'>,
): Permission {
  const { phase, acknowledgedBy } = dialogue;
  if (phase === 'cancelled') return no('station-relay-withdrawn', clause.relay);
  if (isCoastIdentity(acknowledgedBy) || isCoastIdentity(dialogue.call.from) || phase === 'coast-answered')
    return no('station-relay-in-hand', clause.relay);
  if (phase === 'shown') return no('station-relay-errors', clause.relay);
  if (phase === 'listening') return no('station-relay-wait', clause.relay);
  return yes(
    settings.equipment === 'coast' ? 'station-relay-ashore' : 'station-relay-to-coast',
    clause.relay,
  );
}

/** Whether to send a DSC relay to all ships, a group or an area. */
export function relayToManyPermission({ settings }: StationState): Permission {
  return settings.equipment === 'coast'
    ? yes('station-relay-to-many-coast', clause.relay)
    : no('station-relay-to-many-ship', clause.relay);
}
