import type { Notice } from '../../result/index.ts';
import type { Call } from '../call.ts';
import { compositionOf } from '../kinds.ts';
import { isReason, isUnknown } from '../symbol.ts';
import { checkNotice } from '../texts.ts';

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
    !isUnknown(firstTelecommand)
  ) {
    notices.push(
      checkNotice(
        'call-first-telecommand-unusual',
        { telecommand: firstTelecommand, usual },
        {
          at: ['firstTelecommand'],
          received: firstTelecommand,
          clause: compositionOf(call.kind)?.clause ?? NOTES,
        },
      ),
    );
  }
  if (firstTelecommand !== 'unable-to-comply' && isReason(secondTelecommand)) {
    notices.push(
      checkNotice(
        'call-reason-misplaced',
        { reason: secondTelecommand },
        { at: ['secondTelecommand'], received: String(secondTelecommand), clause: `${NOTES}, notes 2 and 3` },
      ),
    );
  }
  if (
    (secondTelecommand === 'medical-transport' || secondTelecommand === 'neutral-craft') &&
    !WITH_TRANSPORT.includes(String(firstTelecommand))
  ) {
    notices.push(
      checkNotice(
        'call-second-telecommand-misplaced',
        { telecommand: secondTelecommand },
        {
          at: ['secondTelecommand'],
          received: secondTelecommand,
          clause: `${NOTES}, note 7, order of the notes unverified`,
        },
      ),
    );
  }
  return notices;
}

function noReason(reason: string | null): Notice {
  return checkNotice(
    'call-reason-missing',
    {},
    { at: ['reason'], received: reason ?? 'none', clause: `${NOTES}, notes 2 and 3` },
  );
}
