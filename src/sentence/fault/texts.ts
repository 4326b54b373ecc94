import { type TextMaker, textMaker } from '../../result/internal.ts';

const faultTerms = {
  'sentence-why.no-data': 'Nothing came down the wire at all',
  'sentence-remedy.no-data':
    'Follow the pair from the talker terminals of the radio: something must be connected to them, not only to its position input. Check that A and B are the right way round and that a single-ended talker has its return. Check that the port is switched on',
  'sentence-why.wrong-speed':
    'This is not text: the port and the talker run at different speeds, or A and B are reversed',
  'sentence-remedy.wrong-speed':
    'Try 4800 and then 38 400 bit/s at the display, with 8 data bits and no parity: radios that receive AIS often use the faster speed for everything. If no speed gives text, exchange A and B',
  'sentence-why.no-sentence':
    'Lines arrive but none is a sentence: another format, or text that was altered on the way',
  'sentence-remedy.no-sentence':
    'Compare the first line with a sentence: that begins with $ or !, has capitals in its address and commas between its fields. Check which instrument is on the wire and how its output is set',
  'sentence-why.too-long': 'A sentence may have 82 characters; a strict listener drops a longer one',
  'sentence-remedy.too-long':
    'Reduce the decimals the talker sends, or use a listener that takes longer sentences',
  'sentence-why.tag-block':
    'The line begins with a TAG block, and a listener that cannot read TAG blocks drops the whole line',
  'sentence-remedy.tag-block': 'Switch TAG blocks off at the sender, or strip them before the display',
  'sentence-why.blank-damage':
    'The checksum passes only without the spaces: the text was damaged after it left the radio',
  'sentence-remedy.blank-damage':
    'The radio is not at fault: strip the spaces, or capture the log again directly, not through a web page or terminal',
  'sentence-why.blank-sent':
    'The talker sends spaces inside a field; a strict listener does not recognise the field',
  'sentence-remedy.blank-sent':
    'Strip the spaces on the way, and ask the manufacturer of the radio for new firmware',
  'sentence-why.checksum-wrong': 'The sentence changed on the way, and every listener drops it',
  'sentence-remedy.checksum-wrong':
    'Rule out the causes one by one: electrical noise, a poor ground, a second talker on the pair, a port speed slightly off. A constant difference points to a device that edits sentences',
  'sentence-why.rewritten-between':
    'Every stated checksum differs from the computed one in the same bits: the text was altered on the way and the checksum was not',
  'sentence-remedy.rewritten-between':
    'Find the device between radio and display that rewrites sentences, and remove it or correct its settings',
  'sentence-why.checksum-missing':
    'A listener may refuse a sentence without a checksum, and nothing shows whether it arrived whole',
  'sentence-remedy.checksum-missing': 'Switch the checksum on at the talker or at the device in between',
  'sentence-why.checksum-lower-case': 'The checksum is in lower case; a strict listener expects capitals',
  'sentence-remedy.checksum-lower-case':
    'Write the checksum in capitals on the way, and tell the manufacturer of the talker',
  'sentence-why.calls-filtered':
    'Sentences arrive but no call among them: none was received, or a device drops them',
  'sentence-remedy.calls-filtered':
    'Allow DSC and DSE sentences in every multiplexer, gateway and port setting, or wire the radio to the display directly. A device that converts 38 400 to 4800 bit/s may drop them',
  'sentence-why.reply-missing': 'Calls arrived, but not the expected position',
  'sentence-remedy.reply-missing':
    'Check whether the radio shows the reply. If it does, look for a device that drops sentences. If not, the other vessel may not have received the request, or its radio waits for the operator: ask again after a while, or by voice',
  'sentence-why.legacy-layout':
    'The fields are in the order of an older edition, address first, and a listener misreads them',
  'sentence-remedy.legacy-layout': 'Use a listener that reads the older layout, or rewrite the sentence',
  'sentence-why.fields-missing':
    'Empty fields at the end are missing, and a listener that expects eleven drops the sentence',
  'sentence-remedy.fields-missing':
    'Restore the empty fields on the way, and tell the manufacturer of the talker',
  'sentence-why.talker': 'The talker is not CD, and some displays accept only CDDSC',
  'sentence-remedy.talker': 'Rewrite the talker and the checksum on the way',
  'sentence-why.leading-zero-lost':
    'A field is one or more digits short, as when leading zeros are lost in a program that treats text as numbers',
  'sentence-remedy.leading-zero-lost':
    'Find the device or program and remove it. Do not fill in a zero: nothing shows which digit is missing',
  'sentence-why.bad-position': 'The digits are not a place on the Earth, and a careful display draws nothing',
  'sentence-remedy.bad-position':
    'Reject the position and keep the call. Ask the station again, by voice if it matters',
  'sentence-why.no-fix':
    'The other station has no position: the answer is valid and there is nothing to draw',
  'sentence-remedy.no-fix': 'Ask by voice: the other radio has no satellite position, or has lost it',
  'sentence-why.no-time': 'The position has no time, and some displays drop such a position',
  'sentence-remedy.no-time': 'Plot it with its age unknown: it may be an old one',
  'sentence-why.expansion-missing':
    'Decimals were announced and did not arrive in full: the position may be at whole minutes only',
  'sentence-remedy.expansion-missing':
    'Let DSE sentences through, wait longer, or ask for the position again',
  'sentence-why.expansion-late':
    'Other sentences came between a call and its decimals; a listener that reads only the next sentence misses them',
  'sentence-remedy.expansion-late': 'Give the radio a port of its own, or put the pair together on the way',
  'sentence-why.expansion-unannounced':
    'Decimals arrived although the call did not announce them; a listener that relies on the mark ignores them',
  'sentence-remedy.expansion-unannounced': 'Join them by identity, and tell the manufacturer of the radio',
  'sentence-why.expansion-mismatch':
    'Decimals of one station follow the call of another: joined, they would show a ship in the wrong place',
  'sentence-remedy.expansion-mismatch':
    'Never join them. Look for a lost call or a device that changes the order',
  'sentence-why.no-expansion':
    'The position is cut to whole minutes: the ship may be a mile and a half from the mark',
  'sentence-remedy.no-expansion':
    'Draw a box, not a dot. Ask again: if decimals never arrive, the other radio does not send them',
  'sentence-why.identity-nine-digits':
    'The identity is missing its padding zero; a strict listener expects ten digits',
  'sentence-remedy.identity-nine-digits': 'Add the zero on the way',
  'sentence-why.identity-last-digit':
    'Ten digits that do not end in 0 are not a padded identity, and match no other record of the ship',
  'sentence-remedy.identity-last-digit': 'Keep all ten digits. Ask the station for its identity',
  'sentence-why.own-call': 'The radio reports its own calls too, and they look like received ones',
  'sentence-remedy.own-call': 'Ignore calls from your own identity',
  'sentence-why.refused': 'The answer is a refusal or is empty: it has no position',
  'sentence-remedy.refused':
    'Call by voice and ask: many radios can be set to answer, to ask the operator or to refuse',
  'sentence-why.polled': 'Polling only asks whether a station is in range: the answer has no position',
  'sentence-remedy.polled': 'Send a position request instead',
  'sentence-why.category':
    'Position calls are safety calls; a display that checks the category ignores this one',
  'sentence-remedy.category': 'Recognise position calls by the first telecommand, 21, not by the category',
  'sentence-why.acknowledgement':
    'The position is unsolicited, and a display that expects an answer ignores it',
  'sentence-remedy.acknowledgement': 'Plot it as a report',
  'sentence-why.duplicates': 'The same alert or report came more than once, and draws a mark each time',
  'sentence-remedy.duplicates': 'Merge reports that say the same about one station into one event',
  'sentence-why.wrong-quadrant':
    'The reported position is far out of VHF range, and would be near with the other hemisphere',
  'sentence-remedy.wrong-quadrant':
    'Do not steer by it: the sender or a device in between has the quadrant digit wrong',
  'sentence-why.minutes-rounded':
    'The sender rounds the minutes and also adds the decimals: the mark is a minute off',
  'sentence-remedy.minutes-rounded':
    'Check against AIS or ask the vessel. Do not correct the position silently',
  'sentence-why.wrong-time':
    'The time of the position is hours away from the time of receipt: entered as local time, or old',
  'sentence-remedy.wrong-time': 'Treat the age as unknown, and ask the station for its time in UTC',
  'sentence-outside.accepted':
    'Which sentences the display accepts: see its manual. Some displays draw distress alerts and no other calls; WPL or TLL may work instead',
  'sentence-outside.network':
    'Whether the radio sends calls on another network of the boat and not on this line',
  'sentence-outside.tenth-digit':
    'What the display does with the tenth digit of an identity: a padding zero on the chart is cosmetic, but lists then do not match',
  'sentence-outside.other-vessel':
    'Whether the other vessel received the request, and whether its radio is set to answer, to ask or to refuse',
  'minute-source.ais': 'AIS',
  'minute-source.report': 'the last report',
  'faults.1': 'fault',
  'faults.*': 'faults',
  'sentences.1': 'sentence',
  'sentences.*': 'sentences',
  'calls.1': 'call',
  'calls.*': 'calls',
  'hours.1': 'hour',
  'hours.*': 'hours',
};

