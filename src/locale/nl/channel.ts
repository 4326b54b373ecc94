import type { ChannelTexts } from '../../channel/internal.ts';
import type { Translation } from '../catalogue.ts';

export const channel: Translation<ChannelTexts> = {
  'channel-not-text': [
    'Kanaal: verwacht tekst, gekregen {type}',
    'een nummer zoals ‘06’, ‘22A’ of ‘1022’, of een naam zoals ‘AIS 1’ of ‘WX3’',
  ],
  'channel-empty': [
    'Kanaal is leeg: verwacht {expected}',
    'een nummer zoals ‘06’, ‘22A’ of ‘1022’, of een naam zoals ‘AIS 1’ of ‘WX3’',
  ],
  'channel-is-frequency': [
    'Kanaal {received} lijkt een frequentie: verwacht {expected}',
    'een nummer zoals ‘06’, ‘22A’ of ‘1022’, of een naam zoals ‘AIS 1’ of ‘WX3’',
  ],
  'channel-malformed': [
    'Kanaal {received} is geen kanaalnaam: verwacht {expected}',
    'een nummer zoals ‘06’, ‘22A’ of ‘1022’, of een naam zoals ‘AIS 1’ of ‘WX3’',
  ],
  'channel-number-range': [
    'Kanaalnummer {number} is niet in gebruik: verwacht {expected}',
    '01 tot 28 of 60 tot 88',
  ],
  'channel-four-digit': [
    'Kanaal {received} heeft een onbekend voorvoegsel: verwacht 10 voor de scheepszijde of 20 voor de walzijde',
    'twee cijfers, of vier die met 00, 10 of 20 beginnen',
  ],
  'channel-no-legs': [
    'Kanaal {suggestion} heeft één frequentie en dus geen {leg:leg} {received}',
    '{suggestion}',
  ],
  'channel-interleaved': [
    'Kanaal {received} heeft het nummer van een tussenkanaal van 12,5 kHz, dat geen plan hier heeft',
    'een nummer van 01 tot 28 of 60 tot 88',
  ],
  'channel-no-plan': [
    'Kanaalplan: verwacht {expected}, gekregen {received:given}',
    'een plan zoals definePlan het maakt',
  ],
  'channel-plan-incomplete': [
    'Kanaalplan heeft kanalen waaraan velden ontbreken: verwacht {expected}',
    'een plan zoals definePlan het maakt',
  ],
  'channel-not-in-plan': [
    'Kanaal {channel} staat niet in het plan ‘{plan}’[: {reading}][; het plan heeft {there& en }]',
    'een kanaal van het plan ‘{plan}’',
  ],
  'channel-meaning-differs':
    'Kanaal {channel} is niet hetzelfde in het plan ‘{plan}’, dat {other} heeft ({frequencies})',
  'channel-not-on-set':
    'Kanaal {channel} is niet in te stellen op een radio met de kanalen van ‘{plan}’[; onder die naam heeft die {frequencies}]',
  'channel-frequency-type': [
    'Frequentie: verwacht {expected}, gekregen {type}',
    'megahertz zoals ‘156.800’, of kilohertz zoals ‘156800’',
  ],
  'channel-frequency-malformed': [
    'Frequentie {received} is niet leesbaar: verwacht ‘156.8’ of ‘156800’',
    'megahertz zoals ‘156.800’, of kilohertz zoals ‘156800’',
  ],
  'channel-frequency-number': [
    'Frequentie {received} is geen hele kilohertz: verwacht 156800 of de tekst ‘156.8’',
    'hele kilohertz, of megahertz als tekst',
  ],
  'channel-digits-malformed': [
    'Kanaalcijfers: verwacht {expected}, gekregen {received}',
    'zes cijfers, of acht die met 4 beginnen',
  ],
  'channel-private-number':
    'Kanaal {channel} valt buiten Appendix 18: nummers 29 tot 59 zijn privékanalen van afzonderlijke landen',
  'channel-elsewhere': 'Kanaal {channel} in het plan ‘{plan}’ is {frequencies}: {note}',
  'channel-digits-unknown':
    'Kanaalcijfers {received} beginnen met {digit}, dat in zes cijfers geen bekende betekenis heeft',
  'channel-digits-second': [
    'Kanaalcijfers {received} hebben {digit} op de tweede plaats: verwacht {expected}',
    '0',
  ],
  'channel-digits-old-form':
    'Kanaalcijfers {received} geven de zijde in het tweede cijfer: gelezen als {channel}',
  'channel-digits-single-leg-only':
    'Kanaal {channel} werd ontvangen, maar het plan ‘{plan}’ heeft {suggestion} op die plaats: de afzender kan beide bedoelen',
  'channel-frequency-one': '{ship} MHz',
  'channel-frequency-coast': '{coast} MHz alleen vanaf de wal',
  'channel-frequency-two': 'schepen op {ship} en kuststations op {coast} MHz',
  'channel-there': '{channel} ({frequencies})',
  'channel-by-number-one': 'volgens het nummer is het {ship} MHz',
  'channel-by-number-two': 'volgens het nummer gebruiken schepen {ship} en kuststations {coast} MHz',
  'channel-by-number-leg':
    'volgens het nummer is het de {leg:leg} van {number} als enkele frequentie, {ship} MHz',
  'channel-by-name': '{initial:channel-name}',
  'channel-calls-only': 'Kanaal {channel} draagt alleen digitale selectieve oproepen, nooit spraak',
  'channel-receive-only': 'Kanaal {channel} is alleen om te ontvangen: {reason}',
  'channel-data-only': 'Kanaal {channel} is niet voor spraak: {reason}',
  'channel-reserved': 'Kanaal {channel} kan in een oproep niet worden voorgesteld: {reason}',
  'channel-not-to-be-named': 'Kanaal {channel} kan in een oproep niet worden voorgesteld: {reason}',
  'channel-selective-calls-restricted': 'Kanaal {channel} kan in een oproep niet worden voorgesteld: {rule}',
  'channel-distress-and-calling':
    'Kanaal {channel} is voor nood, veiligheid en oproepen: ga voor werkverkeer naar een ander kanaal',
  'channel-two-frequency':
    'Kanaal {channel} heeft twee frequenties: het andere schip luistert op de walzijde, {coast} MHz, en hoort een schip op {ship} MHz niet',
  'channel-ships-only':
    'Kanaal {channel} is alleen tussen schepen: in het plan ‘{plan}’ werkt er geen kuststation op',
  'channel-not-intership':
    'Kanaal {channel} is in het plan ‘{plan}’ niet voor {purpose:purpose}: {note}[ ({caution})]',
  'channel-other-use':
    'Kanaal {channel} is in het plan ‘{plan}’ niet voor {purpose:purpose}: {note}[ ({caution})]',
  'channel-restricted': 'Kanaal {channel} in het plan ‘{plan}’: {caution}',
  'channel-regional': 'Kanaal {channel} heeft dit gebruik maar in een deel van de wateren: {region}',
  'channel-coast-names-it':
    'Kanaal {channel} hoeft niet te worden voorgesteld: meestal kiest een kuststation het werkkanaal',
  'channel-caution': 'Kanaal {channel} in het plan ‘{plan}’: {caution}',
  'channel-low-power': 'Kanaal {channel} heeft een vermogensgrens: {limit}',
  'channel-safety-calls-only': 'Kanaal {channel} in het plan ‘{plan}’: {rule}',
  'channel-serves': '{reasons&; }',
  'channel-use': '{plan}: {note}[ ({caution})]',
  'channel-plan-malformed': [
    'Kanaalplan[ {place}]: verwacht {expected}, gekregen {received:given}',
    '{rule:plan-rule}',
  ],
  'channel-plan-word': [
    'Kanaalplan {place}: verwacht {expected}, gekregen {received:given}',
    '{accepted&, }',
  ],
  'channel-plan-name-twice': [
    'Kanaalplan {place}: verwacht {expected}, gekregen {received:given}',
    'een andere naam dan {holder} heeft',
  ],
  'leg.ship': 'scheepszijde',
  'leg.coast': 'walzijde',
  'channel-name.W': 'weerkanalen zijn uitzendingen van Noord-Amerika',
  'channel-name.M': 'M en M2 zijn jachthavenkanalen van het Verenigd Koninkrijk',
  'channel-name.P': 'P4 is een oude naam van het Britse jachthavenkanaal M2',
  'channel-name.L': 'L-kanalen zijn voor pleziervaart in Noordse wateren',
  'channel-name.F': 'F-kanalen zijn voor vissersschepen in Noordse wateren',
  'channel-name.0': '0 is het privékanaal van de kustwacht van het Verenigd Koninkrijk',
  'purpose.intership-non-commercial': 'niet-zakelijk verkeer tussen schepen',
  'purpose.intership-commercial': 'zakelijk verkeer tussen schepen',
  'purpose.intership-navigation': 'de veiligheid van de navigatie tussen schepen',
  'purpose.ship-to-coast': 'verkeer tussen schip en wal',
  'purpose.safety': 'nood-, spoed- en veiligheidsverkeer',
  'plan-rule.plan': 'een object met name en channels',
  'plan-rule.channel': 'een kanaal zoals simplexChannel het maakt',
  'plan-rule.calling': 'kanalen van dit plan',
  'plan-rule.text': 'tekst',
  'plan-rule.text-or-null': 'tekst of null',
  'plan-rule.texts': 'een lijst teksten',
  'plan-rule.truth': 'true of false',
  'plan-rule.watts': 'watt boven nul, of null',
  'plan-rule.khz': 'hele kilohertz of null',
  'plan-rule.name': 'een naam van 1 tot 40 tekens',
  'plan-rule.names': 'een lijst namen van 1 tot 40 tekens',
  'plan-rule.channels': 'een lijst kanalen',
  'plan-rule.m1084': 'cijfers van ITU-R M.1084 of null',
  'plan-rule.uses': 'een lijst gebruiken',
  'plan-rule.limits': 'een lijst vermogensgrenzen met watts, measure en when',
  'plan-rule.data': 'permitted, prohibited of null',
  'plan-rule.intership': 'nonCommercial en commercial, elk preferred, allowed, restricted of prohibited',
  'plan-rule.evidence': 'frequency, use en power, elk met basis en source',
  'plan-rule.frequency': 'een frequentie voor schepen, voor kuststations of voor beide',
  'plan-rule.mode': 'duplex voor twee frequenties, simplex voor één',
  'plan-rule.receive-only': 'true waar schepen geen frequentie hebben',
  'plan-rule.transmitters': 'wie een frequentie heeft',
  'plan-rule.reason': 'een reden waar het kanaal niet mag worden genoemd, en anders null',
};
