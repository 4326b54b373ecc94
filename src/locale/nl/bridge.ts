import type { BridgeTexts } from '../../bridge/internal.ts';
import type { Translation } from '../catalogue.ts';

export const bridge: Translation<BridgeTexts> = {
  'bridge-refused': '{kind:reading-kind}: een waarde erin kan niet op de andere kabel worden geschreven',
  'bridge-not-carried': '{kind:reading-kind}: niet overgebracht naar de andere kabel',
  'bridge-commanded-call': 'Te zenden oproep: niet overgebracht naar de andere kabel',
  'bridge-partly-carried':
    'AIS-melding: overgebracht zonder afmetingen, draaisnelheid, diepgang, bestemming en aankomst',
  'reading-kind.call': 'Oproep',
  'reading-kind.expansion': 'Uitbreiding',
  'reading-kind.own-position': 'Eigen positie',
  'reading-kind.clock': 'Datum en tijd',
  'reading-kind.waypoint': 'Routepunt',
  'reading-kind.target': 'Doel',
  'reading-kind.ais': 'AIS-melding',
  'reading-kind.motion': 'Koers en snelheid',
  'reading-kind.radio': 'Instellingen van de marifoon',
  'reading-kind.man-overboard': 'Man over boord',
  'reading-kind.safety-text': 'Veiligheidstekst',
  'reading-kind.node': 'Netwerkknoop',
  'reading-kind.other': 'Andere melding',
  'reading-kind.damaged': 'Beschadigde regel',
};
