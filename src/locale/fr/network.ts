import type { NetworkTexts } from '../../network/internal.ts';
import type { Translation } from '../catalogue.ts';

export const network: Translation<NetworkTexts> = {
  'network-not-a-frame': [
    'Trame : {expected} attendus, {received} reçu',
    'un identifiant de 29 bits et 8 octets au plus',
  ],
  'network-packet-torn': [
    'Paquet rapide du PGN {pgn} de {source} : {expected} attendues, {received} reçues',
    '{announced} trames',
  ],
  'network-packet-no-start': [
    'Paquet rapide du PGN {pgn} de {source} : {expected} attendue, {received} {received:frames} après elle',
    'une première trame',
  ],
  'network-log-not-text': ['Journal : {expected} attendu, {received} reçu', 'du texte ou des octets'],
  'network-log-line': ['Ligne : {expected} attendue, {received} reçu', 'une trame CAN d’un journal en texte'],
  'network-log-link-type': [
    'Fichier de capture : {expected} attendu, autre type reçu',
    'type de liaison 227',
  ],
  'network-log-cut-off': 'Le fichier de capture se termine au milieu d’un enregistrement',
  'network-message-short': [
    'PGN {pgn} : se termine avant son dernier champ, après {received} octets',
    'tous les champs',
  ],
  'network-identity-tenth-digit': [
    'PGN {pgn}, {field} : pas une identité avec son dixième chiffre ; {expected} attendus, {received} reçu',
    'cinq nombres de deux chiffres, le dernier chiffre 0',
  ],
  'network-ais-identity': [
    'PGN {pgn}, {field} : pas une identité ; {expected} attendus, {received} reçu',
    'neuf chiffres',
  ],
  'network-distress-one-field': [
    'PGN {pgn}, {field} : lu comme {meaning:distress-field} ; {expected} partagent ce champ, {received} reçu',
    'nature de détresse et télécommande',
  ],
  'network-distress-nature-lost': [
    'PGN {pgn}, {field} : transmet la télécommande {received} et perd la nature de détresse {nature}',
    'l’une des deux',
  ],
  'network-position-range': [
    'PGN {pgn}, {field} : pas une position ; {expected} attendus, {received} reçu',
    'au plus 90 et 180 degrés',
  ],
  'network-position-half': [
    'PGN {pgn}, {field} : une demi-position ; {expected} attendues, seulement {received} reçu',
    'latitude et longitude',
  ],
  'network-frequency': [
    'PGN {pgn}, {field} : non utilisé ; {expected} attendus, {received} reçu',
    'six chiffres',
  ],
  'network-telephone-unexpected': [
    'PGN {pgn}, {field} : non utilisé ; {expected} attendus, {received} reçu',
    'jusqu’à 16 chiffres dans un appel automatique',
  ],
  'network-text-cut-off': [
    'PGN {pgn}, {field} : plus court qu’indiqué, non utilisé ; {expected} attendus, {received} reçu',
    '{length} octets',
  ],
  'network-date-early': [
    'PGN {pgn}, {field} : antérieur de 1024 semaines, non utilisé ; {expected} attendue, {received} reçu',
    'la date du journal',
  ],
  'distress-field.telecommand': 'la télécommande',
  'distress-field.nature': 'la nature de détresse',
  'frames.1': 'trame',
  'frames.*': 'trames',
  'network-why': '{fault:network-why}',
  'network-remedy': '{fault:network-remedy}',
  'network-outside': '{check:network-outside}',
  'network-seen-no-frames': 'Aucune trame dans {count} {count:lines}',
  'network-seen-format': 'Spécificateur de format {format}',
  'network-seen-no-category': 'Spécificateur de format {format}, aucune catégorie',
  'network-seen-repeat': 'Appel {event} du journal, écrit {count} fois jusqu’ici',
  'network-seen-names': 'Adresse {address} : {count} NAME',
  'network-seen-address': 'Adresse {address}',
  'network-seen-positions': 'PGN {pgn} des adresses {addresses& et }',
  'network-seen-radio': 'Un nœud de classe d’appareil {deviceClass}, communication',
  'network-why.no-frames':
    'Aucune trame trouvée : le port est fermé, le débit est faux, ou le fichier a un autre format',
  'network-remedy.no-frames':
    'Ouvrir le port à 250 kbit/s et enregistrer le journal avec un outil CAN général',
  'network-why.not-frames':
    'Les lignes qui ne sont pas des trames sont perdues avec tout ce qu’elles portaient',
  'network-remedy.not-frames': 'Enregistrer à nouveau le journal, directement depuis le port',
  'network-why.packet-torn': 'Tout afficheur rejette un message de plusieurs trames dès qu’il en manque une',
  'network-remedy.packet-torn':
    'Chercher une passerelle qui change l’ordre des trames, un bus sans ses deux terminaisons, ou un bus surchargé',
  'network-why.no-call-message':
    'Une radio est sur le bus et aucun appel n’est passé en PGN 129808 : les anciennes radios les passent dans un groupe à elles, ou par leur seul port série',
  'network-remedy.no-call-message':
    'Chercher PGN 129808 dans le manuel de la radio, et raccorder son port série si elle ne l’a pas',
  'network-why.two-digit-codes':
    'Le message porte les codes à deux chiffres d’une phrase série au lieu des symboles 100 à 127 : un afficheur ne peut reconnaître une alerte de détresse',
  'network-remedy.two-digit-codes': 'Le signaler au fabricant du convertisseur',
  'network-why.identity-code':
    'Une identité n’est pas cinq nombres de deux chiffres finissant par 0 : écrite en un seul nombre ou en BCD, elle désigne une station qui n’a pas appelé',
  'network-remedy.identity-code':
    'Ne pas se fier à l’identité affichée. Le signaler au fabricant du convertisseur',
  'network-why.category-lost':
    'Un appel sans catégorie ressemble à un appel de routine : un appel d’urgence ou de sécurité ne déclenche aucune alarme',
  'network-remedy.category-lost': 'Regarder la radio elle-même. Le signaler au fabricant du convertisseur',
  'network-why.message-cut-off':
    'Le message ou un texte qu’il contient finit avant sa longueur : décimales de la position, nom ou route peuvent manquer',
  'network-remedy.message-cut-off': 'Comparer à ce que montre la radio. Le signaler à son fabricant',
  'network-why.date-early':
    'La date est antérieure de 1024 semaines, comme la règle un vieux récepteur GNSS : un afficheur peut croire l’appel ancien',
  'network-remedy.date-early': 'Remplacer ou mettre à jour le récepteur qui règle l’horloge du bus',
  'network-why.call-repeated': 'Un appel a été écrit plus d’une fois : une liste le montre deux fois',
  'network-remedy.call-repeated': 'Compter les appels par leur contenu, non par leur numéro de message',
  'network-why.no-address-claim':
    'Un nœud émet sans revendiquer d’adresse : certains afficheurs ignorent un tel nœud',
  'network-remedy.no-address-claim':
    'Demander à tous les nœuds leur revendication d’adresse, ou enregistrer dès la mise sous tension du bus',
  'network-why.address-disputed':
    'Deux nœuds revendiquent une adresse, ou un NAME la revendique sans cesse : les afficheurs peuvent ignorer les deux',
  'network-remedy.address-disputed':
    'Éteindre les nœuds l’un après l’autre jusqu’à la fin des revendications',
  'network-why.two-positions':
    'Deux nœuds émettent la position propre : un afficheur peut prendre la mauvaise',
  'network-remedy.two-positions': 'Choisir la source dans les réglages de l’afficheur',
  'network-why.own-report-as-target':
    'Le message AIS propre est marqué comme reçu : le navire apparaît comme une cible à côté de lui-même',
  'network-remedy.own-report-as-target':
    'Régler l’identité propre dans l’afficheur. Le signaler au fabricant du transpondeur',
  'network-why.waypoint-not-listed':
    'Une destination a été envoyée sans point de route de ce nom : un afficheur peut la suivre sans la lister',
  'network-remedy.waypoint-not-listed': 'Envoyer avec elle le PGN 129285 ou 130074',
  'network-outside.accepted':
    'Si l’afficheur accepte le PGN 129808 : son manuel donne la liste des groupes qu’il reçoit',
  'network-outside.gateway': 'Si une passerelle entre deux bus laisse passer le PGN 129808',
  'network-outside.other-vessel':
    'Si l’autre navire a entendu la demande, et si sa radio répond, demande à l’opérateur ou refuse',
  'lines.1': 'ligne',
  'lines.*': 'lignes',
};
