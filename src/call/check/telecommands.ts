import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { compositionOf } from '../kinds.ts';
import { reasons } from '../symbol.ts';

const NOTES = 'Japan, MPT Notification 567 of 1990, table of telecommands';
/** First telecommands that go with a medical transport or a neutral craft; order of the notes from memory. */
const WITH_TRANSPORT = ['telephony-simplex', 'telephony-duplex', 'telephony-j3e', 'teleprinter-arq', 'morse'];

/** Whether the two telecommands go together and with this kind of call. */
export function telecommandNotices(call: Exclude<Call, Call<'unrecognised-call'>>): Notice[] {
  if (call.kind === 'unable-to-comply') return isReason(call.reason) ? [] : [noReason(call.reason)];
  if (!('secondTelecommand' in call)) return [];
  const { firstTelecommand, secondTelecommand } = call;
  const notices: Notice[] = [];
  const usual = compositionOf(call.kind)?.telecommands ?? [];
  if (
    firstTelecommand !== null &&
    !usual.some((name) => name === firstTelecommand) &&
    !firstTelecommand.startsWith('symbol-')
  ) {
    notices.push({
      code: 'call-first-telecommand-unusual',
      message: `First telecommand ${firstTelecommand} is unusual in this call`,
      at: ['firstTelecommand'],
      expected: usual.join(' or '),
      received: firstTelecommand,
      clause: compositionOf(call.kind)?.clause ?? NOTES,
    });
  }
  if (firstTelecommand !== 'unable-to-comply' && isReason(secondTelecommand)) {
    notices.push({
      code: 'call-reason-misplaced',
      message: `Second telecommand: ${secondTelecommand} is a reason, which goes with "unable to comply" only`,
      at: ['secondTelecommand'],
      received: String(secondTelecommand),
      clause: `${NOTES}, notes 2 and 3`,
    });
  }
  if (
    (secondTelecommand === 'medical-transport' || secondTelecommand === 'neutral-craft') &&
    !WITH_TRANSPORT.includes(String(firstTelecommand))
  ) {
    notices.push({
      code: 'call-second-telecommand-misplaced',
      message: `Second telecommand: ${secondTelecommand} goes with telephony, on MF and HF also with teleprinter or Morse telegraphy`,
      at: ['secondTelecommand'],
      received: secondTelecommand,
      clause: `${NOTES}, note 7, order of the notes unverified`,
    });
  }
  return notices;
}

function isReason(name: string | null): boolean {
  return reasons.rows.some((row) => row[1] === name);
}

function noReason(reason: string | null): Notice {
  return {
    code: 'call-reason-missing',
    message: 'Second telecommand: expected one of the ten reasons for being unable to comply',
    at: ['reason'],
    received: reason ?? 'none',
    clause: `${NOTES}, notes 2 and 3`,
  };
}
