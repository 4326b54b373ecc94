import type { SentenceTexts } from '../../sentence/internal.ts';
import type { Translation } from '../catalogue.ts';

const field = '{formatter}, champ {field} : {expected} attendu, {received} reçu';

export const sentence: Translation<SentenceTexts> = {
  'sentence-not-text': ['Entrée : {expected} attendu, {received} reçu', '{accepted:sentence-input}'],
  'sentence-no-start': ['Ligne : {expected} attendu, {received} reçu', 'un $ ou ! qui ouvre une phrase'],
  'sentence-line-endless': [
    'Ligne : {expected} attendue, {received} caractères reçus sans début de phrase',
    'une fin de ligne en {limit} caractères au plus',
  ],
  'sentence-address': [
    'Adresse : {expected} attendus, {received} reçu',
    'deux caractères d’émetteur et trois de type de phrase, ou P et un code de fabricant',
  ],
  'sentence-checksum-wrong': ['Somme de contrôle : {expected} attendu, {received} reçu', "'*{computed}'"],
  'sentence-checksum-impossible':
    'Somme de contrôle {received} invalide : la phrase contient un caractère au-delà de FF hexadécimal',
  'sentence-checksum-malformed': [
    'Somme de contrôle : une étoile et deux chiffres hexadécimaux attendus, {received} reçu',
    "['*{computed}']",
  ],
  'sentence-checksum-missing': ['Phrase {received} : sans somme de contrôle', '[*{computed}]'],
  'sentence-unchecked': [
    'Phrase {received} : sans somme de contrôle, elle peut être incomplète',
    '[*{computed}]',
  ],
  'sentence-blank-damage': [
    'Phrase {received} : la somme de contrôle n’est juste que sans les espaces, ajoutés après l’émission',
    'aucun espace',
  ],
  'sentence-fields-missing': [
    'Phrase DSC : {expected} attendus, {received} reçus, les manquants sont lus comme vides',
    '{limit} champs',
  ],
  'sentence-fields-surplus': [
    'Phrase DSC : {expected} attendus, {received} reçus, les autres sont ignorés',
    '{limit} champs',
  ],
  'sentence-code': [field, 'deux chiffres'],
  'sentence-identity': [field, 'neuf chiffres et un 0'],
  'sentence-address-unexpected': [field, 'un champ vide'],
  'sentence-area': [field, 'dix chiffres'],
  'sentence-area-or-identity': [
    '{formatter}, champ {field} : {received} est lu comme une zone et peut être une station',
    'une zone',
  ],
  'sentence-place': [field, '10 chiffres de position, ou 6, 8, 12 ou 16 de fréquence'],
  'sentence-time': [field, 'quatre chiffres, heures et minutes UTC'],
  'sentence-ship-unexpected': [field, 'des champs vides'],
  'sentence-acknowledgement': [field, 'R, B ou S'],
  'sentence-expansion-mark': [field, 'E ou rien'],
  'sentence-expansion-count': [field, 'un total de 1 à 9 et un numéro qui ne le dépasse pas'],
  'sentence-expansion-flag': [field, 'A, Q ou R'],
  'sentence-expansion-code': [field, 'deux chiffres'],
  'sentence-expansion-data': [field, 'autant de chiffres que le groupe de données'],
  'sentence-expansion-missing': [
    'Extension : aucune de ses phrases DSE n’est arrivée, l’appel reste tel quel',
    'des phrases DSE juste après l’appel',
  ],
  'sentence-expansion-incomplete': [
    'Extension : phrases DSE arrivées, {received} seulement ; appliqué : {applied:expansion-set}',
    'des phrases DSE juste après l’appel',
  ],
  'sentence-expansion-unannounced': [
    'Extension pour {station} appliquée, bien que l’appel ne l’ait pas annoncée',
    'la marque E',
  ],
  'sentence-expansion-late': [
    'Extension pour {station} : pas juste après son appel, {received} {received:sentences} entre les deux',
    'la phrase suivante',
  ],
  'sentence-expansion-alone': 'Extension pour {received} : aucun appel lu ne lui correspond',
  'sentence-expansion-other-station': [
    'Extension pour {received} : non appliquée à l’appel de {expected}',
    '{waiting}',
  ],
  'sentence-content-lost':
    '{content:lost-content} : une phrase DSC ne peut pas le transmettre, {count:symbols} {received}',
  'sentence-expansion-lost':
    'Extension : une phrase DSE ne peut pas transmettre le groupe {specifier} de {count} {count:symbols}',
  'sentence-kind-lost': ['La phrase DSC de cet appel ({expected}) se lit comme {received}', '{written}'],
  'sentence-fix-not-valid': [
    '{formatter}, champ {field} : {received} est marqué non valide et n’est pas utilisé',
    'une position valide',
  ],
  'sentence-fix-simulated': [
    '{formatter}, champ {field} : {received} est simulé et n’est pas utilisé',
    'une position valide',
  ],
  'sentence-fix-unreadable': [field, 'la forme ddmm.mm,N,dddmm.mm,E'],
  'sentence-fix-manual': [
    '{formatter}, champ {field} : {received} a été saisi à la main',
    'une position mesurée',
  ],
  'sentence-fix-estimated': [
    '{formatter}, champ {field} : {received} est estimé, non mesuré',
    'une position mesurée',
  ],
  'sentence-ais-count': 'Phrase AIS {received} illisible : le compte de ses parties est mal formé',
  'sentence-ais-payload': 'Phrase AIS {received} illisible : ses données sont mal formées',
  'sentence-ais-incomplete': 'Phrase AIS {received} : partie d’un message dont les autres parties manquent',
  'sentence-ais-short': [
    'Message AIS {message} : {expected} attendus, {received} {received:bits} reçu',
    'au moins {least} bits',
  ],
  'sentence-ais-identity': 'Identité AIS {received} : plus de neuf chiffres',
  'sentence-ais-position': 'Position AIS {received} hors limites, laissée de côté',
  'sentence-leading-characters': 'Caractères {received} avant la phrase ignorés',
  'sentence-trailing-characters': 'Caractères {received} après la somme de contrôle ignorés',
  'sentence-tag-unclosed': [
    'Bloc TAG {received} sans seconde barre oblique inverse, ignoré',
    'une barre oblique inverse avant la phrase',
  ],
  'sentence-tag-checksum': [
    'Bloc TAG {received} : ne se termine pas par sa somme de contrôle, ignoré',
    '[*{computed}]',
  ],
  'sentence-checksum-lower-case': ['Somme de contrôle {received} en minuscules', "'{capitals}'"],
  'sentence-length': [
    'Phrase : {expected} attendus avec la fin de ligne, {received} reçus',
    'au plus {limit} caractères',
  ],
  'sentence-blank-sent': ['Champ {field} émis avec des espaces autour, {received}', '{trimmed}'],
  'sentence-legacy-layout': [
    'Phrase DSC : {expected} attendus, {received} reçus, l’identité vient en premier comme dans l’ancienne disposition',
    '{limit} champs',
  ],
  'sentence-identity-nine-digits': [field, "'{identity}0'"],
  'sentence-ais-unread': 'Message AIS {received} : non pris en charge',
  'sentence-input.text': 'du texte',
  'sentence-input.stream': 'du texte ou un Uint8Array',
  'lost-content.format': 'Spécificateur de format',
  'lost-content.address': 'Adresse',
  'lost-content.category': 'Catégorie',
  'lost-content.self': 'Auto-identification',
  'lost-content.telecommand1': 'Premier signal de télécommande',
  'lost-content.telecommand2': 'Second signal de télécommande',
  'lost-content.distressed': 'Navire en détresse',
  'lost-content.nature': 'Nature de la détresse',
  'lost-content.position': 'Position',
  'lost-content.time': 'Heure de la position',
  'lost-content.subsequent': 'Type de communication ultérieure',
  'lost-content.receive': 'Premier élément de fréquence ou de voie',
  'lost-content.transmit': 'Second élément de fréquence ou de voie',
  'lost-content.telephone': 'Numéro de téléphone',
  'lost-content.rest': 'Reste du message',
  'lost-content.end': 'Fin de séquence',
  'expansion-set.100': 'décimales de la position',
  'expansion-set.101': 'source de la position',
  'expansion-set.102': 'vitesse',
  'expansion-set.103': 'route',
  'expansion-set.104': 'nom',
  'expansion-set.105': 'zone plus précise',
  'expansion-set.106': 'personnes à bord',
  'expansion-set.none': 'rien',
  'expansion-set.*': 'un autre groupe de données',
  'sentences.1': 'phrase',
  'sentences.*': 'phrases',
  'symbols.1': 'symbole',
  'symbols.*': 'symboles',
  'bits.1': 'bit',
  'bits.*': 'bits',
  'sentence-why': '{fault:sentence-why}',
  'sentence-remedy': '{fault:sentence-remedy}',
  'sentence-outside': '{check:sentence-outside}',
  'sentence-report-clean':
    'Aucun défaut trouvé dans {sentences} {sentences:sentences}, {calls} {calls:calls} : vérifier l’afficheur et ses réglages',
  'sentence-report-faults':
    '{faults} {faults:faults} dans {sentences} {sentences:sentences}, {calls} {calls:calls} : commencer par {first}',
  'sentence-seen-no-byte': 'Aucun octet',
  'sentence-seen-blank': 'Seulement des espaces et des fins de ligne',
  'sentence-seen-foreign': '{foreign} octets sur {count} ne peuvent pas être dans une phrase',
  'sentence-seen-slow':
    '{foreign} octets sur {count} ne peuvent pas être dans une phrase, la plupart comme une ligne lente vue par un port rapide',
  'sentence-seen-checksum': "{line} (calculé '*{computed}', indiqué {stated})",
  'sentence-seen-no-checksum':
    '{line} (aucune somme de contrôle possible : un caractère au-delà de FF hexadécimal, indiqué {stated})',
  'sentence-seen-alike': '{count} sommes de contrôle, chacune fausse de {difference}',
  'sentence-seen-no-call': '{sentences} {sentences:sentences}, mais aucune DSC',
  'sentence-seen-no-reply': '{calls} {calls:calls}, mais aucune réponse de position[ de {station}]',
  'sentence-seen-repeat': 'La même chose, {count} fois jusqu’ici',
  'sentence-seen-no-expansion': 'Aucune extension annoncée et aucune reçue',
  'sentence-seen-zero-decimals': 'Les huit décimales sont toutes 0',
  'sentence-seen-empty-position': 'Une réponse de position dont la position est vide',
  'sentence-seen-minute-off': '{position}, à une minute de {source:minute-source}',
  'sentence-seen-hours-before': '{hours} {hours:hours} avant la réception',
  'sentence-seen-hours-after': '{hours} {hours:hours} après la réception',
  'sentence-why.no-data': 'Rien du tout n’est arrivé par le câble',
  'sentence-remedy.no-data':
    'Suivre la paire depuis les bornes d’émission de la radio : quelque chose doit y être raccordé, pas seulement à son entrée de position. Vérifier que A et B sont dans le bon sens et qu’un émetteur asymétrique a son retour. Vérifier que le port est activé',
  'sentence-why.wrong-speed':
    'Ce n’est pas du texte : le port et l’émetteur ont des vitesses différentes, ou A et B sont inversés',
  'sentence-remedy.wrong-speed':
    'Essayer 4800 puis 38 400 bit/s à l’afficheur, avec 8 bits de données sans parité : les radios qui reçoivent l’AIS emploient souvent la vitesse rapide pour tout. Si aucune vitesse ne donne du texte, échanger A et B',
  'sentence-why.no-sentence':
    'Des lignes arrivent mais aucune n’est une phrase : un autre format, ou un texte modifié en chemin',
  'sentence-remedy.no-sentence':
    'Comparer la première ligne à une phrase : celle-ci commence par $ ou !, son adresse est en majuscules et ses champs sont séparés par des virgules. Vérifier quel appareil est sur le câble et comment sa sortie est réglée',
  'sentence-why.too-long':
    'Une phrase peut avoir 82 caractères ; un récepteur strict en rejette une plus longue',
  'sentence-remedy.too-long':
    'Réduire les décimales qu’envoie l’émetteur, ou employer un récepteur qui accepte des phrases plus longues',
  'sentence-why.tag-block':
    'La ligne commence par un bloc TAG, et un récepteur qui ne sait pas les lire rejette toute la ligne',
  'sentence-remedy.tag-block': 'Désactiver les blocs TAG à la source, ou les retirer avant l’afficheur',
  'sentence-why.blank-damage':
    'La somme de contrôle n’est juste que sans les espaces : le texte a été abîmé après être sorti de la radio',
  'sentence-remedy.blank-damage':
    'La radio n’est pas en cause : retirer les espaces, ou refaire l’enregistrement directement, sans page web ni terminal',
  'sentence-why.blank-sent':
    'L’émetteur met des espaces dans un champ ; un récepteur strict ne reconnaît pas le champ',
  'sentence-remedy.blank-sent':
    'Retirer les espaces en chemin, et demander un nouveau micrologiciel au fabricant de la radio',
  'sentence-why.checksum-wrong': 'La phrase a changé en chemin, et tout récepteur la rejette',
  'sentence-remedy.checksum-wrong':
    'Écarter les causes une à une : parasites, mauvaise masse, second émetteur sur la paire, vitesse de port légèrement fausse. Un écart constant désigne un appareil qui modifie les phrases',
  'sentence-why.rewritten-between':
    'Chaque somme de contrôle indiquée diffère de la calculée dans les mêmes bits : le texte a été modifié en chemin, sa somme non',
  'sentence-remedy.rewritten-between':
    'Trouver entre radio et afficheur l’appareil qui réécrit les phrases, et le retirer ou corriger ses réglages',
  'sentence-why.checksum-missing':
    'Un récepteur peut refuser une phrase sans somme de contrôle, et rien ne montre si elle est arrivée entière',
  'sentence-remedy.checksum-missing':
    'Activer la somme de contrôle à l’émetteur ou à l’appareil intermédiaire',
  'sentence-why.checksum-lower-case':
    'La somme de contrôle est en minuscules ; un récepteur strict attend des majuscules',
  'sentence-remedy.checksum-lower-case':
    'Écrire la somme de contrôle en majuscules en chemin, et le signaler au fabricant de l’émetteur',
  'sentence-why.calls-filtered':
    'Des phrases arrivent mais aucun appel : aucun n’a été reçu, ou un appareil les rejette',
  'sentence-remedy.calls-filtered':
    'Autoriser les phrases DSC et DSE dans chaque multiplexeur, passerelle et réglage de port, ou relier la radio directement à l’afficheur. Un appareil qui convertit 38 400 en 4800 bit/s peut les rejeter',
  'sentence-why.reply-missing': 'Des appels sont arrivés, mais pas la position attendue',
  'sentence-remedy.reply-missing':
    'Vérifier si la radio montre la réponse. Si oui, chercher un appareil qui rejette des phrases. Sinon, l’autre navire n’a peut-être pas reçu la demande, ou sa radio attend l’opérateur : redemander après un moment, ou en phonie',
  'sentence-why.legacy-layout':
    'Les champs sont dans l’ordre d’une ancienne édition, adresse en premier, et un récepteur les lit mal',
  'sentence-remedy.legacy-layout':
    'Employer un récepteur qui lit l’ancienne disposition, ou réécrire la phrase',
  'sentence-why.fields-missing':
    'Des champs vides manquent à la fin, et un récepteur qui en attend onze rejette la phrase',
  'sentence-remedy.fields-missing':
    'Rétablir les champs vides en chemin, et le signaler au fabricant de l’émetteur',
  'sentence-why.talker': 'L’émetteur n’est pas CD, et certains afficheurs n’acceptent que CDDSC',
  'sentence-remedy.talker': 'Réécrire en chemin l’émetteur et la somme de contrôle',
  'sentence-why.leading-zero-lost':
    'Il manque des chiffres à un champ, comme lorsqu’un programme traite du texte en nombre et perd les zéros de tête',
  'sentence-remedy.leading-zero-lost':
    'Trouver l’appareil ou le programme et le retirer. Ne pas ajouter de zéro : rien ne montre quel chiffre manque',
  'sentence-why.bad-position':
    'Les chiffres ne sont pas un lieu sur la Terre, et un afficheur prudent ne trace rien',
  'sentence-remedy.bad-position':
    'Rejeter la position et garder l’appel. Redemander à la station, en phonie si c’est important',
  'sentence-why.no-fix':
    'L’autre station n’a pas de position : la réponse est valide et il n’y a rien à tracer',
  'sentence-remedy.no-fix': 'Demander en phonie : l’autre radio n’a pas de position satellite, ou l’a perdue',
  'sentence-why.no-time': 'La position n’a pas d’heure, et certains afficheurs rejettent une telle position',
  'sentence-remedy.no-time': 'La porter avec un âge inconnu : elle peut être ancienne',
  'sentence-why.expansion-missing':
    'Des décimales étaient annoncées et ne sont pas toutes arrivées : la position peut être à la minute entière',
  'sentence-remedy.expansion-missing':
    'Laisser passer les phrases DSE, attendre plus longtemps, ou redemander la position',
  'sentence-why.expansion-late':
    'D’autres phrases sont venues entre un appel et ses décimales ; un récepteur qui ne lit que la suivante les manque',
  'sentence-remedy.expansion-late': 'Donner à la radio un port à elle, ou réunir la paire en chemin',
  'sentence-why.expansion-unannounced':
    'Des décimales sont arrivées sans que l’appel les annonce ; un récepteur qui se fie à la marque les ignore',
  'sentence-remedy.expansion-unannounced':
    'Les joindre par l’identité, et le signaler au fabricant de la radio',
  'sentence-why.expansion-mismatch':
    'Les décimales d’une station suivent l’appel d’une autre : jointes, elles montreraient un navire au mauvais endroit',
  'sentence-remedy.expansion-mismatch':
    'Ne jamais les joindre. Chercher un appel perdu ou un appareil qui change l’ordre',
  'sentence-why.no-expansion':
    'La position est tronquée à la minute : le navire peut être à un mille et demi de la marque',
  'sentence-remedy.no-expansion':
    'Tracer un cadre, pas un point. Redemander : si les décimales n’arrivent jamais, l’autre radio n’en envoie pas',
  'sentence-why.identity-nine-digits':
    'Il manque à l’identité son zéro final ; un récepteur strict attend dix chiffres',
  'sentence-remedy.identity-nine-digits': 'Ajouter le zéro en chemin',
  'sentence-why.identity-last-digit':
    'Dix chiffres qui ne finissent pas par 0 ne sont pas une identité complétée, et ne correspondent à aucune autre fiche du navire',
  'sentence-remedy.identity-last-digit': 'Garder les dix chiffres. Demander son identité à la station',
  'sentence-why.own-call': 'La radio signale aussi ses propres appels, et ils ressemblent à des appels reçus',
  'sentence-remedy.own-call': 'Ignorer les appels de l’identité propre',
  'sentence-why.refused': 'La réponse est un refus ou est vide : elle n’a pas de position',
  'sentence-remedy.refused':
    'Appeler en phonie et demander : beaucoup de radios se règlent pour répondre, demander à l’opérateur ou refuser',
  'sentence-why.polled':
    'L’interrogation demande seulement si une station est à portée : la réponse n’a pas de position',
  'sentence-remedy.polled': 'Envoyer plutôt une demande de position',
  'sentence-why.category':
    'Les appels de position sont des appels de sécurité ; un afficheur qui contrôle la catégorie ignore celui-ci',
  'sentence-remedy.category':
    'Reconnaître les appels de position au premier signal de télécommande, 21, non à la catégorie',
  'sentence-why.acknowledgement':
    'La position n’était pas demandée, et un afficheur qui attend une réponse l’ignore',
  'sentence-remedy.acknowledgement': 'La porter comme un compte rendu',
  'sentence-why.duplicates':
    'La même alerte ou le même compte rendu est arrivé plusieurs fois, et trace chaque fois une marque',
  'sentence-remedy.duplicates': 'Réunir en un seul événement ce qui dit la même chose de la même station',
  'sentence-why.wrong-quadrant':
    'La position signalée est bien hors de portée VHF, et serait proche avec l’autre hémisphère',
  'sentence-remedy.wrong-quadrant':
    'Ne pas gouverner dessus : l’expéditeur ou un appareil intermédiaire a un chiffre de quadrant faux',
  'sentence-why.minutes-rounded':
    'L’expéditeur arrondit les minutes et ajoute aussi les décimales : la marque est fausse d’une minute',
  'sentence-remedy.minutes-rounded':
    'Comparer à l’AIS ou demander au navire. Ne pas corriger la position sans le dire',
  'sentence-why.wrong-time':
    'L’heure de la position est à des heures de celle de réception : saisie en heure locale, ou ancienne',
  'sentence-remedy.wrong-time': 'Tenir l’âge pour inconnu, et demander à la station son heure en UTC',
  'sentence-outside.accepted':
    'Quelles phrases l’afficheur accepte : voir son manuel. Certains tracent les alertes de détresse et aucun autre appel ; WPL ou TLL peut marcher à la place',
  'sentence-outside.network':
    'Si la radio envoie les appels sur un autre réseau du bord et non sur cette ligne',
  'sentence-outside.tenth-digit':
    'Ce que l’afficheur fait du dixième chiffre d’une identité : un zéro de plus sur la carte est sans gravité, mais les listes ne concordent plus',
  'sentence-outside.other-vessel':
    'Si l’autre navire a reçu la demande, et si sa radio est réglée pour répondre, demander ou refuser',
  'minute-source.ais': 'la position AIS',
  'minute-source.report': 'son dernier compte rendu',
  'faults.1': 'défaut',
  'faults.*': 'défauts',
  'calls.1': 'appel',
  'calls.*': 'appels',
  'hours.1': 'heure',
  'hours.*': 'heures',
};
