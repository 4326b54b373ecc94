import type { Dialogue, StationState } from 'seahail/station';
import type { Play } from './play.ts';

/** State of a play when nothing more happens without a person. */
export function endingOf({ scene, states, air }: Play): string {
  const [one, two] = scene.roles.map(({ name }) => name) as [string, string];
  const alert = dialogueOf(states[0], 'own-distress');
  if (alert?.phase === 'acknowledged')
    return `${two} has acknowledged, and the alert is repeated no more. The rest is spoken on channel 16, where the coast station leads.`;
  if (alert?.phase === 'stopped')
    return `${one} has stopped repeating the alert. If it was false it must still be cancelled, on the radio and by voice on channel 16.`;
  if (dialogueOf(states[1], 'heard-distress')?.phase === 'cancelled') return `${one} cancelled the alert.`;

  const [mine, hers] = [talkingOn(states[0]), talkingOn(states[1])];
  if (mine !== null && mine === hers) return `They are talking on channel ${mine}.`;
  if (mine !== null) return `${one} is on channel ${mine}, and ${two} is not.`;
  if (hers !== null) return `${two} is on channel ${hers}, and ${one} is not.`;

  const call = dialogueOf(states[0], 'outgoing');
  if (call?.phase === 'unanswered')
    return `Nobody answered ${one}${air === 'lost' ? ': nothing gets through this air' : ''}.`;
  if (call?.phase === 'refused') return `${two} cannot comply.`;
  return 'The sets have nothing more to do.';
}

function dialogueOf<Name extends Dialogue['procedure']>(
  { dialogues }: StationState,
  procedure: Name,
): Extract<Dialogue, { procedure: Name }> | undefined {
  return dialogues.find(
    (each): each is Extract<Dialogue, { procedure: Name }> => each.procedure === procedure,
  );
}

/** The working channel that a station is talking on. */
function talkingOn(state: StationState): string | null {
  for (const procedure of ['outgoing', 'incoming'] as const) {
    const dialogue = dialogueOf(state, procedure);
    if (dialogue?.phase === 'on-channel') return dialogue.channel;
  }
  return null;
}
