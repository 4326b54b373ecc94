import { formatIdentity, type Identity } from 'seahail/identity';
import { h } from '../frame/dom.ts';

/** The digits set large, each part with its name under it. */
export function anatomy(identity: Identity): HTMLElement {
  const parts = formatIdentity(identity).split(' ');
  const names = partNames(identity);
  return h(
    'ol',
    { class: 'anatomy', 'aria-label': 'Parts of the number' },
    parts.map((digits, index) => h('li', {}, h('b', {}, digits), h('span', {}, names[index] ?? ''))),
  );
}

function partNames(identity: Identity): readonly string[] {
  switch (identity.kind) {
    case 'ship':
      return ['who issued it', 'the ship,', 'in six digits'];
    case 'ship-group':
      return ['a group', 'who issued it', 'the group'];
    case 'coast':
    case 'coast-all-national':
      return ['a coast station', 'country', 'this station'];
    case 'coast-all':
      return ['coast stations', 'everywhere', 'all of them'];
    case 'sar-aircraft':
    case 'sar-aircraft-all-national':
      return ['an aircraft', 'who issued it', 'the aircraft'];
    case 'craft':
      return ['a craft of a ship', 'who issued it', 'the craft'];
    case 'aton':
      return ['an aid to navigation', 'who issued it', 'the aid'];
    case 'handheld':
      return ['a hand-held set', 'who issued it', 'the set'];
    case 'ais-sart':
    case 'mob':
    case 'epirb-ais':
      return ['kind of device', 'its maker', 'its serial number'];
    case 'amrd-b':
      return ['kind of device', 'its serial', 'number'];
  }
}
