import type { BridgeTexts } from '../../bridge/internal.ts';
import type { Translation } from '../catalogue.ts';

export const bridge: Translation<BridgeTexts> = {
  'bridge-refused': '{kind:reading-kind}: ein Wert darin lässt sich auf dem anderen Kabel nicht schreiben',
  'bridge-not-carried': '{kind:reading-kind}: wird nicht auf das andere Kabel übertragen',
  'bridge-commanded-call': 'Zu sendender Anruf: wird nicht auf das andere Kabel übertragen',
  'bridge-partly-carried':
    'AIS-Meldung: übertragen ohne Abmessungen, Wendegeschwindigkeit, Tiefgang, Ziel und Ankunft',
  'reading-kind.call': 'Anruf',
  'reading-kind.expansion': 'Erweiterung',
  'reading-kind.own-position': 'Eigene Position',
  'reading-kind.clock': 'Datum und Uhrzeit',
  'reading-kind.waypoint': 'Wegpunkt',
  'reading-kind.target': 'Ziel',
  'reading-kind.ais': 'AIS-Meldung',
  'reading-kind.motion': 'Kurs und Fahrt',
  'reading-kind.radio': 'Einstellungen des Funkgeräts',
  'reading-kind.man-overboard': 'Mann über Bord',
  'reading-kind.safety-text': 'Sicherheitstext',
  'reading-kind.node': 'Netzknoten',
  'reading-kind.other': 'Andere Meldung',
  'reading-kind.damaged': 'Beschädigte Zeile',
};
