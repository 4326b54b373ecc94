import { type Call, spokenScript } from 'seahail/call';
import { h } from '../frame/dom.ts';
import { cautionBox, sentence } from '../frame/ledger.ts';
import { inventedName } from '../frame/names.ts';

/** What the sender of a call says on the voice channel, line by line; what is not known stands in brackets. */
export function wordsToSpeak(call: Call): readonly (HTMLElement | null)[] {
  const nameOf = (mmsi: string) => {
    const name = inventedName(mmsi);
    return name === undefined ? undefined : { name };
  };
  const own = call.from === null ? {} : { mmsi: call.from, ...nameOf(call.from) };
  const { lines, caution, clause } = spokenScript(call, own, { directory: nameOf });
  if (call.kind.startsWith('distress-')) {
    return [cautionBox([{ text: caution, clause }]), spoken(lines)];
  }
  return [
    lines.length === 0 ? h('p', {}, 'Nothing: the sets settle it between them.') : spoken(lines),
    h('p', { class: 'mind' }, sentence(caution)),
  ];
}

function spoken(lines: readonly { readonly say: string }[]): HTMLElement | null {
  return lines.length === 0
    ? null
    : h(
        'ul',
        { class: 'spoken' },
        lines.map(({ say }) => h('li', {}, say)),
      );
}
