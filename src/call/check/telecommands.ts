import type { Notice } from '../../result/index.ts';
import { type ComposedCall, calls } from '../call-table.ts';
import { isReason, isUnknown } from '../symbol.ts';
import { checkNotice } from '../texts.ts';

const NOTES = 'Japan, MPT Notification 567 of 1990, table of telecommands';
/** First telecommands that go with a medical transport or a neutral craft; order of the notes from memory. */
const WITH_TRANSPORT = ['telephony-simplex', 'telephony-duplex', 'telephony-j3e', 'teleprinter-arq', 'morse'];

/** Whether the two telecommands go together and with this kind of call. */
export function telecommandNotices(call: ComposedCall): Notice[] {
  if (call.kind === 'unable-to-comply') {
    if (isReason(call.reason)) return [];
    return [
      checkNotice('call-reason-missing', {}, 'reason', `${NOTES}, notes 2 and 3`, call.reason ?? 'none'),
    ];
  }
  if (!('secondTelecommand' in call)) return [];
  const { firstTelecommand, secondTelecommand } = call;
  const notices: Notice[] = [];
  const { telecommands: usual, clause } = calls.rowOf(call);
  if (
    firstTelecommand !== null &&
    !usual.some((name) => name === firstTelecommand) &&
    !isUnknown(firstTelecommand)
  ) {
    const params = { telecommand: firstTelecommand, usual };
    const at = 'firstTelecommand';
    notices.push(checkNotice('call-first-telecommand-unusual', params, at, clause, firstTelecommand));
  }
  const at = 'secondTelecommand';
  if (firstTelecommand !== 'unable-to-comply' && isReason(secondTelecommand)) {
    const params = { reason: secondTelecommand };
    notices.push(
      checkNotice('call-reason-misplaced', params, at, `${NOTES}, notes 2 and 3`, secondTelecommand),
    );
  }
  if (
    (secondTelecommand === 'medical-transport' || secondTelecommand === 'neutral-craft') &&
    !WITH_TRANSPORT.includes(String(firstTelecommand))
  ) {
    const params = { telecommand: secondTelecommand };
    const note = `${NOTES}, note 7, order of the notes unverified`;
    notices.push(checkNotice('call-second-telecommand-misplaced', params, at, note, secondTelecommand));
  }
  return notices;
}
