import type { BridgeTexts } from '../../bridge/internal.ts';
import type { Translation } from '../catalogue.ts';

export const bridge: Translation<BridgeTexts> = {
  'bridge-refused': '{kind:reading-kind} : une de ses valeurs ne peut pas être écrite sur l’autre câble',
  'bridge-not-carried': '{kind:reading-kind} : pas de transmission à l’autre câble',
  'bridge-commanded-call': 'Appel à émettre : non transmis à l’autre câble',
  'bridge-partly-carried':
    'Message AIS : transmis sans dimensions, vitesse angulaire, tirant d’eau, destination ni arrivée',
  'reading-kind.call': 'Appel',
  'reading-kind.expansion': 'Extension d’appel',
  'reading-kind.own-position': 'Position propre',
  'reading-kind.clock': 'Date et heure',
  'reading-kind.waypoint': 'Point de route',
  'reading-kind.target': 'Cible',
  'reading-kind.ais': 'Message AIS',
  'reading-kind.motion': 'Route et vitesse',
  'reading-kind.radio': 'Réglages de la radio',
  'reading-kind.man-overboard': 'Homme à la mer',
  'reading-kind.safety-text': 'Texte de sécurité',
  'reading-kind.node': 'Nœud du réseau',
  'reading-kind.other': 'Autre message',
  'reading-kind.damaged': 'Ligne endommagée',
};
