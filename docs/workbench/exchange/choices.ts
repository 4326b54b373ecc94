import { adviseOnDistress, type Dialogue, type StationEvent, type StationState, step } from 'seahail/station';
import type { Side } from './play.ts';

/** Something a person at one of the stations can do now. */
export interface Choice {
  readonly side: Side;
  readonly label: string;
  readonly event: StationEvent;
  /** Whether the station is waiting for the answer. */
  readonly isAsked: boolean;
}

/** Words that a station was told to speak, and nobody has said yet. */
export interface ToSpeak {
  readonly side: Side;
  readonly dialogue: number;
}

type Offer = readonly [label: string, event: StationEvent];

const ASKING: ReadonlySet<string> = new Set(['deciding', 'confirming', 'cancel-asked', 'acknowledge-asked']);

/**
 * What the people can do, read off the two stations; what a station would decline is not offered, and no talk is over
 * while something is still on its way to the other side.
 */
export function choicesOf(
  states: readonly [StationState, StationState],
  toSpeak: readonly ToSpeak[],
  isUnderWay: boolean,
): readonly Choice[] {
  return states.flatMap((state, index) => {
    const side = index as Side;
    const words = new Set(toSpeak.filter((each) => each.side === side).map(({ dialogue }) => dialogue));
    return state.dialogues
      .filter(({ phase }) => !(phase === 'on-channel' && isUnderWay))
      .flatMap((dialogue) =>
        offersIn(state, dialogue, words.has(dialogue.id))
          .filter(([, event]) => isTaken(state, event))
          .map(([label, event]): Choice => ({ side, label, event, isAsked: ASKING.has(dialogue.phase) })),
      );
  });
}

/** A station is a pure function: whether it would take an event is seen by giving it one. */
function isTaken(state: StationState, event: StationEvent): boolean {
  return step(state, { ...event, at: state.now }).effects.every(({ kind }) => kind !== 'issue');
}

function offersIn(state: StationState, dialogue: Dialogue, hasWords: boolean): readonly Offer[] {
  const base = { at: 0, dialogue: dialogue.id };
  const spoken: readonly Offer[] = hasWords ? [['The words were spoken', { kind: 'spoken', ...base }]] : [];
  const yesOrNo = (yes: string, no: string): readonly Offer[] => [
    [yes, { kind: 'confirm', ...base }],
    [no, { kind: 'decline', ...base }],
  ];
  const away: Offer = ['Dismiss it', { kind: 'dismiss', ...base }];
  switch (dialogue.procedure) {
    case 'incoming':
      if (dialogue.phase === 'deciding') {
        return [
          ['Answer: able to comply', { kind: 'answer', ...base }],
          ['Answer: busy', { kind: 'reject', reason: 'busy', ...base }],
          ['Leave it unanswered', { kind: 'dismiss', ...base }],
        ];
      }
      if (dialogue.phase === 'agreed') return yesOrNo('Yes, change channel', 'No, stay');
      return dialogue.phase === 'on-channel' ? [talkOver(dialogue.id)] : [];
    case 'outgoing':
      if (dialogue.phase === 'confirming') return yesOrNo('Yes, send it', 'No, do not send it');
      if (dialogue.phase === 'agreed') return yesOrNo('Yes, change channel', 'No, stay');
      if (dialogue.phase === 'unanswered' || dialogue.phase === 'refused') {
        return [
          ['Try again', { kind: 'retry', ...base }],
          ...('channel' in dialogue.call && dialogue.call.channel !== null
            ? [['Propose channel 77 instead', { kind: 'counter-propose', channel: '77', ...base }] as const]
            : []),
          away,
        ];
      }
      return dialogue.phase === 'on-channel' ? [talkOver(dialogue.id)] : [];
    case 'own-distress':
      if (dialogue.phase === 'cancel-asked') return yesOrNo('Yes, it was false', 'No, the distress is real');
      // Before the first attempt there is nothing to stop or to cancel.
      return dialogue.attempts === 0
        ? spoken
        : [
            ...spoken,
            ['Stop the repeats', { kind: 'stop-alert', at: 0 }],
            ['The alert was false: cancel it', { kind: 'cancel-alert', at: 0 }],
          ];
    case 'heard-distress':
      if (dialogue.phase === 'acknowledge-asked')
        return yesOrNo('Yes, acknowledge', 'No, do not acknowledge');
      return [...spoken, ...answersTo(state, dialogue.id)];
  }
}

function talkOver(dialogue: number): Offer {
  return ['The talk is over', { kind: 'dismiss', at: 0, dialogue }];
}

const ANSWERS = {
  assist: 'This vessel can help',
  'stand-by': 'This vessel cannot help',
  traffic: 'Distress traffic is heard on channel 16',
  'no-traffic': 'Nothing is heard on channel 16',
  acknowledge: 'Acknowledge the alert',
  dismiss: 'The distress is over: close this',
} as const;

/** The answers to the question of the advice, and the acknowledgement where it is allowed. */
function answersTo(state: StationState, dialogue: number): readonly Offer[] {
  const advice = adviseOnDistress(state, dialogue);
  if (advice === null) return [];
  const kinds = new Set<string>(advice.question?.answers ?? []);
  if (advice.dscAcknowledgement.allowed) kinds.add('acknowledge');
  return Object.entries(ANSWERS)
    .filter(([kind]) => kinds.has(kind))
    .map(([kind, label]) => [label, { kind: kind as keyof typeof ANSWERS, at: 0, dialogue }]);
}
