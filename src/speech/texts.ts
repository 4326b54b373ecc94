import { callTerms, voiceTerms } from '../call/internal.ts';
import type { CodedText } from '../result/index.ts';
import { type CodeOf, type ParamsOf, type TextMaker, textMaker } from '../result/internal.ts';

/** What is said about the words to speak. The words themselves stay English. */
export const speechTexts = {
  caution: {
    'speech-only-in-danger':
      'Send a distress call only when a vessel or person is in grave and imminent danger and needs immediate assistance, on the authority of the master',
    'speech-when-to-relay':
      'Relay when nobody acknowledged the alert or the MAYDAY call within about 5 minutes. Relay when you see or know that a vessel in distress cannot call, or when a rescue co-ordination centre asks. Try a coast station first',
    'speech-acknowledge-when-near':
      'Listen first. If you are near the vessel and hear no coast station acknowledge, do so yourself. Then listen, and obey the station that controls the traffic. If nobody acknowledges within 5 minutes, pass the distress on to a coast station by any means',
    'speech-already-acknowledged':
      'Listen first: the distress has been acknowledged. Speak only if you can help, without interrupting the traffic. Then listen, and obey the station that controls the traffic',
    'speech-coast-acknowledges':
      'Acknowledge without delay. In the United States leave the rescue co-ordination centre a short interval first. Then inform the rescue co-ordination centre. Take charge of the traffic or hand it over',
    'speech-coast-listens':
      'Listen: the distress has been acknowledged. Take charge of the traffic when the station that controls it or the rescue co-ordination centre asks',
    'speech-relay-when-near':
      'Acknowledge only if you are near enough to help. Otherwise keep watch {where:distress-voice}',
    'speech-cancel-at-once':
      'Cancel at once, on every band on which the alert was sent. If no coast station answers, inform one by other means',
    'speech-urgency':
      'For a very urgent message about the safety of a vessel or a person, on the authority of the master. Listen for at least 3 minutes afterwards on the channel used. Cancel it when it no longer applies. In grave and imminent danger send a MAYDAY',
    'speech-safety': 'For navigational and weather warnings. Send a long message on a working channel',
    'speech-manners':
      'Use low power where it is enough. Be brief. Use a working channel only. Leave channels 16 and 70 free',
    'speech-radio-check':
      'Use a working channel. Transmit for no longer than 10 seconds at a time. Test the DSC function with a DSC test call, without speech',
    'speech-watch-after-acknowledgement': 'Keep watch {where:distress-voice} after the acknowledgement',
    'speech-alert-cancelled':
      'Listen {where:distress-voice} for the voice cancellation: the vessel cancelled her alert',
    'speech-relay-acknowledged': 'Listen {where:distress-voice}: the relay was acknowledged',
    'speech-nothing-follows': 'No voice message follows this call',
    'speech-not-speech': 'The traffic that follows is not speech',
    'speech-listen': 'Listen on the channel given in the call',
    'speech-listen-for-pan-pan':
      'Listen on the channel given in the call. The caller begins with PAN PAN, and says who is to answer',
    'speech-listen-for-securite':
      'Listen on the channel given in the call. The caller begins with SECURITE, and says whether an answer is expected',
    'speech-on-the-band': 'Speak {where:distress-voice}. {caution}',
  },
  said: {
    'speech-title-distress': 'Distress call and message',
    'speech-title-relay': 'Distress relay',
    'speech-title-received': 'Acknowledgement of a distress',
    'speech-title-relay-received': 'Acknowledgement of a distress relay',
    'speech-title-cancel': 'Cancellation of a false alert',
    'speech-title-urgency': 'Urgency call and message',
    'speech-title-safety': 'Safety call and message',
    'speech-title-caller': 'First words: the caller begins',
    'speech-title-called': 'First words: the called station answers',
    'speech-title-radio-check': 'Radio check',
    'speech-title-nothing': 'Nothing to say',

    'speech-note-at-once':
      'Use full power. Begin as soon as the alert is out, at the latest about 15 seconds later, acknowledged or not',
    'speech-note-alerted': 'If an alert was sent by DSC',
    'speech-note-message': 'The message begins',
    'speech-note-repeat': 'Release the key and listen. Repeat from the beginning if nobody answers',
    'speech-note-coast-first': 'Or the name of one coast station three times: try a coast station first',
    'speech-note-vessel': 'The vessel in distress',
    'speech-note-vessel-message': 'The vessel in distress. The message begins',
    'speech-note-inform': 'Then inform a coast station or rescue co-ordination centre',
    'speech-note-relay-sender': 'The station that sent the relay',
    'speech-note-stop-repeats':
      'First stop the repeats: cancel on the radio. If it gives no guidance, switch it off, and on again after 10 seconds',
    'speech-note-keep-watch': 'Keep watch {where:distress-voice} and answer any station that calls',
    'speech-note-panne': 'As the French word panne',
    'speech-note-medical': 'As the French word médical. For protected medical transports only',
    'speech-note-securite': 'As the French word sécurité',
    'speech-note-announced': 'If the call was announced by DSC',
    'speech-note-on-that-channel': 'On that channel, after the same call',
    'speech-note-listen-first': 'On the channel agreed. Listen first, and wait while others speak',
    'speech-note-members': 'Then the members answer, one after the other',
    'speech-note-wait': 'Wait for the caller to begin',
    'speech-note-figure': 'Or another figure, from one (bad) to five (excellent)',

    'speech-say-mayday-thrice': 'Say MAYDAY three times',
    'speech-say-mayday': 'Say MAYDAY once',
    'speech-say-relay-thrice': 'Say MAYDAY RELAY three times',
    'speech-say-relay': 'Say MAYDAY RELAY once',
    'speech-say-pan-pan': 'Say PAN PAN three times',
    'speech-say-medical': 'Say that this is a medical transport',
    'speech-say-securite': 'Say SECURITE three times',
    'speech-call-all': 'Call all stations, three times',
    'speech-call-thrice': 'Say the name of the called station three times',
    'speech-call-once': 'Say the name of the called station once',
    'speech-say-this-is': 'Say that the name of the caller follows',
    'speech-own-thrice': 'Say your own name three times',
    'speech-own-twice': 'Say your own name twice',
    'speech-own-once': 'Say your own name once',
    'speech-own-sign': 'Spell your own call sign',
    'speech-own-mmsi': 'Say your own MMSI, digit by digit',
    'speech-own-name-sign': 'Say your own name, and spell your call sign',
    'speech-own-message': 'Begin the message: MAYDAY, your own name, call sign and MMSI',
    'speech-vessel-message':
      'Begin the message: MAYDAY, then name, call sign and MMSI of the vessel in distress',
    'speech-unidentified-message': 'Begin the message: MAYDAY of an unidentified vessel',
    'speech-vessel-thrice': 'Say the name of the vessel in distress three times',
    'speech-vessel-sign': 'Say the call sign or the MMSI of the vessel in distress',
    'speech-sender-thrice': 'Say the name of the station that sent the relay three times',
    'speech-own-position': 'Say your position',
    'speech-own-position-time': 'Say your position and its time in UTC',
    'speech-vessel-position': 'Say the position of the vessel in distress',
    'speech-vessel-position-time': 'Say the position of the vessel in distress and its time in UTC',
    'speech-own-nature': 'Say what is wrong[: {nature:nature}]',
    'speech-vessel-nature': 'Say what is wrong with the vessel in distress[: {nature:nature}]',
    'speech-own-assistance': 'Ask for immediate assistance',
    'speech-vessel-assistance': 'Say that the vessel needs immediate assistance',
    'speech-other-assistance': 'Say which assistance is needed',
    'speech-persons': 'Say how many persons are on board',
    'speech-information': 'Say what else helps the rescue',
    'speech-received': 'Say that you received the MAYDAY',
    'speech-relay-received': 'Say that you received the relay',
    'speech-cancel': 'Ask all stations to cancel your distress alert, with the time at which it was sent',
    'speech-urgent-message': 'Say what is wrong and what help you need',
    'speech-safety-message': 'Give the warning: what, where, and until when',
    'speech-safety-channel': 'Say on which channel the message follows: {channel}',
    'speech-over': 'End, and ask for an answer',
    'speech-out': 'End: no answer is expected',
    'speech-other-answers': 'The called station says your name and its own',
    'speech-other-calls': 'The caller says the name of the called station, then its own name twice',
    'speech-name-caller': 'Say the name of the caller once',
    'speech-ask-readability': 'Ask how well you are received',
    'speech-other-reads': 'The other station says how well it receives you',
    'speech-thank': 'Thank the other station by name, and end',
  },
  terms: /* @__PURE__ */ Object.assign({}, callTerms, voiceTerms) as typeof callTerms & typeof voiceTerms,
} as const;

/** All texts of this module. */
export type SpeechTexts = typeof speechTexts;

/** Makes a text. */
export const text: TextMaker<SpeechTexts> = /* @__PURE__ */ textMaker(speechTexts);

/** A code whose text needs nothing else: it has no params, or only the one for where distress traffic is spoken. */
export type Plain = {
  [Code in CodeOf<SpeechTexts>]: keyof ParamsOf<SpeechTexts, Code> extends 'where' ? Code : never;
}[CodeOf<SpeechTexts>];

/** The text of such a code, on VHF; any other text stays. */
export function plain(said: Plain | CodedText): CodedText {
  if (typeof said !== 'string') return said;
  const template = { ...speechTexts.caution, ...speechTexts.said }[said];
  return text(said, (template.includes('{where:') ? { where: 'vhf' } : {}) as { where: 'vhf' });
}
