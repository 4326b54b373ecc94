import type { Call } from '../../call/index.ts';
import { tell } from '../engine/action.ts';
import { briefly } from '../engine/brief.ts';
import { isForStation, type Received } from '../engine/on-air.ts';
import { emit, log, type Turn } from '../engine/turn.ts';
import type { Dialogue } from '../model/dialogue.ts';
import type { StationEvent } from '../model/event.ts';
import { MOST_PROVISIONAL, type StationState } from '../model/state.ts';
import { adviceFor } from '../procedures/other-distress/advise.ts';
import { answerTrigger, findQuestion } from '../procedures/outgoing.ts';
import { say } from '../texts.ts';
import { fireOn, openDialogue } from './dialogues.ts';
import { distressTrigger, hearDistress } from './receive-distress.ts';

/** Takes a received call to the dialogue it belongs to, or opens one for it. */
export function hear(turn: Turn, received: StationEvent<'received'>): void {
  const { call, verdict, event, stage } = received;
  const { state } = turn;
  if (event === undefined) take(turn, { call, verdict });
  else if (stage === 'provisional') {
    const before = state.nextDialogue;
    const about = dialogueAbout(turn, call);
    take(turn, { call, verdict });
    const opened = state.nextDialogue > before ? before : null;
    const others = state.provisional.filter((each) => each.event !== event);
    state.provisional = [...others, { event, call, dialogue: opened ?? about }].slice(-MOST_PROVISIONAL);
  } else {
    const provisional = state.provisional.find((each) => each.event === event);
    state.provisional = state.provisional.filter((each) => each !== provisional);
    if (provisional !== undefined && isSameSubject(provisional.call, call))
      complete(turn, provisional, received);
    else take(turn, { call, verdict });
  }
}

function take(turn: Turn, { call, verdict }: Received): void {
  const { settings } = turn.state;
  if (!isForStation(turn.state, call)) {
    if (settings.logOthers)
      log(turn, null, {
        what: 'received',
        ...say('station-addressed-to-others', { call: briefly(call) }),
        call,
        verdict,
      });
    return;
  }
  const trigger = distressTrigger(call);
  const quality = verdict === 'clean' ? {} : { verdict };
  const text = say('station-received', { ...quality, call: briefly(call) });
  log(turn, null, { what: 'received', ...text, call, verdict });
  if (trigger !== null) hearDistress(turn, { call, verdict }, trigger);
  // The own transmission may come back from another receiver aboard.
  else if (call.from === null || call.from !== settings.mmsi) hearOther(turn, { call, verdict });
}

function hearOther(turn: Turn, heard: Received): void {
  const { call, verdict } = heard;
  const { state } = turn;
  if (isAnswer(call) || call.kind === 'position-reply') {
    const question = findQuestion(turn, call);
    if (question !== undefined && fireOn(turn, question, answerTrigger(heard), heard)) return;
  }
  if (isAnswer(call)) {
    tell(turn, null, 'unexpected-answer', say('station-unexpected-answer', { call: briefly(call) }), call);
    return;
  }
  const again = state.dialogues.find((dialogue) => isSameCall(dialogue, call));
  if (again !== undefined && verdict !== 'doubtful' && fireOn(turn, again, 'repeated', heard)) return;
  openDialogue(
    turn,
    {
      procedure: 'incoming',
      phase: 'shown',
      call,
      verdict,
      times: 1,
      answer: null,
      automatic: false,
      channel: null,
    },
    'call',
    heard,
  );
}

/** The final reading of a call that was acted on already: what it adds is shown, kept and logged, and nothing else is done. */
function complete(
  turn: Turn,
  { call: before, dialogue: id }: StationState['provisional'][number],
  { call, verdict }: Received,
): void {
  if (JSON.stringify(before) === JSON.stringify(call)) return;
  const text = say('station-received-in-full', { call: briefly(call) });
  log(turn, null, { what: 'received', ...text, call, verdict });
  const dialogue = turn.state.dialogues.find((each) => each.id === id) ?? null;
  if (dialogue?.procedure === 'heard-distress' || dialogue?.procedure === 'incoming') {
    if (JSON.stringify(dialogue.call) === JSON.stringify(before)) dialogue.call = call;
  } else if (dialogue?.procedure === 'outgoing') {
    if (JSON.stringify(dialogue.answer) === JSON.stringify(before)) dialogue.answer = call;
  }
  if (!isForStation(turn.state, call)) return;
  const topic = call.kind === 'position-reply' ? 'position-received' : 'received-in-full';
  emit(turn, dialogue, { kind: 'show', topic, ...text, call });
  if (dialogue?.procedure === 'heard-distress')
    emit(turn, dialogue, { kind: 'advise', advice: adviceFor(turn.state, dialogue) });
}

/** Expansions add to a call; they change neither its kind nor who is meant. */
function isSameSubject(one: Call, other: Call): boolean {
  const subject = (of: Call) => [of.kind, of.from, 'distressed' in of ? of.distressed : null];
  return subject(one).join() === subject(other).join();
}

/** The dialogue that a call received belongs to, as far as one is open. */
function dialogueAbout(turn: Turn, call: Call): number | null {
  const { dialogues } = turn.state;
  const distressed =
    'distressed' in call ? call.distressed : call.kind === 'distress-alert' ? call.from : null;
  const about = dialogues.find((dialogue) =>
    dialogue.procedure === 'heard-distress'
      ? distressed !== null && dialogue.distressed === distressed
      : isSameCall(dialogue, call),
  );
  return about?.id ?? findQuestion(turn, call)?.id ?? null;
}

function isAnswer(call: Call): boolean {
  return call.kind === 'position-reply' ? !call.unsolicited : answers.includes(call.kind);
}

const answers: readonly Call['kind'][] = [
  'individual-acknowledgement',
  'unable-to-comply',
  'test-acknowledgement',
  'polling-acknowledgement',
];

/** The same caller with the same wish: another address, channel or category makes it another call. */
function isSameCall(dialogue: Dialogue, call: Call): boolean {
  if (dialogue.procedure !== 'incoming' || dialogue.verdict === 'doubtful' || call.from === null)
    return false;
  const wish = (of: Call) => [
    of.kind,
    of.from,
    'category' in of ? of.category : null,
    'channel' in of ? of.channel : null,
    of.to,
  ];
  return JSON.stringify(wish(dialogue.call)) === JSON.stringify(wish(call));
}
