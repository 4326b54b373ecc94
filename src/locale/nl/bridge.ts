import type { BridgeTexts } from '../../bridge/internal.ts';
import type { Translation } from '../catalogue.ts';

export const bridge: Translation<BridgeTexts> = {
  'bridge-refused': 'Melding {kind}: een waarde erin kan niet op de andere kabel worden geschreven',
  'bridge-not-carried': 'Melding {kind}: niet overgebracht naar de andere kabel',
  'bridge-commanded-call': 'Te zenden oproep: niet overgebracht naar de andere kabel',
  'bridge-partly-carried':
    'AIS-melding: overgebracht zonder afmetingen, draaisnelheid, diepgang, bestemming en aankomst',
};
