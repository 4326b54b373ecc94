import { type Call, encodeFields } from 'seahail/call';
import { formatReportedPosition, type GeographicArea } from 'seahail/position';
import { composeFrom } from '../call/compose.ts';
import { h } from './dom.ts';
import type { Question } from './finding.ts';
import { inventedName } from './names.ts';

/** Links from a call to the pages that say more: the call itself, and whose numbers are in it. */
export function leadOn(call: Call): HTMLElement | null {
  const links = [
    ...callLink(call),
    ...numbersIn(call).map((mmsi) =>
      h('a', { href: `number.html#number=${mmsi}` }, `Who is ${inventedName(mmsi) ?? mmsi}?`),
    ),
  ];
  if (links.length === 0) return null;
  return h(
    'p',
    { class: 'lead-on' },
    links.map((link, index) => [index === 0 ? null : ' · ', link]),
  );
}

/** None where the page of calls could not make the very same call. */
function callLink(call: Call): readonly HTMLElement[] {
  const question = questionOf(call);
  const made = composeFrom(question);
  if (!made.ok || JSON.stringify(encodeFields(made.value)) !== JSON.stringify(encodeFields(call))) return [];
  return [
    h('a', { href: `call.html#${new URLSearchParams(question).toString()}` }, 'Open it on the page of calls'),
  ];
}

function questionOf(call: Call): Question {
  const to = call.to;
  const place = 'position' in call ? placeOf(call) : {};
  return {
    kind: call.kind === 'distress-relay' && to?.kind === 'all-ships' ? 'distress-relay-to-all' : call.kind,
    from: call.from ?? '',
    ...(to !== null && 'mmsi' in to && { to: to.mmsi ?? '' }),
    ...(to?.kind === 'area' && to.area !== null && areaOf(to.area)),
    ...('distressed' in call && { distressed: call.distressed ?? '' }),
    ...('category' in call && { category: String(call.category) }),
    ...('channel' in call && { channel: call.channel ?? '' }),
    ...('reason' in call && { reason: String(call.reason) }),
    ...('nature' in call && { nature: String(call.nature) }),
    ...place,
  };
}

function placeOf({ position, time }: Extract<Call, { position: unknown }>): Question {
  return {
    position: position === null ? '' : formatReportedPosition(position),
    finer: position?.fraction === undefined ? '' : 'yes',
    time:
      time === null ? '' : [time.hour, time.minute].map((part) => String(part).padStart(2, '0')).join(':'),
  };
}

function areaOf({ north, west, southward, eastward }: GeographicArea): Question {
  return {
    corner: `${north.degrees}° ${north.hemisphere} ${west.degrees}° ${west.hemisphere}`,
    south: String(southward),
    east: String(eastward),
  };
}

function numbersIn(call: Call): readonly string[] {
  const { from, to } = call;
  const addressed = to !== null && 'mmsi' in to ? to.mmsi : null;
  const distressed = 'distressed' in call ? call.distressed : null;
  return [...new Set([from, addressed, distressed])].filter((mmsi) => mmsi !== null);
}
