import type { StationTexts } from '../../station/internal.ts';
import type { Translation } from '../catalogue.ts';
import { call } from './call.ts';

export const station: Translation<StationTexts> = {
  ...call,
  'station-identity-missing': 'Propre identité : non enregistrée, rien ne peut être émis',
  'station-identity-fixed': 'Propre identité : déjà enregistrée, l’utilisateur ne peut pas la changer',
  'station-identity-form': [
    'Propre identité : {expected} attendu, {received} reçu',
    'un numéro qu’une seule station peut avoir',
  ],
  'station-class-cannot-send':
    'Un appareil {equipment:of-class} n’émet pas ce genre d’appel : {kind:call-kind}',
  'station-not-a-beginning': 'Appel : ne peut pas être lancé à la main, {kind:call-kind}',
  'station-not-of-procedure': 'Appel : n’appartient pas à cette procédure, {kind:call-kind}',
  'station-address-missing': ['Appel : {expected} attendue, aucune reçue', 'une adresse'],
  'station-call-form': 'Appel : contient une valeur sans symbole, il ne peut pas être émis',
  'station-call-to-itself': 'Appel : adressé à la station elle-même',
  'station-relay-reason': [
    'Relais : il faut un motif. Personne n’a accusé réception en cinq minutes, ou le navire en détresse ne peut pas alerter lui-même et le capitaine juge qu’il faut davantage de secours',
    'because',
  ],
  'station-relay-address': [
    'Relais d’une détresse sans accusé de réception : {expected} attendue. Vers plusieurs seulement si le navire en détresse ne peut pas alerter lui-même et que le capitaine juge qu’il faut davantage de secours',
    'l’adresse d’une seule station côtière',
  ],
  'station-relay-not-now': 'Relais : {why}',
  'station-channel-form': [
    'Voie : {expected} attendue, {received} reçu',
    'une voie avec chiffres de l’UIT-R M.1084',
  ],
  'station-channel-barred': 'Voie : ne peut pas être proposée. {bar}',
  'station-reason-missing': ['Refus : {expected} attendu, {received} reçu', 'un des dix motifs'],
  'station-settings-form': 'Réglages : {setting} n’est pas valable. Aucun réglage n’a été changé',
  'station-event-form': ['Événement : {expected} attendu', 'un objet'],
  'station-event-kind': 'Événement : genre inconnu {received}',
  'station-event-part': 'Événement « {kind} » : « {part} » manque ou n’est pas valable',
  'station-event-unreadable': ['Événement : illisible', 'des données simples'],
  'station-alert-in-hand': 'Alerte de détresse : une alerte est déjà en cours',
  'station-no-alert': 'Alerte de détresse : aucune n’est préparée ni émise',
  'station-no-such-dialogue': 'Échange {dialogue} : il n’existe pas',
  'station-not-now': 'Échange {dialogue} : impossible dans sa phase {phase}',
  'station-not-on-air': 'Échange {dialogue} : rien n’est en cours d’émission',
  'station-acknowledgement-not-allowed': 'Accusé de réception : {why}',
  'station-fix-form': 'Position : ce n’est pas un lieu sur la Terre',
  'station-state-form': ['État enregistré : il faut {expected}', '{form:state-form}'],
  'station-state-newer': [
    'État enregistré : {expected} attendu, {received} reçu',
    'version {version} ou antérieure',
  ],
  'station-state-repaired': 'État enregistré : {part} n’avait pas de sens, remplacé ou omis',
  'station-state-answer':
    'État enregistré : la réponse dans {part} ne correspondait pas à son appel, elle a été omise',
  'station-state-asks': 'État enregistré : {part} aurait émis, une personne est donc interrogée auparavant',
  'station-state-set-aside': 'État enregistré : {part} est impossible et a été mis de côté',
  'station-caution-distress':
    'Des vies peuvent en dépendre. Suivre les règles de l’administration et les ordres du capitaine. Assurer la veille sur la voie 16. Un logiciel peut se tromper : il ne remplace ni la formation ni un opérateur formé',
  'station-caution-sending':
    'Les appels de détresse, d’urgence et de sécurité atteignent tous les navires à portée. N’en émettre un que sur ordre de la personne responsable du navire, et comme la licence et les règles nationales le permettent',
  'station-brief':
    '{kind:call-kind}[ de {from}][ à {to}][ {many:brief-to}][ ({category:category})][, {reason:reason}][ pour la voie {channel}]',
  'station-brief-place':
    '{kind:call-kind}[ de {from}][ à {to}][ {many:brief-to}][, pour {distressed}][, {nature:nature}][, {position}][, {lack:brief-lack}][, {time} UTC]',
  'station-brief-moored': 'alarme automatique possible d’un navire amarré[, {from}]',
  'station-unidentified-vessel': 'navire non identifié',
  'station-unknown-station': 'station inconnue',
  'station-received': 'Reçu[ ({verdict:heard-verdict})] : {call}',
  'station-received-again': 'Reçu de nouveau : {call}',
  'station-received-times': 'Reçu {times} fois : {call}',
  'station-received-in-full': 'Reçu en entier : {call}',
  'station-received-damaged': 'Reçu avec des erreurs, rien n’a été fait : {call}',
  'station-answer-damaged': 'Réponse reçue avec des erreurs, rien n’a été fait : {call}',
  'station-addressed-to-others': 'Destiné à d’autres : {call}',
  'station-unexpected-answer': 'Réponse à aucun appel de cette station : {call}',
  'station-answered': 'Réponse reçue : {call}',
  'station-refused': 'Refusé : {call}',
  'station-sent': 'Émis : {call}',
  'station-sent-times': 'Émis {times} fois de suite : {call}',
  'station-not-sent': 'Non émis : {call}',
  'station-answer-not-sent': 'Réponse non émise : {call}',
  'station-channel-busy': 'La voie 70 n’était pas libre : l’appel n’a pas été émis',
  'station-too-late': 'La voie 70 n’a pas été libre à temps pour une réponse automatique',
  'station-held': 'Le trafic de détresse est prioritaire : l’appel attend',
  'station-no-answer': 'Aucune réponse après {attempts} appels sur {allowed} : {call}',
  'station-calling-again': 'Aucune réponse à l’appel {attempt} sur {allowed} : il sera répété',
  'station-missed': 'Sans réponse de notre part : {call}',
  'station-not-followed': 'Non suivi : {call}',
  'station-closed': 'Clos : {call}',
  'station-closed-unanswered': 'Clos sans réponse : {call}',
  'station-closed-for-room': 'Clos pour faire de la place : {call}',
  'station-still-in-hand': 'Toujours en cours : {call}',
  'station-tune-16': 'Passer à la main sur la voie 16',
  'station-watch-left':
    'L’appareil est sur la voie {channel}, pas sur la voie {watched& ou }. Y assurer la veille obligatoire avec un autre récepteur, ou revenir sur cette voie',
  'station-finished': 'Terminé[ sur la voie {channel}]',
  'station-closed-idle': 'Clos après une longue inactivité[. L’appareil est encore sur la voie {channel}]',
  'station-position-old':
    'La position propre est ancienne : la saisir de nouveau ou vérifier le récepteur GNSS',
  'station-position-erased':
    'La position propre est trop ancienne pour être émise : la saisir de nouveau ou vérifier le récepteur GNSS',
  'station-ask-send': 'Émettre : {call} ?',
  'station-ask-answer': 'Répondre : {call} ?',
  'station-ask-tune': 'Passer sur une autre voie[, la voie {channel}] ?',
  'station-ask-cancel':
    'L’alerte était-elle fausse ? Elle sera alors annulée par ASN, puis en phonie sur la voie 16',
  'station-ask-repeat':
    'L’alerte de détresse n’est plus répétée. Maintenir la touche pour l’émettre de nouveau. L’annuler si elle était fausse',
  'station-ask-acknowledge': 'Accuser réception de la détresse par ASN : {vessel} ?',
  'station-alert-prepared':
    'Appuyer sur la touche et la maintenir pour émettre une alerte de détresse. N’en émettre une qu’en cas de danger grave et imminent, sur ordre du capitaine',
  'station-alert-countdown': 'Garder la touche appuyée : {nature:nature}',
  'station-alert-waiting': 'Émission {attempts} effectuée. Écouter la voie 16',
  'station-alert-speak':
    'Émettre maintenant l’appel et le message de détresse en phonie sur la voie 16. Ne pas attendre d’accusé de réception',
  'station-alert-failed':
    'Appeler en phonie sur la voie 16. Utiliser aussi tout autre moyen. L’appareil n’a pas pu émettre l’alerte',
  'station-alert-acknowledged': 'Accusé de réception de l’alerte reçu[, donné par {by}]',
  'station-alert-acknowledged-damaged':
    'Un accusé de réception est arrivé avec des erreurs[ : {call}]. L’alerte continue. L’arrêter ?',
  'station-alert-relayed': 'L’alerte a été relayée[ : {call}]',
  'station-alert-stopped':
    'Répétitions arrêtées à la main. Si l’alerte était fausse, il faut encore l’annuler',
  'station-alert-not-sent': 'Alerte de détresse non émise',
  'station-alert-spoken': 'Appel et message de détresse émis en phonie sur la voie 16',
  'station-alert-closed': 'Alerte de détresse propre close',
  'station-cancel-failed':
    'Annuler immédiatement la fausse alerte en phonie sur la voie 16. L’appareil n’a pas émis l’annulation',
  'station-cancelled': 'Fausse alerte annulée par ASN et en phonie sur la voie 16',
  'station-cancelled-by-voice':
    'Fausse alerte annulée en phonie sur la voie 16. L’appareil n’a pas émis l’annulation par ASN',
  'station-cancelled-by-dsc':
    'Dire l’annulation en phonie sur la voie 16. La fausse alerte n’a été annulée que par ASN',
  'station-not-cancelled':
    'Dire maintenant l’annulation en phonie sur la voie 16. La fausse alerte n’est PAS annulée, ni par ASN ni en phonie',
  'station-distress-traffic': 'Trafic de détresse sur la voie 16, navire en détresse : {vessel}',
  'station-distress-acknowledged':
    'Accusé de réception de la détresse par {by}. Navire en détresse : {vessel}',
  'station-distress-cancelled': 'Alerte de détresse annulée par {vessel}',
  'station-distress-closed': 'Détresse close : {vessel}',
  'station-acknowledgement-not-sent': 'L’accusé de réception n’a pas été émis',
  'station-acknowledged-by-voice': 'Accusé de réception donné en phonie sur la voie 16 : {vessel}',
  'station-assisting': 'Peut porter assistance, décision du capitaine : {vessel}',
  'station-not-assisting':
    'Ne peut pas porter assistance, inscrit au journal, appareil réinitialisé : {vessel}',
  'station-nothing-more': 'Plus rien entendu, inscrit au journal, appareil réinitialisé : {vessel}',
  'station-phase': '{phase:phase}',
  'brief-to.area': 'à une zone',
  'brief-to.all-ships': 'à tous les navires',
  'brief-lack.position': 'sans position',
  'heard-verdict.repaired': 'corrigé',
  'heard-verdict.doubtful': 'douteux',
  'of-class.A': 'de classe A',
  'of-class.D': 'de classe D',
  'of-class.H': 'de classe H',
  'of-class.M': 'de classe M',
  'of-class.coast': 'de station côtière',
  'state-form.plain': 'des données simples',
  'state-form.station': 'un objet dont kind est « station »',
  'state-form.version': 'une version',
  'phase.outgoing.confirming': 'il est demandé s’il faut vraiment émettre l’appel',
  'phase.outgoing.waiting-channel': 'attente que la voie 70 soit libre',
  'phase.outgoing.sending': 'l’appel est en cours d’émission',
  'phase.outgoing.waiting-answer': 'attente de la réponse',
  'phase.outgoing.retry-wait': 'pas encore de réponse ; l’appel sera répété',
  'phase.outgoing.unanswered': 'abandonné ; un nouvel essai est possible',
  'phase.outgoing.refused': 'l’autre station ne peut pas donner suite',
  'phase.outgoing.agreed': 'une voie est convenue ; il est demandé s’il faut y passer',
  'phase.outgoing.on-channel': 'conversation sur la voie de travail',
  'phase.incoming.deciding': 'il est demandé comment répondre',
  'phase.incoming.waiting-channel': 'la réponse attend que la voie 70 soit libre',
  'phase.incoming.sending': 'la réponse est en cours d’émission',
  'phase.incoming.agreed': 'l’appel mène à une voie ; il est demandé s’il faut y passer',
  'phase.incoming.on-channel': 'conversation sur la voie de travail',
  'phase.incoming.shown': 'affiché pour lecture',
  'phase.own-distress.prepared': 'premier geste fait : le capot est ouvert, rien n’est encore émis',
  'phase.own-distress.countdown': 'second geste : la touche est maintenue',
  'phase.own-distress.waiting-channel': 'brève attente de la voie 70',
  'phase.own-distress.sending': 'l’alerte de détresse est en cours d’émission',
  'phase.own-distress.waiting-acknowledgement': 'attente d’un accusé de réception ; l’émission sera répétée',
  'phase.own-distress.acknowledged': 'accusé de réception reçu par ASN : plus de répétitions',
  'phase.own-distress.stopped': 'les répétitions ont été arrêtées à la main',
  'phase.own-distress.interrupted':
    'les répétitions sont interrompues : rien n’est émis tant que personne ne maintient de nouveau la touche',
  'phase.own-distress.cancel-asked': 'il est demandé si l’alerte était fausse',
  'phase.own-distress.cancel-waiting': 'l’annulation attend brièvement la voie 70',
  'phase.own-distress.cancel-sending': 'l’annulation est en cours d’émission',
  'phase.own-distress.cancel-voice': 'l’annulation doit maintenant être dite en phonie sur la voie 16',
  'phase.own-distress.cancel-voice-only':
    'l’appareil n’a pas pu émettre l’annulation : elle doit maintenant être dite en phonie sur la voie 16',
  'phase.heard-distress.shown': 'reçu avec des erreurs : affiché pour lecture',
  'phase.heard-distress.listening':
    'veille sur la voie 16 ; l’accusé de réception est laissé aux stations côtières',
  'phase.heard-distress.undecided':
    'personne n’a accusé réception en cinq minutes : entend-on un trafic de détresse ?',
  'phase.heard-distress.coast-answered':
    'accusé de réception donné, ou trafic de détresse en cours : ce navire peut-il porter assistance ?',
  'phase.heard-distress.inform-coast': 'pas de trafic, et l’alerte continue : informer une station côtière',
  'phase.heard-distress.assisting':
    'assistance, selon les instructions de la station côtière ou du navire en détresse',
  'phase.heard-distress.acknowledge-asked': 'il est demandé s’il faut accuser réception par ASN',
  'phase.heard-distress.acknowledge-waiting': 'l’accusé de réception attend la voie 70',
  'phase.heard-distress.acknowledge-sending': 'l’accusé de réception est en cours d’émission',
  'phase.heard-distress.cancelled': 'le navire a annulé son alerte',

  'station-log-all': 'Noter au journal tout ce qui est reçu et fait',
  'station-errors-received':
    'Assurer la veille sur la voie 16. Un appel de détresse a été reçu avec des erreurs : rien n’y est certain',
  'station-listen': 'Assurer la veille sur la voie 16. Ne pas émettre. Informer le capitaine',
  'station-leave-acknowledgement': 'Laisser aux garde-côtes (CROSS) l’accusé de réception par ASN',
  'station-wait-acknowledgement': 'Attendre un accusé de réception pendant cinq minutes au plus',
  'station-listen-for-traffic':
    'Personne n’a accusé réception en cinq minutes. Écouter sur la voie 16 s’il y a un trafic de détresse',
  'station-inform-if-silent':
    'Si l’on n’entend aucun trafic de détresse, informer une station côtière ou un centre de coordination de sauvetage (CROSS, MRCC) par tout moyen, comme la phonie ou le téléphone. Si les règles le permettent, un relais ASN à cette seule station convient aussi. Dans les eaux des États-Unis, ne pas relayer par ASN',
  'station-inform-coast':
    'Informer une station côtière ou un centre de coordination de sauvetage (CROSS, MRCC) par tout moyen, comme la phonie ou le téléphone. Si les règles le permettent, un relais ASN à cette seule station convient aussi. Dans les eaux des États-Unis, ne pas relayer par ASN',
  'station-inform-if-unacknowledged':
    'Si aucune station côtière n’a accusé réception, en informer une par tout moyen',
  'station-master-decides': 'Le capitaine décide si ce navire peut porter assistance',
  'station-acknowledge-by-voice':
    'Accuser réception en phonie sur la voie 16 au navire en détresse ou au centre de coordination de sauvetage (CROSS, MRCC)',
  'station-answer-relay':
    'Une station côtière relaie la détresse. Si le navire peut porter assistance, lui accuser réception du relais en phonie sur la voie 16',
  'station-follow': 'Suivre les instructions de la station côtière ou du centre de coordination de sauvetage',
  'station-acknowledge-to-stop':
    'N’accuser réception par ASN que pour arrêter une alerte qui continue. Ne le faire qu’à proximité du navire en détresse. Consulter auparavant un centre de coordination de sauvetage ou une station côtière',
  'station-wait-channel': 'Attendre que la voie 70 soit libre',
  'station-alert-withdrawn':
    'Le navire a annulé son alerte. Le noter au journal. Écouter sur la voie 16 l’annulation en phonie',
  'station-own-device':
    'Le dispositif homme à la mer du bord appelle ce navire. Chercher la personne des yeux. Faire demi-tour. La récupérer',
  'station-own-device-alert':
    'Si la personne n’est pas récupérée aussitôt, émettre sa propre alerte de détresse : homme à la mer',
  'station-who-acknowledges':
    'Les garde-côtes, un centre de coordination de sauvetage (CROSS, MRCC) ou une station côtière désignée accusent réception par ASN',
  'station-report':
    'Signaler aussitôt la détresse aux garde-côtes ou au centre de coordination de sauvetage (CROSS, MRCC). Cette station n’est pas désignée pour accuser réception par ASN',
  'station-coast-acknowledges':
    'Accuser réception par ASN sans délai. Répondre sur la voie 16. Aux États-Unis, laisser d’abord un court délai au centre de coordination de sauvetage',
  'station-coast-unanswered':
    'Personne n’a accusé réception de l’alerte. Accuser réception par ASN. Répondre sur la voie 16',
  'station-coast-informs': 'Informer le centre de coordination de sauvetage',
  'station-coast-leads':
    'Prendre la direction du trafic de détresse sur la voie 16, ou la confier au centre de coordination de sauvetage',
  'station-stops-repeats': 'L’accusé de réception arrête les répétitions de l’alerte',
  'station-ask-by-dsc': 'Accuser réception par ASN ?',
  'station-ask-by-dsc-or-other':
    'Accuser réception par ASN, ou une autre station s’occupe-t-elle de la détresse ?',
  'station-ask-traffic-over': 'Le trafic de détresse est-il terminé ?',
  'station-ask-heard': 'Entend-on un accusé de réception en phonie, ou un trafic de détresse ?',
  'station-ask-traffic': 'Entend-on un trafic de détresse sur la voie 16 ?',
  'station-ask-assist': 'Ce navire peut-il porter assistance ?',
  'station-ask-safe': 'La personne est-elle en sécurité, ou était-ce une fausse alerte ?',
  'station-voice-designated':
    'Une station côtière désignée répond sur la voie 16 après son accusé de réception par ASN',
  'station-voice-relayed':
    'Une station côtière relaie la détresse. Lui répondre en phonie si le navire peut porter assistance. Suivre ses instructions',
  'station-voice-acknowledged':
    'Une station côtière a accusé réception. Répondre en phonie si le navire peut porter assistance. Suivre ses instructions',
  'station-voice-traffic':
    'Un trafic de détresse est en cours. Ne parler que si le navire peut porter assistance. Suivre les instructions de la station qui dirige le trafic',
  'station-voice-wait':
    'Laisser aux stations côtières le temps d’accuser réception. À proximité, le capitaine peut abréger l’attente',
  'station-voice-near':
    'Aucune station côtière n’a accusé réception. Si l’on est proche du navire, accuser réception en phonie sur la voie 16. Informer une station côtière',
  'station-dsc-no-identity': 'La propre identité n’est pas enregistrée',
  'station-dsc-class': 'Un appareil de cette classe n’accuse pas réception d’une détresse',
  'station-dsc-relay-unsigned': 'Le relais ne dit pas qui l’a émis',
  'station-dsc-relay-addressed': 'Le relais est adressé à cette station',
  'station-dsc-relay-by-voice':
    'Accuser réception d’un relais en phonie sur la voie 16, à la station qui l’a émis',
  'station-dsc-unidentified': 'L’identité du navire en détresse n’est pas connue',
  'station-dsc-not-designated':
    'Signaler la détresse aux garde-côtes (CROSS). Seuls les garde-côtes, un centre de coordination de sauvetage ou une station côtière désignée accusent réception par ASN',
  'station-dsc-acknowledged': 'Il a été accusé réception de l’alerte',
  'station-dsc-traffic': 'Un trafic de détresse est en cours : il n’y a aucune alerte à arrêter',
  'station-dsc-wait':
    'Assurer la veille sur la voie 16. Attendre jusqu’à cinq minutes l’accusé de réception des garde-côtes (CROSS)',
  'station-dsc-not-repeated': 'L’alerte n’a pas été répétée : il n’y a rien à arrêter',
  'station-dsc-to-stop':
    'L’alerte continue et personne n’en a accusé réception. N’accuser réception qu’à proximité du navire en détresse. Consulter auparavant un centre de coordination de sauvetage ou une station côtière',
  'station-dsc-designated': 'Une station côtière désignée accuse réception, à la main',
  'station-relay-withdrawn': 'Le navire a annulé son alerte',
  'station-relay-in-hand':
    'Une station côtière ou une autre station s’occupe de la détresse. Suivre ses instructions',
  'station-relay-errors': 'Assurer la veille sur la voie 16. L’appel a été reçu avec des erreurs',
  'station-relay-wait':
    'Assurer la veille sur la voie 16. Si personne n’accuse réception en cinq minutes, relayer la détresse à une station côtière',
  'station-relay-ashore':
    'Personne n’a accusé réception en cinq minutes. Informer par tout moyen les garde-côtes (CROSS) ou le centre de coordination de sauvetage',
  'station-relay-to-coast':
    'Personne n’a accusé réception en cinq minutes. Informer une station côtière : si les règles le permettent par un relais ASN à cette seule station, en phonie ou par tout autre moyen. Dans les eaux des États-Unis, ne pas relayer par ASN',
  'station-relay-to-many-coast': 'Une station côtière relaie aux navires qu’elle doit atteindre',
  'station-relay-to-many-ship':
    'En VHF, ne pas relayer par ASN à tous les navires ou à une zone une alerte reçue par ASN. Un navire ne le fait que si le navire en détresse ne peut pas alerter lui-même et que le capitaine juge qu’il faut davantage de secours',

  'station-setup-identity-missing':
    'Propre identité : non enregistrée, l’appareil ne peut pas émettre d’appels ASN',
  'station-setup-identity-form':
    'Propre identité {mmsi} : ce n’est pas la forme qui convient à ce genre d’appareil',
  'station-setup-position-missing': 'Pas de position propre : une alerte de détresse partirait sans position',
  'station-setup-position-future': 'La position est datée dans le futur',
  'station-setup-position-old': 'La position a {minutes} {minutes:age-minutes}, {source:fix-source}',
  'station-setup-time-missing': 'L’appareil n’affiche pas l’heure',
  'station-setup-time-wrong': 'L’heure est fausse de {seconds} {seconds:off-seconds}',
  'station-setup-channels-missing': 'Aucune voie de travail',
  'station-setup-channel-change': 'Un appel ASN peut changer la voie automatiquement',
  'station-setup-watch-at-risk':
    'Un appel ASN peut faire quitter la voie veillée {watched& ou } sans qu’on le remarque',
  'station-setup-test-missing': 'Aucun appel d’essai n’a encore reçu de réponse',
  'station-setup-test-future': 'La dernière réponse à un appel d’essai est datée dans le futur',
  'station-setup-plotter-failed': 'Un compte rendu de position n’est pas arrivé au traceur',
  'station-setup-plotter-untested': 'Envoi d’une position au traceur : non essayé',
  'station-setup-identity': 'Propre identité {mmsi}',
  'station-setup-position': 'La position vient du récepteur GNSS',
  'station-setup-position-by-hand': 'La position a {minutes} {minutes:age-minutes}, saisie à la main',
  'station-setup-time': 'L’heure est juste à la minute près',
  'station-setup-groups': 'Groupes : {groups&}',
  'station-setup-no-groups': 'Aucune identité de groupe',
  'station-setup-channels': 'Voies de travail : {channels&}',
  'station-setup-by-hand': 'La voie se change à la main[, veille sur {watched&}]',
  'station-setup-tested': 'Le dernier appel d’essai a reçu une réponse il y a {days} {days:ago-days}',
  'station-setup-plotter': 'Un compte rendu de position est arrivé au traceur',
  'station-do-enter-identity':
    'Saisir le MMSI de la licence du navire. La plupart des appareils ne l’acceptent qu’une fois',
  'station-do-compare-identity':
    'Comparer l’identité avec la licence. Un revendeur peut en corriger une fausse',
  'station-do-give-position': 'Brancher un récepteur GNSS, ou saisir la position à la main',
  'station-do-set-clock-or-position': 'Régler l’horloge sur UTC, ou saisir de nouveau la position',
  'station-do-renew-position': 'Vérifier le récepteur GNSS, ou saisir de nouveau la position',
  'station-do-enter-position-again': 'Saisir de nouveau la position au moins toutes les 4 heures',
  'station-do-give-time': 'Brancher un récepteur GNSS, ou saisir l’heure UTC',
  'station-do-set-clock': 'Régler l’horloge sur UTC, pas sur l’heure locale',
  'station-do-correct-group': 'Corriger ou retirer le groupe {group}',
  'station-do-enter-channels': 'Saisir les voies de travail autorisées dans ces eaux',
  'station-do-list-watch':
    'Si une veille est obligatoire sur une autre voie (passerelle à passerelle, trafic maritime), l’inscrire comme veillée et changer de voie à la main',
  'station-do-change-by-hand': 'Changer de voie à la main, ou assurer la veille avec un second récepteur',
  'station-do-test':
    'Envoyer un appel d’essai à une station côtière qui y répond, ou à un ami. Ne jamais essayer avec une alerte de détresse',
  'station-do-test-again': 'Régler l’horloge sur UTC et essayer de nouveau',
  'station-do-check-plotter': 'Vérifier le câblage, le débit en bauds et les phrases que le traceur accepte',
  'station-do-try-plotter': 'Demander la position d’un ami et vérifier qu’elle apparaît sur le traceur',
  'fix-source.person': 'saisie à la main',
  'fix-source.instrument': 'du récepteur GNSS',
  'age-minutes.1': 'minute',
  'age-minutes.*': 'minutes',
  'off-seconds.1': 'seconde',
  'off-seconds.*': 'secondes',
  'ago-days.1': 'jour',
  'ago-days.*': 'jours',
  'station-timer': '{timer:timer}',
  'timer.alert-hold': 'durée d’appui sur la touche de détresse avant qu’une alerte parte',
  'timer.alert-busy-limit': 'attente la plus longue d’une alerte de détresse pour que la voie 70 soit libre',
  'timer.voice-after-alert':
    'dernier moment pour l’appel et le message de détresse en phonie, demandés dès que l’alerte est partie',
  'timer.alert-repeat': 'du début d’une émission de l’alerte de détresse au début de la suivante, au hasard',
  'timer.attempt-length':
    'les alertes reçues dans ce délai font partie d’une seule émission de cinq : 2,25 s et une marge',
  'timer.listen-after-alert':
    'veille sur la voie 16 après réception d’une alerte, avant toute autre décision',
  'timer.answer-from-ship': 'temps laissé à une personne à bord pour répondre',
  'timer.answer-from-coast': 'temps laissé à un opérateur à terre pour répondre',
  'timer.answer-from-set':
    'temps laissé à un appareil pour répondre automatiquement à un essai ou à une interrogation : trois secondes, une voie occupée et l’émission',
  'timer.automatic-answer':
    'une réponse automatique commence dans ce délai, sinon elle est laissée à la personne',
  'timer.second-attempt': 'du premier appel au deuxième quand personne n’a répondu',
  'timer.third-attempt': 'du deuxième appel au troisième, et entre les appels suivants',
  'timer.channel-wait':
    'attente la plus longue d’un appel autre que de détresse pour que la voie 70 soit libre',
  'timer.transmission-limit':
    'une émission dont la fin n’est pas signalée dans ce délai compte comme manquée',
  'timer.inactivity': 'un appel est clos quand personne n’a rien fait pendant ce temps',
  'timer.cancel-question':
    'ensuite, l’absence de réponse à la question si l’alerte était fausse compte comme un non',
  'timer.alert-memory':
    'une alerte du même navire et de même nature, reçue de nouveau dans ce délai, est une répétition et ne sonne pas',
  'timer.distress-memory': 'durée d’affichage du trafic de détresse si personne ne le clôt',
  'timer.position-warning': 'âge de la position propre à partir duquel la personne est avertie',
  'timer.position-erase': 'âge de la position propre à partir duquel elle n’est plus émise',
};
