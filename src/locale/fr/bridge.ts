import type { BridgeTexts } from '../../bridge/internal.ts';
import type { Translation } from '../catalogue.ts';

export const bridge: Translation<BridgeTexts> = {
  'bridge-refused': 'Donnée {kind} : une de ses valeurs ne peut pas être écrite sur l’autre câble',
  'bridge-not-carried': 'Donnée {kind} : non transmise à l’autre câble',
  'bridge-commanded-call': 'Appel à émettre : non transmis à l’autre câble',
  'bridge-partly-carried':
    'Message AIS : transmis sans dimensions, vitesse angulaire, tirant d’eau, destination ni arrivée',
};
