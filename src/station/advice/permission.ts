import type { DistressRelay } from '../../call/index.ts';
import { clause } from '../state/clause.ts';
import type { HeardDistressDialogue } from '../state/dialogue.ts';
import { maySend } from '../state/equipment.ts';
import type { StationState } from '../state/state.ts';
import { isCoastIdentity } from '../turn/own-identity.ts';

/** Whether something is allowed, and why or why not. */
export interface Permission {
  readonly allowed: boolean;
  readonly why: string;
  readonly clause: string;
}

/** Whether a coast station relayed this distress: then it has it in hand, and looks for ships to help. */
export function isRelayedByCoast({ call }: HeardDistressDialogue): boolean {
  return call.kind === 'distress-relay' && isCoastIdentity(call.from);
}

/** Whether all that was heard is a relay: then it is the relay that is acknowledged, not an alert. */
export function isAboutRelay(
  dialogue: HeardDistressDialogue,
): dialogue is HeardDistressDialogue & { readonly call: DistressRelay } {
  return dialogue.call.kind === 'distress-relay' && dialogue.alerts === 0;
}

/** Whether to acknowledge by voice on channel 16. */
export function voicePermission({ settings }: StationState, dialogue: HeardDistressDialogue): Permission {
  const { phase } = dialogue;
  if (settings.equipment === 'coast') {
    return {
      allowed: true,
      why: 'A coast station answers on channel 16 after its DSC acknowledgement',
      clause: clause.acknowledgement,
    };
  }
  if (isRelayedByCoast(dialogue)) {
    return {
      allowed: true,
      why: 'A coast station relays the distress: answer it by voice when able to assist, as it directs',
      clause: clause.coastRelay,
    };
  }
  if (isCoastIdentity(dialogue.acknowledgedBy)) {
    return {
      allowed: true,
      why: 'A coast station has acknowledged: answer by voice when able to assist, as it directs',
      clause: clause.relay,
    };
  }
  if (phase === 'coast-answered') {
    return {
      allowed: true,
      why: 'Distress traffic is heard: speak only when able to assist, as the station that leads the traffic directs',
      clause: clause.relay,
    };
  }
  return phase === 'listening' || phase === 'shown'
    ? {
        allowed: false,
        why: 'Coast stations are given time first; in the vicinity the master may shorten it',
        clause: '47 CFR 80.1121(b)',
      }
    : {
        allowed: true,
        why: 'No coast station was heard to acknowledge: a vessel near enough acknowledges by voice on channel 16, and then tells a coast station',
        clause: '47 CFR 80.1121(b)',
      };
}

/**
 * Whether to acknowledge by DSC: a coast station at once; a ship a relay that is addressed to her, and an alert only
 * with class A, to end one that goes on without any acknowledgement.
 */
export function dscPermission({ settings }: StationState, dialogue: HeardDistressDialogue): Permission {
  const { distressed, acknowledgedBy, alerts, call, phase } = dialogue;
  const no = (why: string, where: string = clause.acknowledgement): Permission => ({
    allowed: false,
    why,
    clause: where,
  });
  if (settings.mmsi === null) return no('No own identity is stored', clause.identity);
  const acknowledgement = isAboutRelay(dialogue)
    ? ({ kind: 'distress-relay-acknowledgement', to: dialogue.call.to } as const)
    : ({ kind: 'distress-acknowledgement', to: { kind: 'all-ships' } } as const);
  if (!maySend(settings.equipment, acknowledgement)) {
    return no('This class of equipment does not acknowledge distress', clause.equipment);
  }
  if (isAboutRelay(dialogue)) {
    if (call.from === null) return no('The relay does not say who sent it');
    if (settings.equipment === 'coast') {
      return { allowed: true, why: 'Coast stations acknowledge, by hand', clause: clause.acknowledgement };
    }
    return dialogue.call.to.kind === 'station'
      ? { allowed: true, why: 'The relay is addressed to this station', clause: clause.coastRelay }
      : no(
          'A ship acknowledges a relay by voice on channel 16, to the station that sent it',
          clause.coastRelay,
        );
  }
  if (distressed === null) return no('The identity of the vessel in distress is not known');
  if (settings.equipment === 'coast') {
    return { allowed: true, why: 'Coast stations acknowledge, by hand', clause: clause.acknowledgement };
  }
  if (acknowledgedBy !== null) return no('The alert is acknowledged already');
  if (phase !== 'undecided' && phase !== 'inform-coast')
    return no('Coast stations are given five minutes first');
  if (alerts < 2) return no('The alert is not repeated: there is nothing to stop');
  return {
    allowed: true,
    why: 'The alert goes on and nobody acknowledged: after consulting a rescue co-ordination centre',
    clause: '47 CFR 80.1121(d)',
  };
}

/** Whether to pass the distress on. */
export function relayPermission({ settings }: StationState): Permission {
  if (settings.equipment === 'coast') {
    return {
      allowed: true,
      why: 'Coast stations relay to the ships they want to reach',
      clause: clause.relay,
    };
  }
  return {
    allowed: false,
    why: 'An alert heard on VHF is no reason for a relay. One is allowed only when the vessel in distress cannot alert herself and the master judges that more help is needed',
    clause: clause.relay,
  };
}
