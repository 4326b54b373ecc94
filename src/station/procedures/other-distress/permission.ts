import type { Call } from '../../../call/index.ts';
import type { Permission } from '../../model/advice.ts';
import { clause } from '../../model/clause.ts';
import type { Dialogue } from '../../model/dialogue.ts';
import { isDesignated, maySend } from '../../model/equipment.ts';
import { isCoastIdentity } from '../../model/own-identity.ts';
import type { StationState } from '../../model/state.ts';

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

/** Whether to acknowledge by voice on channel 16. */
export function voicePermission(
  { settings }: StationState,
  dialogue: Dialogue<'heard-distress'>,
): Permission {
  const { phase } = dialogue;
  if (isDesignated(settings)) {
    return {
      allowed: true,
      why: 'A designated coast station answers on channel 16 after its DSC acknowledgement',
      clause: clause.acknowledgement,
    };
  }
  if (isRelayedByCoast(dialogue)) {
    return {
      allowed: true,
      why: 'A coast station relays the distress: answer it by voice if you can assist, as it directs',
      clause: clause.coastRelay,
    };
  }
  if (isCoastIdentity(dialogue.acknowledgedBy)) {
    return {
      allowed: true,
      why: 'A coast station has acknowledged: answer by voice if you can assist, as it directs',
      clause: clause.flow,
    };
  }
  if (phase === 'coast-answered') {
    return {
      allowed: true,
      why: 'Distress traffic is in progress: speak only if you can assist, as the station that controls the traffic directs',
      clause: clause.flow,
    };
  }
  return phase === 'listening' || phase === 'shown'
    ? {
        allowed: false,
        why: 'Give coast stations time to acknowledge; in the vicinity the master may shorten the wait',
        clause: '47 CFR 80.1121(b)',
      }
    : {
        allowed: true,
        why: 'No coast station has acknowledged: if you are near, acknowledge by voice on channel 16, and inform a coast station',
        clause: 'RR 2024 Nos. 32.28 and 32.29A; 47 CFR 80.1121(b)',
      };
}

/**
 * Whether to acknowledge by DSC: a designated coast station without delay; any station a relay addressed to it; a ship
 * an alert only with class A, to stop one that goes on without any acknowledgement, from a vessel in the vicinity.
 */
export function dscPermission({ settings }: StationState, dialogue: Dialogue<'heard-distress'>): Permission {
  const { distressed, acknowledgedBy, alerts, call, phase } = dialogue;
  const no = (why: string, where: string = clause.acknowledgement): Permission => ({
    allowed: false,
    why,
    clause: where,
  });
  if (settings.mmsi === null) return no('Own identity is not stored', clause.identity);
  const acknowledgement = isAboutRelay(dialogue)
    ? ({ kind: 'distress-relay-acknowledgement', to: dialogue.call.to } as const)
    : ({ kind: 'distress-acknowledgement', to: { kind: 'all-ships' } } as const);
  if (!maySend(settings.equipment, acknowledgement)) {
    return no('Equipment of this class does not acknowledge distress', clause.equipment);
  }
  if (isAboutRelay(dialogue)) {
    if (call.from === null) return no('The relay does not say who sent it');
    if (isDesignated(settings)) return byHand;
    return dialogue.call.to.kind === 'station'
      ? { allowed: true, why: 'The relay is addressed to this station', clause: clause.coastRelay }
      : no('Acknowledge a relay by voice on channel 16, to the station that sent it', clause.coastRelay);
  }
  if (distressed === null) return no('The identity of the vessel in distress is not known');
  if (isDesignated(settings)) return byHand;
  if (settings.equipment === 'coast') {
    return no(
      'Only the coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC: report the distress to the coastguard',
      '47 CFR 80.103(c)',
    );
  }
  if (acknowledgedBy !== null) return no('The alert has been acknowledged');
  if (phase === 'coast-answered' || phase === 'assisting')
    return no('Distress traffic is in progress: there is no alert to stop');
  if (phase !== 'undecided' && phase !== 'inform-coast')
    return no('Keep watch on channel 16 for up to five minutes: the coastguard acknowledges');
  if (alerts < 2) return no('The alert was not repeated: there is nothing to stop');
  return {
    allowed: true,
    why: 'The alert continues and nobody acknowledged: only for a vessel in the vicinity, after consulting a rescue co-ordination centre or coast station',
    clause: 'MSC.1/Circ.1657; 47 CFR 80.1121(d)',
  };
}

const byHand: Permission = {
  allowed: true,
  why: 'A designated coast station acknowledges, by hand',
  clause: clause.acknowledgement,
};

/** Whether to pass the distress on to one coast station by DSC: RR 2024 Nos. 32.16, 32.17 and 32.19B. deviation: D-station-12 */
export function relayPermission(
  { settings }: StationState,
  dialogue: Pick<Dialogue<'heard-distress'>, 'phase' | 'acknowledgedBy' | 'call'>,
): Permission {
  const no = (why: string): Permission => ({ allowed: false, why, clause: clause.relay });
  const { phase, acknowledgedBy } = dialogue;
  if (phase === 'cancelled') return no('The vessel cancelled her alert');
  if (isCoastIdentity(acknowledgedBy) || isCoastIdentity(dialogue.call.from) || phase === 'coast-answered')
    return no('A coast station or another station is handling the distress: follow its instructions');
  if (phase === 'shown') return no('The call was received with errors: keep watch on channel 16');
  if (phase === 'listening')
    return no(
      'Keep watch on channel 16 for up to five minutes. If nobody acknowledges, pass the distress on to one coast station',
    );
  if (settings.equipment === 'coast') {
    return {
      allowed: true,
      why: 'Nobody acknowledged within five minutes: inform the coastguard or rescue co-ordination centre by any means',
      clause: clause.relay,
    };
  }
  return {
    allowed: true,
    why: 'Nobody acknowledged within five minutes: inform one coast station by a DSC relay to that station alone where your rules allow it, by voice or by any other means (in United States waters not by DSC)',
    clause: clause.relay,
  };
}

/** Whether to send a DSC relay to all ships, a group or an area. */
export function relayToManyPermission({ settings }: StationState): Permission {
  return settings.equipment === 'coast'
    ? { allowed: true, why: 'A coast station relays to the ships it needs to reach', clause: clause.relay }
    : {
        allowed: false,
        why: 'On VHF a ship sends no DSC relay to all ships or an area for an alert that it received by DSC; it may do so only when the vessel in distress cannot alert herself and the master judges that more help is needed',
        clause: clause.relay,
      };
}
