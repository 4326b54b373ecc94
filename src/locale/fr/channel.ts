import type { ChannelTexts } from '../../channel/internal.ts';
import type { Translation } from '../catalogue.ts';

export const channel: Translation<ChannelTexts> = {
  'channel-not-text': [
    'Voie : texte attendu, {type} reçu',
    'un numéro comme « 06 », « 22A » ou « 1022 », ou un nom comme « AIS 1 » ou « WX3 »',
  ],
  'channel-empty': [
    'Voie vide : {expected} attendu',
    'un numéro comme « 06 », « 22A » ou « 1022 », ou un nom comme « AIS 1 » ou « WX3 »',
  ],
  'channel-is-frequency': [
    'Voie {received} : ressemble à une fréquence, {expected} attendu',
    'un numéro comme « 06 », « 22A » ou « 1022 », ou un nom comme « AIS 1 » ou « WX3 »',
  ],
  'channel-malformed': [
    'Voie {received} : ce n’est pas un nom de voie, {expected} attendu',
    'un numéro comme « 06 », « 22A » ou « 1022 », ou un nom comme « AIS 1 » ou « WX3 »',
  ],
  'channel-number-range': [
    'Numéro de voie {number} : pas en usage, {expected} attendu',
    '01 à 28 ou 60 à 88',
  ],
  'channel-four-digit': [
    'Voie {received} : préfixe inconnu, 10 pour la fréquence navire ou 20 pour la fréquence côtière attendu',
    'deux chiffres, ou quatre qui commencent par 00, 10 ou 20',
  ],
  'channel-no-legs': [
    'Voie {suggestion} : une seule fréquence, donc pas de fréquence {leg:leg} {received}',
    '{suggestion}',
  ],
  'channel-interleaved': [
    'Voie {received} : numéro d’une voie intercalaire à 12,5 kHz, qu’aucun plan n’a ici',
    'un numéro de 01 à 28 ou de 60 à 88',
  ],
  'channel-no-plan': [
    'Plan de voies : {expected} attendu, {received:given} reçu',
    'un plan tel que definePlan le fait',
  ],
  'channel-plan-incomplete': [
    'Plan de voies : il manque des champs à des voies, {expected} attendu',
    'un plan tel que definePlan le fait',
  ],
  'channel-not-in-plan': [
    'Voie {channel} absente du plan « {plan} »[ : {reading}][ ; le plan a {there& et }]',
    'une voie du plan « {plan} »',
  ],
  'channel-meaning-differs':
    'Voie {channel} : différente dans le plan « {plan} », qui a {other} ({frequencies})',
  'channel-not-on-set':
    'Voie {channel} : un appareil avec les voies de « {plan} » ne peut pas la régler[ ; il a sous ce nom {frequencies}]',
  'channel-frequency-type': [
    'Fréquence : {expected} attendu, {type} reçu',
    'mégahertz comme « 156.800 », ou kilohertz comme « 156800 »',
  ],
  'channel-frequency-malformed': [
    'Fréquence {received} illisible : « 156.8 » ou « 156800 » attendu',
    'mégahertz comme « 156.800 », ou kilohertz comme « 156800 »',
  ],
  'channel-frequency-number': [
    'Fréquence {received} : kilohertz non entiers, 156800 ou le texte « 156.8 » attendu',
    'kilohertz entiers, ou mégahertz en texte',
  ],
  'channel-digits-malformed': [
    'Chiffres de voie : {expected} attendus, {received} reçu',
    'six chiffres, ou huit qui commencent par 4',
  ],
  'channel-private-number':
    'Voie {channel} : hors de l’appendice 18, les numéros 29 à 59 sont des voies privées de certains pays',
  'channel-elsewhere': 'Voie {channel} dans le plan « {plan} » : {frequencies}, {note}',
  'channel-digits-unknown':
    'Chiffres de voie {received} : commencent par {digit}, sans signification connue sur six chiffres',
  'channel-digits-second': [
    'Chiffres de voie {received} : {digit} en deuxième position, {expected} attendu',
    '0',
  ],
  'channel-digits-old-form':
    'Chiffres de voie {received} : le deuxième chiffre désigne la fréquence navire ou côtière, lus comme {channel}',
  'channel-digits-single-leg-only':
    'Voie {channel} reçue, mais le plan « {plan} » a {suggestion} à sa place : l’expéditeur peut vouloir dire l’une ou l’autre',
  'channel-frequency-one': '{ship} MHz',
  'channel-frequency-coast': '{coast} MHz, émission de la côte seulement',
  'channel-frequency-two': 'navires sur {ship} et stations côtières sur {coast} MHz',
  'channel-there': '{channel} ({frequencies})',
  'channel-by-number-one': 'd’après son numéro, {ship} MHz',
  'channel-by-number-two': 'd’après son numéro, navires sur {ship} et stations côtières sur {coast} MHz',
  'channel-by-number-leg': 'd’après son numéro, la fréquence {leg:leg} de {number} seule, {ship} MHz',
  'channel-by-name': '{initial:channel-name}',
  'channel-calls-only': 'Voie {channel} : appels sélectifs numériques seulement, jamais de parole',
  'channel-receive-only': 'Voie {channel} : réception seulement, {reason}',
  'channel-data-only': 'Voie {channel} : pas pour la parole, {reason}',
  'channel-reserved': 'Voie {channel} : ne peut pas être proposée dans un appel, {reason}',
  'channel-not-to-be-named': 'Voie {channel} : ne peut pas être proposée dans un appel, {reason}',
  'channel-selective-calls-restricted': 'Voie {channel} : ne peut pas être proposée dans un appel, {rule}',
  'channel-distress-and-calling':
    'Voie {channel} : pour la détresse, la sécurité et l’appel ; changer de voie pour le trafic de travail',
  'channel-two-frequency':
    'Voie {channel} : deux fréquences, l’autre navire écoute côté côte, {coast} MHz, et n’entend pas un navire sur {ship} MHz',
  'channel-ships-only':
    'Voie {channel} : entre navires seulement, aucune station côtière n’y travaille dans le plan « {plan} »',
  'channel-not-intership':
    'Voie {channel} : pas pour {purpose:purpose} dans le plan « {plan} » ; {note}[ ({caution})]',
  'channel-other-use':
    'Voie {channel} : pas pour {purpose:purpose} dans le plan « {plan} » ; {note}[ ({caution})]',
  'channel-restricted': 'Voie {channel} dans le plan « {plan} » : {caution}',
  'channel-regional': 'Voie {channel} : cet usage ne vaut que dans une partie des eaux, {region}',
  'channel-coast-names-it':
    'Voie {channel} : inutile de la proposer, une station côtière choisit d’ordinaire la voie de travail',
  'channel-caution': 'Voie {channel} dans le plan « {plan} » : {caution}',
  'channel-low-power': 'Voie {channel} : puissance limitée, {limit}',
  'channel-safety-calls-only': 'Voie {channel} dans le plan « {plan} » : {rule}',
  'channel-serves': '{reasons& ; }',
  'channel-use': '{plan} : {note}[ ({caution})]',
  'channel-plan-malformed': [
    'Plan de voies[ {place}] : {expected} attendu, {received:given} reçu',
    '{rule:plan-rule}',
  ],
  'channel-plan-word': ['Plan de voies {place} : {expected} attendu, {received:given} reçu', '{accepted&, }'],
  'channel-plan-name-twice': [
    'Plan de voies {place} : {expected} attendu, {received:given} reçu',
    'un autre nom que celui de {holder}',
  ],
  'leg.ship': 'navire',
  'leg.coast': 'côtière',
  'channel-name.W': 'les voies météo sont des diffusions d’Amérique du Nord',
  'channel-name.M': 'M et M2 sont des voies de ports de plaisance du Royaume-Uni',
  'channel-name.P': 'P4 est un ancien nom de la voie M2 des ports de plaisance du Royaume-Uni',
  'channel-name.L': 'les voies L sont pour la plaisance dans les eaux nordiques',
  'channel-name.F': 'les voies F sont pour les navires de pêche dans les eaux nordiques',
  'channel-name.0': '0 est la voie privée des garde-côtes du Royaume-Uni',
  'purpose.intership-non-commercial': 'le trafic non commercial entre navires',
  'purpose.intership-commercial': 'le trafic commercial entre navires',
  'purpose.intership-navigation': 'la sécurité de la navigation entre navires',
  'purpose.ship-to-coast': 'le trafic entre navire et côte',
  'purpose.safety': 'le trafic de détresse, d’urgence et de sécurité',
  'plan-rule.plan': 'un objet avec name et channels',
  'plan-rule.channel': 'une voie telle que simplexChannel la fait',
  'plan-rule.calling': 'des voies de ce plan',
  'plan-rule.text': 'texte',
  'plan-rule.text-or-null': 'texte ou null',
  'plan-rule.texts': 'une liste de textes',
  'plan-rule.truth': 'true ou false',
  'plan-rule.watts': 'watts supérieurs à zéro, ou null',
  'plan-rule.khz': 'kilohertz entiers ou null',
  'plan-rule.name': 'un nom de 1 à 40 caractères',
  'plan-rule.names': 'une liste de noms de 1 à 40 caractères',
  'plan-rule.channels': 'une liste de voies',
  'plan-rule.m1084': 'chiffres de l’UIT-R M.1084 ou null',
  'plan-rule.uses': 'une liste d’usages',
  'plan-rule.limits': 'une liste de limites de puissance avec watts, measure et when',
  'plan-rule.data': 'permitted, prohibited ou null',
  'plan-rule.intership': 'nonCommercial et commercial, chacun preferred, allowed, restricted ou prohibited',
  'plan-rule.evidence': 'frequency, use et power, chacun avec basis et source',
  'plan-rule.frequency': 'une fréquence pour les navires, pour les stations côtières ou pour les deux',
  'plan-rule.mode': 'duplex pour deux fréquences, simplex pour une',
  'plan-rule.receive-only': 'true là où les navires n’ont pas de fréquence',
  'plan-rule.transmitters': 'ceux qui ont une fréquence',
  'plan-rule.reason': 'une raison là où la voie ne peut pas être nommée, sinon null',
};
