import type { BridgeTexts } from '../../bridge/internal.ts';
import type { Translation } from '../catalogue.ts';

export const bridge: Translation<BridgeTexts> = {
  'bridge-refused': 'Meldung {kind}: ein Wert darin lässt sich auf dem anderen Kabel nicht schreiben',
  'bridge-not-carried': 'Meldung {kind}: wird nicht auf das andere Kabel übertragen',
  'bridge-commanded-call': 'Zu sendender Anruf: wird nicht auf das andere Kabel übertragen',
  'bridge-partly-carried':
    'AIS-Meldung: übertragen ohne Abmessungen, Wendegeschwindigkeit, Tiefgang, Ziel und Ankunft',
};
