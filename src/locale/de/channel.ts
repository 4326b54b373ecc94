import type { ChannelTexts } from '../../channel/internal.ts';
import type { Translation } from '../catalogue.ts';

export const channel: Translation<ChannelTexts> = {
  'channel-not-text': [
    'Kanal: Text erwartet, {type} erhalten',
    'eine Nummer wie ‚06‘, ‚22A‘ oder ‚1022‘, oder ein Name wie ‚AIS 1‘ oder ‚WX3‘',
  ],
  'channel-empty': [
    'Kanal ist leer: {expected} erwartet',
    'eine Nummer wie ‚06‘, ‚22A‘ oder ‚1022‘, oder ein Name wie ‚AIS 1‘ oder ‚WX3‘',
  ],
  'channel-is-frequency': [
    'Kanal {received} sieht nach einer Frequenz aus: {expected} erwartet',
    'eine Nummer wie ‚06‘, ‚22A‘ oder ‚1022‘, oder ein Name wie ‚AIS 1‘ oder ‚WX3‘',
  ],
  'channel-malformed': [
    'Kanal {received} ist keine Kanalbezeichnung: {expected} erwartet',
    'eine Nummer wie ‚06‘, ‚22A‘ oder ‚1022‘, oder ein Name wie ‚AIS 1‘ oder ‚WX3‘',
  ],
  'channel-number-range': [
    'Kanalnummer {number} ist nicht in Gebrauch: {expected} erwartet',
    '01 bis 28 oder 60 bis 88',
  ],
  'channel-four-digit': [
    'Kanal {received} hat eine unbekannte Vorziffer: 10 für das Unterband oder 20 für das Oberband erwartet',
    'zwei Ziffern, oder vier, die mit 00, 10 oder 20 beginnen',
  ],
  'channel-no-legs': [
    'Kanal {suggestion} hat nur eine Frequenz und daher kein {leg:leg} {received}',
    '{suggestion}',
  ],
  'channel-interleaved': [
    'Kanal {received} trägt die Nummer eines Zwischenkanals mit 12,5 kHz, den hier kein Plan hat',
    'eine Nummer von 01 bis 28 oder 60 bis 88',
  ],
  'channel-no-plan': [
    'Kanalplan: {expected} erwartet, {received:given} erhalten',
    'ein Plan, wie definePlan ihn macht',
  ],
  'channel-plan-incomplete': [
    'Kanalplan hat Kanäle, denen Felder fehlen: {expected} erwartet',
    'ein Plan, wie definePlan ihn macht',
  ],
  'channel-not-in-plan': [
    'Kanal {channel} ist nicht im Plan „{plan}“[: {reading}][; der Plan hat {there& und }]',
    'ein Kanal des Plans „{plan}“',
  ],
  'channel-meaning-differs':
    'Kanal {channel} ist im Plan „{plan}“ nicht derselbe: dort gibt es {other} ({frequencies})',
  'channel-not-on-set':
    'Kanal {channel} lässt sich an einem Gerät mit den Kanälen von „{plan}“ nicht einstellen[; unter diesem Namen hat es {frequencies}]',
  'channel-frequency-type': [
    'Frequenz: {expected} erwartet, {type} erhalten',
    'Megahertz wie ‚156.800‘ oder Kilohertz wie ‚156800‘',
  ],
  'channel-frequency-malformed': [
    'Frequenz {received} ist nicht lesbar: ‚156.8‘ oder ‚156800‘ erwartet',
    'Megahertz wie ‚156.800‘ oder Kilohertz wie ‚156800‘',
  ],
  'channel-frequency-number': [
    'Frequenz {received} ist kein ganzes Kilohertz: 156800 oder der Text ‚156.8‘ erwartet',
    'ganze Kilohertz, oder Megahertz als Text',
  ],
  'channel-digits-malformed': [
    'Kanalziffern: {expected} erwartet, {received} erhalten',
    'sechs Ziffern, oder acht, die mit 4 beginnen',
  ],
  'channel-private-number':
    'Kanal {channel} liegt außerhalb von Anhang 18: die Nummern 29 bis 59 sind private Kanäle einzelner Länder',
  'channel-elsewhere': 'Kanal {channel} im Plan „{plan}“ ist {frequencies}: {note}',
  'channel-digits-unknown':
    'Kanalziffern {received} beginnen mit {digit}, was in sechs Ziffern keine bekannte Bedeutung hat',
  'channel-digits-second': [
    'Kanalziffern {received} haben {digit} an zweiter Stelle: {expected} erwartet',
    '0',
  ],
  'channel-digits-old-form':
    'Kanalziffern {received} geben das Band in der zweiten Ziffer an: gelesen als {channel}',
  'channel-digits-single-leg-only':
    'Kanal {channel} wurde empfangen, der Plan „{plan}“ hat an seiner Stelle aber {suggestion}: der Absender kann beide meinen',
  'channel-frequency-one': '{ship} MHz',
  'channel-frequency-coast': '{coast} MHz nur von Land',
  'channel-frequency-two': 'Schiffe auf {ship} und Küstenfunkstellen auf {coast} MHz',
  'channel-there': '{channel} ({frequencies})',
  'channel-by-number-one': 'der Nummer nach ist er {ship} MHz',
  'channel-by-number-two': 'der Nummer nach senden Schiffe auf {ship} und Küstenfunkstellen auf {coast} MHz',
  'channel-by-number-leg':
    'der Nummer nach ist er das {leg:leg} von {number} als einzelne Frequenz, {ship} MHz',
  'channel-by-name': '{initial:channel-name}',
  'channel-calls-only': 'Kanal {channel} überträgt nur digitale Selektivrufe, niemals Sprache',
  'channel-receive-only': 'Kanal {channel} ist nur zum Empfang: {reason}',
  'channel-data-only': 'Kanal {channel} ist nicht für Sprache: {reason}',
  'channel-reserved': 'Kanal {channel} kann in einem Anruf nicht vorgeschlagen werden: {reason}',
  'channel-not-to-be-named': 'Kanal {channel} kann in einem Anruf nicht vorgeschlagen werden: {reason}',
  'channel-selective-calls-restricted':
    'Kanal {channel} kann in einem Anruf nicht vorgeschlagen werden: {rule}',
  'channel-distress-and-calling':
    'Kanal {channel} ist für Not, Sicherheit und Anruf: zum Sprechen auf einen anderen Kanal wechseln',
  'channel-two-frequency':
    'Kanal {channel} hat zwei Frequenzen: das andere Schiff hört auf der Küstenseite, {coast} MHz, und hört ein Schiff auf {ship} MHz nicht',
  'channel-ships-only':
    'Kanal {channel} ist nur zwischen Schiffen: im Plan „{plan}“ arbeitet keine Küstenfunkstelle darauf',
  'channel-not-intership':
    'Kanal {channel} ist im Plan „{plan}“ nicht für {purpose:purpose}: {note}[ ({caution})]',
  'channel-other-use':
    'Kanal {channel} ist im Plan „{plan}“ nicht für {purpose:purpose}: {note}[ ({caution})]',
  'channel-restricted': 'Kanal {channel} im Plan „{plan}“: {caution}',
  'channel-regional': 'Kanal {channel} hat diese Nutzung nur in einem Teil der Gewässer: {region}',
  'channel-coast-names-it':
    'Kanal {channel} muss nicht vorgeschlagen werden: meist wählt die Küstenfunkstelle den Arbeitskanal',
  'channel-caution': 'Kanal {channel} im Plan „{plan}“: {caution}',
  'channel-low-power': 'Kanal {channel} hat eine Leistungsgrenze: {limit}',
  'channel-safety-calls-only': 'Kanal {channel} im Plan „{plan}“: {rule}',
  'channel-serves': '{reasons&; }',
  'channel-use': '{plan}: {note}[ ({caution})]',
  'channel-plan-malformed': [
    'Kanalplan[ {place}]: {expected} erwartet, {received:given} erhalten',
    '{rule:plan-rule}',
  ],
  'channel-plan-word': ['Kanalplan {place}: {expected} erwartet, {received:given} erhalten', '{accepted&, }'],
  'channel-plan-name-twice': [
    'Kanalplan {place}: {expected} erwartet, {received:given} erhalten',
    'ein anderer Name als bei {holder}',
  ],
  'leg.ship': 'Unterband',
  'leg.coast': 'Oberband',
  'channel-name.W': 'Wetterkanäle sind Rundsendungen Nordamerikas',
  'channel-name.M': 'M und M2 sind Yachthafenkanäle des Vereinigten Königreichs',
  'channel-name.P': 'P4 ist ein alter Name des britischen Yachthafenkanals M2',
  'channel-name.L': 'L-Kanäle sind für Sportboote in nordischen Gewässern',
  'channel-name.F': 'F-Kanäle sind für Fischereifahrzeuge in nordischen Gewässern',
  'channel-name.0': '0 ist der private Kanal der Küstenwache des Vereinigten Königreichs',
  'purpose.intership-non-commercial': 'nicht gewerblichen Verkehr zwischen Schiffen',
  'purpose.intership-commercial': 'gewerblichen Verkehr zwischen Schiffen',
  'purpose.intership-navigation': 'die Sicherheit der Navigation zwischen Schiffen',
  'purpose.ship-to-coast': 'Verkehr zwischen Schiff und Küste',
  'purpose.safety': 'Not-, Dringlichkeits- und Sicherheitsverkehr',
  'plan-rule.plan': 'ein Objekt mit name und channels',
  'plan-rule.channel': 'ein Kanal, wie simplexChannel ihn macht',
  'plan-rule.calling': 'Kanäle dieses Plans',
  'plan-rule.text': 'Text',
  'plan-rule.text-or-null': 'Text oder null',
  'plan-rule.texts': 'eine Liste von Texten',
  'plan-rule.truth': 'true oder false',
  'plan-rule.watts': 'Watt über null, oder null',
  'plan-rule.khz': 'ganze Kilohertz oder null',
  'plan-rule.name': 'ein Name von 1 bis 40 Zeichen',
  'plan-rule.names': 'eine Liste von Namen von 1 bis 40 Zeichen',
  'plan-rule.channels': 'eine Liste von Kanälen',
  'plan-rule.m1084': 'Ziffern nach ITU-R M.1084 oder null',
  'plan-rule.uses': 'eine Liste von Nutzungen',
  'plan-rule.limits': 'eine Liste von Leistungsgrenzen mit watts, measure und when',
  'plan-rule.data': 'permitted, prohibited oder null',
  'plan-rule.intership': 'nonCommercial und commercial, jedes preferred, allowed, restricted oder prohibited',
  'plan-rule.evidence': 'frequency, use und power, jedes mit basis und source',
  'plan-rule.frequency': 'eine Frequenz für Schiffe, für Küstenfunkstellen oder für beide',
  'plan-rule.mode': 'duplex bei zwei Frequenzen, simplex bei einer',
  'plan-rule.receive-only': 'true, wo Schiffe keine Frequenz haben',
  'plan-rule.transmitters': 'wer eine Frequenz hat',
  'plan-rule.reason': 'ein Grund, wo der Kanal nicht genannt werden darf, sonst null',
};
