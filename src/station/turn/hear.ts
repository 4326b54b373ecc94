import type { Call } from '../../call/index.ts';
import type { Dialogue } from '../state/dialogue.ts';
import type { HeardEvent } from '../state/event.ts';
import { briefly } from './brief.ts';
import { tell } from './common-action.ts';
import { answerTrigger, findQuestion, type Heard } from './find-question.ts';
import { fireOn } from './fire-on.ts';
import { isForStation } from './for-station.ts';
import { distressTrigger, hearDistress } from './hear-distress.ts';
import { openDialogue } from './open-dialogue.ts';
import { log, type Turn } from './turn.ts';

/** Takes a received call to the dialogue it belongs to, or opens one for it. */
export function hear(turn: Turn, { call, verdict }: HeardEvent): void {
  const { settings } = turn.state;
  if (!isForStation(turn.state, call)) {
    if (settings.logOthers)
      log(turn, null, { what: 'heard', text: `For others: ${briefly(call)}`, call, verdict });
    return;
  }
  const trigger = distressTrigger(call);
  const quality = verdict === 'clean' ? '' : ` (${verdict})`;
  log(turn, null, { what: 'heard', text: `Heard${quality}: ${briefly(call)}`, call, verdict });
  if (trigger !== null) hearDistress(turn, { call, verdict }, trigger);
  // The own transmission may come back from another receiver aboard.
  else if (call.from === null || call.from !== settings.mmsi) hearOther(turn, { call, verdict });
}

function hearOther(turn: Turn, heard: Heard): void {
  const { call, verdict } = heard;
  const { state } = turn;
  if (isAnswer(call) || call.kind === 'position-reply') {
    const question = findQuestion(turn, call);
    if (question !== undefined && fireOn(turn, question, answerTrigger(heard), heard)) return;
  }
  if (isAnswer(call)) {
    tell(turn, null, 'unexpected-answer', `An answer that nothing waits for: ${briefly(call)}`, call);
    return;
  }
  const again = state.dialogues.find((dialogue) => isSameCall(dialogue, call));
  if (again !== undefined && verdict !== 'doubtful' && fireOn(turn, again, 'repeated', heard)) return;
  openDialogue(
    turn,
    { procedure: 'incoming', call, verdict, times: 1, answer: null, automatic: false, channel: null },
    'call',
    heard,
  );
}

function isAnswer(call: Call): boolean {
  switch (call.kind) {
    case 'individual-acknowledgement':
    case 'unable-to-comply':
    case 'test-acknowledgement':
    case 'polling-acknowledgement':
      return true;
    case 'position-reply':
      return !call.unasked;
    default:
      return false;
  }
}

/** The same caller with the same wish: another channel or category makes it another call. */
function isSameCall(dialogue: Dialogue, call: Call): boolean {
  if (dialogue.procedure !== 'incoming' || dialogue.verdict === 'doubtful' || call.from === null)
    return false;
  const wish = (of: Call) => [
    of.kind,
    of.from,
    'category' in of ? of.category : null,
    'channel' in of ? of.channel : null,
  ];
  return wish(dialogue.call).join() === wish(call).join();
}
