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
  if (!('remark' in call)) return [];
  const { communication, remark } = call;
  const notices: Notice[] = [];
  const usual = compositionOf(call.kind)?.telecommands ?? [];
  if (
    communication !== null &&
    !usual.some((name) => name === communication) &&
    !communication.startsWith('symbol-')
  ) {
    notices.push({
      code: 'call-communication-unusual',
      message: `First telecommand ${communication} is unusual in this call`,
      at: ['communication'],
      expected: usual.join(' or '),
      received: communication,
      clause: compositionOf(call.kind)?.clause ?? NOTES,
    });
  }
  if (communication !== 'unable-to-comply' && isReason(remark)) {
    notices.push({
      code: 'call-reason-misplaced',
      message: `Second telecommand: ${remark} is a reason, which goes with "unable to comply" only`,
      at: ['remark'],
      received: String(remark),
      clause: `${NOTES}, notes 2 and 3`,
    });
  }
  if (
    (remark === 'medical-transport' || remark === 'neutral-craft') &&
    !WITH_TRANSPORT.includes(String(communication))
  ) {
    notices.push({
      code: 'call-remark-misplaced',
      message: `Second telecommand: ${remark} goes with telephony, on MF and HF also with teleprinter or Morse telegraphy`,
      at: ['remark'],
      received: remark,
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
