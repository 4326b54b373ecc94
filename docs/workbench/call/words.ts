import type { Call } from 'seahail/call';
import type { TimeOfDay } from 'seahail/position';
import { spokenScript } from 'seahail/speech';
import { type Child, h } from '../frame/dom.ts';
import { said } from '../frame/language.ts';
import { cautionBox, sentence } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';
import { spokenList } from '../frame/spoken.ts';

/** What the sender of a call says on the voice channel, line by line; what is not known is in brackets. */
export function wordsToSpeak(call: Call, alertTime: TimeOfDay | null): Child {
  const nameOf = (mmsi: string) => {
    const name = inventedName(mmsi);
    return name === undefined ? undefined : { name };
  };
  const own = call.from === null ? {} : { mmsi: call.from, ...nameOf(call.from) };
  const { lines, cautionText, clause } = spokenScript(call, own, { directory: nameOf, alertTime });
  const spoken = spokenList(lines, otherName(call));
  if (call.kind.startsWith('distress-')) return [cautionBox([{ ...cautionText, clause }]), spoken];
  return [
    spoken ?? h('p', {}, 'Nothing: the radios do it automatically.'),
    h('p', { class: 'mind' }, said(cautionText, sentence)),
  ];
}

function otherName({ to }: Call): string {
  const mmsi = to?.kind === 'station' ? to.mmsi : null;
  return (mmsi === null ? undefined : inventedName(mmsi)) ?? 'The other station';
}