/** What finding faults says. A table of its own, so that an app that only reads does not carry it. */
export const faultTexts = {
  said: {
    'sentence-why': '{fault:sentence-why}',
    'sentence-remedy': '{fault:sentence-remedy}',
    'sentence-outside': '{check:sentence-outside}',
    'sentence-report-clean':
      'No fault found in {sentences} {sentences:sentences} with {calls} {calls:calls}: check the display and its settings',
    'sentence-report-faults':
      '{faults} {faults:faults} found in {sentences} {sentences:sentences} with {calls} {calls:calls}: start with {first}',
    'sentence-seen-no-byte': 'No byte',
    'sentence-seen-blank': 'Spaces and line ends only',
    'sentence-seen-foreign': '{foreign} of {count} bytes cannot be in a sentence',
    'sentence-seen-slow':
      '{foreign} of {count} bytes cannot be in a sentence, most of them as a slow line looks to a fast port',
    'sentence-seen-checksum': "{line} (computed '*{computed}', stated {stated})",
    'sentence-seen-no-checksum': '{line} (no checksum possible: a character above FF hex, stated {stated})',
    'sentence-seen-alike': '{count} checksums, each off by {difference}',
    'sentence-seen-no-call': '{sentences} {sentences:sentences}, but no DSC',
    'sentence-seen-no-reply': '{calls} {calls:calls}, but no position reply[ of {station}]',
    'sentence-seen-repeat': 'The same again, {count} times by now',
    'sentence-seen-no-expansion': 'No expansion announced and none received',
    'sentence-seen-zero-decimals': 'All eight decimals are 0',
    'sentence-seen-empty-position': 'A position reply with an empty position',
    'sentence-seen-minute-off': '{position}, a minute off from {source:minute-source}',
    'sentence-seen-hours-before': '{hours} {hours:hours} before the receipt',
    'sentence-seen-hours-after': '{hours} {hours:hours} after the receipt',
  },
  terms: faultTerms as typeof faultTerms,
} as const;

/** Makes a text of finding faults. */
export const said: TextMaker<typeof faultTexts> = /* @__PURE__ */ textMaker(faultTexts);
