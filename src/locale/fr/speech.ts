import type { SpeechTexts } from '../../speech/internal.ts';
import type { Translation } from '../catalogue.ts';

type Own = Omit<SpeechTexts, 'terms'>;

/** The terms are those of calls. */
export const speech: Translation<Own> = {
  'speech-only-in-danger':
    'N’émettre un appel de détresse que si un navire ou une personne est en danger grave et imminent et a besoin d’une aide immédiate, sur ordre du capitaine',
  'speech-when-to-relay':
    'Relayer si personne n’a accusé réception de l’alerte ou de l’appel MAYDAY dans les 5 minutes environ. Relayer aussi si un navire en détresse ne peut manifestement pas appeler, ou à la demande d’un centre de coordination de sauvetage. Essayer d’abord une station côtière',
  'speech-acknowledge-when-near':
    'Écouter d’abord. À proximité du navire, si aucune station côtière n’a accusé réception, le faire soi-même. Ensuite écouter et suivre les instructions de la station qui dirige le trafic. Si personne n’accuse réception dans les 5 minutes, relayer la détresse à une station côtière par tout moyen',
  'speech-already-acknowledged':
    'Écouter d’abord : l’accusé de réception de la détresse a été donné. Ne parler que si le navire peut porter assistance, sans interrompre le trafic. Ensuite écouter et suivre les instructions de la station qui dirige le trafic',
  'speech-coast-acknowledges':
    'Accuser réception sans délai. Aux États-Unis, laisser d’abord un court délai au centre de coordination de sauvetage. Informer ensuite le centre de coordination de sauvetage. Prendre la direction du trafic ou la transmettre',
  'speech-coast-listens':
    'Écouter : l’accusé de réception de la détresse a été donné. Prendre la direction du trafic si la station qui le dirige ou le centre de coordination de sauvetage le demande',
  'speech-relay-when-near':
    'N’accuser réception que si l’on est assez proche pour aider. Sinon assurer la veille {where:distress-voice}',
  'speech-cancel-at-once':
    'Annuler aussitôt, sur chaque bande où l’alerte a été émise. Si aucune station côtière ne répond, en informer une par un autre moyen',
  'speech-urgency':
    'Pour un message très urgent sur la sécurité d’un navire ou d’une personne, sur ordre du capitaine. Écouter ensuite au moins 3 minutes sur la voie utilisée. L’annuler dès qu’il n’a plus lieu d’être. En cas de danger grave et imminent, émettre un MAYDAY',
  'speech-safety':
    'Pour les avertissements de navigation et de météo. Émettre un long message sur une voie de travail',
  'speech-manners':
    'Utiliser la faible puissance si elle suffit. Être bref. N’utiliser qu’une voie de travail. Laisser libres les voies 16 et 70',
  'speech-radio-check':
    'Utiliser une voie de travail. Émettre au plus 10 secondes à la fois. Essayer la fonction ASN par un appel d’essai, sans parole',
  'speech-watch-after-acknowledgement':
    'Assurer la veille {where:distress-voice} après l’accusé de réception',
  'speech-alert-cancelled':
    'Écouter {where:distress-voice} l’annulation en phonie : le navire a annulé son alerte',
  'speech-relay-acknowledged': 'Écouter {where:distress-voice} : l’accusé de réception du relais a été donné',
  'speech-nothing-follows': 'Aucun message en phonie ne suit cet appel',
  'speech-not-speech': 'Le trafic qui suit n’est pas de la parole',
  'speech-listen': 'Écouter sur la voie indiquée dans l’appel',
  'speech-listen-for-pan-pan':
    'Écouter sur la voie indiquée dans l’appel. L’appelant commence par PAN PAN et dit qui doit répondre',
  'speech-listen-for-securite':
    'Écouter sur la voie indiquée dans l’appel. L’appelant commence par SECURITE et dit si une réponse est attendue',
  'speech-on-the-band': 'Parler {where:distress-voice}. {caution}',
  'speech-title-distress': 'Appel et message de détresse',
  'speech-title-relay': 'Relais de détresse',
  'speech-title-received': 'Accusé de réception d’une détresse',
  'speech-title-relay-received': 'Accusé de réception d’un relais de détresse',
  'speech-title-cancel': 'Annulation d’une fausse alerte',
  'speech-title-urgency': 'Appel et message d’urgence',
  'speech-title-safety': 'Appel et message de sécurité',
  'speech-title-caller': 'Premiers mots : l’appelant commence',
  'speech-title-called': 'Premiers mots : la station appelée répond',
  'speech-title-radio-check': 'Essai radio',
  'speech-title-nothing': 'Rien à dire',
  'speech-note-at-once':
    'Utiliser la pleine puissance. Commencer dès que l’alerte est partie, au plus tard environ 15 secondes après, avec ou sans accusé de réception',
  'speech-note-alerted': 'Si une alerte a été émise par ASN',
  'speech-note-message': 'Début du message',
  'speech-note-repeat': 'Relâcher l’alternat et écouter. Répéter depuis le début si personne ne répond',
  'speech-note-coast-first':
    'Ou trois fois le nom d’une station côtière : essayer d’abord une station côtière',
  'speech-note-vessel': 'Le navire en détresse',
  'speech-note-vessel-message': 'Le navire en détresse. Début du message',
  'speech-note-inform':
    'Informer ensuite une station côtière ou un centre de coordination de sauvetage (CROSS, MRCC)',
  'speech-note-relay-sender': 'La station qui a émis le relais',
  'speech-note-stop-repeats':
    'D’abord arrêter les répétitions : annuler sur l’appareil. S’il ne donne aucune indication, l’éteindre et le rallumer après 10 secondes',
  'speech-note-keep-watch':
    'Assurer la veille {where:distress-voice} et répondre à toute station qui appelle',
  'speech-note-panne': 'Comme le mot français panne',
  'speech-note-medical': 'Comme le mot français médical. Seulement pour les transports sanitaires protégés',
  'speech-note-securite': 'Comme le mot français sécurité',
  'speech-note-announced': 'Si l’appel a été annoncé par ASN',
  'speech-note-on-that-channel': 'Sur cette voie, après le même appel',
  'speech-note-listen-first': 'Sur la voie convenue. Écouter d’abord, et attendre tant que d’autres parlent',
  'speech-note-members': 'Ensuite les membres répondent, l’un après l’autre',
  'speech-note-wait': 'Attendre que l’appelant commence',
  'speech-note-figure': 'Ou un autre chiffre, de un (mauvais) à cinq (excellent)',
  'speech-say-mayday-thrice': 'Dire MAYDAY trois fois',
  'speech-say-mayday': 'Dire MAYDAY une fois',
  'speech-say-relay-thrice': 'Dire MAYDAY RELAY trois fois',
  'speech-say-relay': 'Dire MAYDAY RELAY une fois',
  'speech-say-pan-pan': 'Dire PAN PAN trois fois',
  'speech-say-medical': 'Dire qu’il s’agit d’un transport sanitaire',
  'speech-say-securite': 'Dire SECURITE trois fois',
  'speech-call-all': 'Appeler toutes les stations, trois fois',
  'speech-call-thrice': 'Dire trois fois le nom de la station appelée',
  'speech-call-once': 'Dire une fois le nom de la station appelée',
  'speech-say-this-is': 'Dire que le nom de l’appelant suit',
  'speech-own-thrice': 'Dire trois fois son propre nom',
  'speech-own-twice': 'Dire deux fois son propre nom',
  'speech-own-once': 'Dire une fois son propre nom',
  'speech-own-sign': 'Épeler son propre indicatif',
  'speech-own-mmsi': 'Dire son propre MMSI, chiffre par chiffre',
  'speech-own-name-sign': 'Dire son propre nom et épeler l’indicatif',
  'speech-own-message': 'Commencer le message : MAYDAY, son propre nom, indicatif et MMSI',
  'speech-vessel-message': 'Commencer le message : MAYDAY, puis nom, indicatif et MMSI du navire en détresse',
  'speech-unidentified-message': 'Commencer le message : MAYDAY d’un navire non identifié',
  'speech-vessel-thrice': 'Dire trois fois le nom du navire en détresse',
  'speech-vessel-sign': 'Dire l’indicatif ou le MMSI du navire en détresse',
  'speech-sender-thrice': 'Dire trois fois le nom de la station qui a émis le relais',
  'speech-own-position': 'Dire sa position',
  'speech-own-position-time': 'Dire sa position et son heure en UTC',
  'speech-vessel-position': 'Dire la position du navire en détresse',
  'speech-vessel-position-time': 'Dire la position du navire en détresse et son heure en UTC',
  'speech-own-nature': 'Dire ce qui se passe[ : {nature:nature}]',
  'speech-vessel-nature': 'Dire ce qui arrive au navire en détresse[ : {nature:nature}]',
  'speech-own-assistance': 'Demander une aide immédiate',
  'speech-vessel-assistance': 'Dire que le navire a besoin d’une aide immédiate',
  'speech-other-assistance': 'Dire quelle aide est nécessaire',
  'speech-persons': 'Dire combien de personnes sont à bord',
  'speech-information': 'Dire ce qui peut encore aider les secours',
  'speech-received': 'Dire que le MAYDAY est reçu',
  'speech-relay-received': 'Dire que le relais est reçu',
  'speech-cancel':
    'Demander à toutes les stations d’annuler son alerte de détresse, avec l’heure de son émission',
  'speech-urgent-message': 'Dire ce qui se passe et quelle aide est nécessaire',
  'speech-safety-message': 'Donner l’avertissement : quoi, où et jusqu’à quand',
  'speech-safety-channel': 'Dire sur quelle voie suit le message : {channel}',
  'speech-over': 'Terminer et demander une réponse',
  'speech-out': 'Terminer : aucune réponse attendue',
  'speech-other-answers': 'La station appelée dit le nom de l’appelant et le sien',
  'speech-other-calls': 'L’appelant dit le nom de la station appelée, puis deux fois le sien',
  'speech-name-caller': 'Dire une fois le nom de l’appelant',
  'speech-ask-readability': 'Demander comment on est reçu',
  'speech-other-reads': 'L’autre station dit comment elle reçoit',
  'speech-thank': 'Remercier l’autre station par son nom, et terminer',
};
