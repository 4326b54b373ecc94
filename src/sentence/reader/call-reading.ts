import { expandFields, readFields, unnamedChannelNotices } from '../../call/internal.ts';
import type { TimeOfDay } from '../../position/index.ts';
import { resolveTime } from '../../position/internal.ts';
import type { Reading } from '../../report/index.ts';
import { isLegacy } from '../dsc/layout.ts';
import type { ReaderSettings } from './options.ts';
import type { CallState } from './pairing.ts';

/** Reading of a call, with the finer position and the data of its expansion. */
export function callReading(
  { open, stage, sets, notices }: CallState,
  settings: ReaderSettings,
): Reading<'call'> {
  const { dsc, receipt } = open;
  const at = receipt.at ?? settings.now;
  open.read ??= readFields(dsc.fields);
  const read = sets.length === 0 ? open.read : expandFields(open.read, sets);
  // The older layout has no field for a channel, and a commanded call leaves it to the radio.
  const mayName = settings.direction === 'received' && !isLegacy(open.sentences[0]?.fields ?? []);
  const unnamed = mayName ? unnamedChannelNotices(read.call) : [];
  return {
    kind: 'call',
    line: open.line,
    offset: open.offset,
    at,
    notices: [...open.notices, ...dsc.notices, ...read.notices, ...unnamed, ...notices],
    event: open.event,
    repeat: open.repeat,
    stage,
    call: read.call,
    direction: settings.direction,
    talker: open.sentences[0]?.talker ?? '',
    positionTime: 'time' in read.call ? dated(read.call.time, at) : null,
    sources: open.sentences.slice(),
  };
}

function dated(time: TimeOfDay | null, at: number | null): ReturnType<typeof resolveTime> | null {
  return time === null || at === null ? null : resolveTime(time, at);
}
