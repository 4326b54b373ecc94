/**
 * Every fault that can be found in what a radio sends to a display, in the order in which to look: its step of
 * the diagnosis, why the display may show nothing or the wrong thing, and what to do about it.
 *
 * Source: common practice, no source, where nothing else is said; the rules of the sentences are those of
 * IEC 61162-1 as publicly restated. deviation: D-sentence-11
 */
export const FAULTS = [
  {
    id: 'no-data',
    step: 'bytes',
    why: 'nothing came down the wire at all',
    remedy:
      'follow the pair from the talker terminals of the radio: check that something is connected to them and not only to the listener for the position, that A and B are the right way round, that a single-ended talker has its return, and that the port is switched on',
  },
  {
    id: 'wrong-speed',
    step: 'bytes',
    why: 'this is not text: the port and the talker run at different speeds, or A and B are reversed',
    remedy:
      'try 4800 and then 38 400 bit/s at the display, with 8 data bits and no parity; radios that receive AIS often use the faster speed for everything; if no speed gives text, exchange A and B',
  },
  {
    id: 'no-sentence',
    step: 'lines',
    why: 'lines arrive but none is a sentence: another format, or text that was altered on the way',
    remedy:
      'compare the first line with a sentence, which begins with $ or !, has capitals in its address and commas between its fields; check which instrument is on the wire and how its output is set',
  },
  {
    id: 'too-long',
    step: 'lines',
    why: 'a sentence may have 82 characters; a strict listener drops a longer one',
    remedy: 'reduce the decimals the talker sends, or use a listener that takes longer sentences',
  },
  {
    id: 'tag-block',
    step: 'lines',
    why: 'the line begins with a TAG block, and a listener that cannot read TAG blocks drops the whole line',
    remedy: 'switch TAG blocks off at the sender, or strip them before the display',
  },
  {
    id: 'blank-damage',
    step: 'checksums',
    why: 'the checksum passes only without the spaces: the text was damaged after it left the radio',
    remedy:
      'the radio is not at fault: strip the spaces, or capture the log again directly, not through a web page or terminal',
  },
  {
    id: 'blank-sent',
    step: 'checksums',
    why: 'the talker sends spaces inside a field; a strict listener does not recognise the field',
    remedy: 'strip the spaces on the way, and ask the manufacturer of the radio for new firmware',
  },
  {
    id: 'checksum-wrong',
    step: 'checksums',
    why: 'the sentence changed on the way, and every listener drops it',
    remedy:
      'rule out the causes one by one: electrical noise, a poor ground, a second talker on the pair, a port speed slightly off; a constant difference points to a device that edits sentences',
  },
  {
    id: 'rewritten-between',
    step: 'checksums',
    why: 'every stated checksum differs from the computed one in the same bits: the text was altered on the way and the checksum was not',
    remedy:
      'find the device between radio and display that rewrites sentences, and remove it or correct its settings',
  },
  {
    id: 'checksum-missing',
    step: 'checksums',
    why: 'a listener may refuse a sentence without a checksum, and nothing shows whether it arrived whole',
    remedy: 'switch the checksum on at the talker or at the device in between',
  },
  {
    id: 'checksum-lower-case',
    step: 'checksums',
    why: 'the checksum is in lower case; a strict listener expects capitals',
    remedy: 'write the checksum in capitals on the way, and tell the manufacturer of the talker',
  },
  {
    id: 'calls-filtered',
    step: 'calls',
    why: 'sentences arrive but no call among them: none was received, or a device drops them',
    remedy:
      'allow DSC and DSE sentences in every multiplexer, gateway and port setting, or wire the radio to the display directly; a device that converts 38 400 to 4800 bit/s may drop them',
  },
  {
    id: 'reply-missing',
    step: 'calls',
    why: 'calls arrived, but not the expected position',
    remedy:
      'check whether the radio shows the reply: if it does, look for a device that drops sentences; if not, the other vessel may not have received the request, or its set waits for the operator: ask again after a while, or by voice',
  },
  {
    id: 'legacy-layout',
    step: 'calls',
    why: 'the fields are in the order of an older edition, address first, and a listener misreads them',
    remedy: 'use a listener that reads the older layout, or rewrite the sentence',
  },
  {
    id: 'fields-missing',
    step: 'calls',
    why: 'empty fields at the end are missing, and a listener that expects eleven drops the sentence',
    remedy: 'restore the empty fields on the way, and tell the manufacturer of the talker',
  },
  {
    id: 'talker',
    step: 'calls',
    why: 'the talker is not CD, and some displays accept only CDDSC',
    remedy: 'rewrite the talker and the checksum on the way',
  },
  {
    id: 'leading-zero-lost',
    step: 'position',
    why: 'a field is one or more digits short, as when leading zeros are lost in a program that treats text as numbers',
    remedy:
      'find the device or program and remove it; do not fill in a zero, because nothing shows which digit is missing',
  },
  {
    id: 'bad-position',
    step: 'position',
    why: 'the digits are not a place on the Earth, and a careful display draws nothing',
    remedy: 'reject the position and keep the call; ask the station again, by voice if it matters',
  },
  {
    id: 'no-fix',
    step: 'position',
    why: 'the other station has no position: the answer is valid and there is nothing to draw',
    remedy: 'ask by voice; the other set has no satellite position, or has lost it',
  },
  {
    id: 'no-time',
    step: 'position',
    why: 'the position has no time, and some displays drop such a position',
    remedy: 'plot it with its age unknown; it may be an old one',
  },
  {
    id: 'expansion-missing',
    step: 'expansion',
    why: 'decimals were announced and did not arrive in full: the position may be at whole minutes only',
    remedy: 'let DSE sentences through, wait longer, or ask for the position again',
  },
  {
    id: 'expansion-late',
    step: 'expansion',
    why: 'other sentences came between a call and its decimals; a listener that reads only the next sentence misses them',
    remedy: 'give the radio a port of its own, or put the pair together on the way',
  },
  {
    id: 'expansion-unannounced',
    step: 'expansion',
    why: 'decimals arrived although the call did not announce them; a listener that relies on the mark ignores them',
    remedy: 'join them by identity, and tell the manufacturer of the radio',
  },
  {
    id: 'expansion-mismatch',
    step: 'expansion',
    why: 'decimals of one station follow the call of another: joined, they would show a ship in a wrong place',
    remedy: 'never join them; look for a lost call or a device that changes the order',
  },
  {
    id: 'no-expansion',
    step: 'expansion',
    why: 'the position is cut to whole minutes: the ship may be a mile and a half from the mark',
    remedy: 'draw a box, not a dot; ask again: if decimals never arrive, the other set does not send them',
  },
  {
    id: 'identity-nine-digits',
    step: 'identity',
    why: 'the identity is missing its padding zero; a strict listener expects ten digits',
    remedy: 'add the zero on the way',
  },
  {
    id: 'identity-last-digit',
    step: 'identity',
    why: 'ten digits that do not end in 0 are not a padded identity, and match no other record of the ship',
    remedy: 'keep all ten digits; ask the station for its identity',
  },
  {
    id: 'own-call',
    step: 'identity',
    why: 'the set reports its own calls too, and they look like received ones',
    remedy: 'ignore calls from your own identity',
  },
  {
    id: 'refused',
    step: 'call-type',
    why: 'the answer is a refusal or is empty: it has no position',
    remedy: 'many sets can be set to answer, to ask the operator or to refuse: call by voice and ask',
  },
  {
    id: 'polled',
    step: 'call-type',
    why: 'polling only asks whether a station is in range: the answer has no position',
    remedy: 'send a position request instead',
  },
  {
    id: 'category',
    step: 'call-type',
    why: 'position calls are safety calls; a display that checks the category ignores this one',
    remedy: 'recognise position calls by the first telecommand, 21, not by the category',
  },
  {
    id: 'acknowledgement',
    step: 'call-type',
    why: 'the position is unsolicited, and a display that expects an answer ignores it',
    remedy: 'plot it as a report',
  },
  {
    id: 'duplicates',
    step: 'call-type',
    why: 'the same alert or report came more than once, and draws a mark each time',
    remedy: 'merge what says the same of the same station into one event',
  },
  {
    id: 'wrong-quadrant',
    step: 'plausibility',
    why: 'the reported position is far out of VHF range, and would be near with the other hemisphere',
    remedy: 'do not steer by it; the sender or a device in between has the quadrant digit wrong',
  },
  {
    id: 'minutes-rounded',
    step: 'plausibility',
    why: 'the sender rounds the minutes and also adds the decimals: the mark is a minute off',
    remedy: 'check against AIS or ask the vessel; do not correct the position silently',
  },
  {
    id: 'wrong-time',
    step: 'plausibility',
    why: 'the time of the position is hours away from the time of receipt: entered as local time, or old',
    remedy: 'treat the age as unknown, and ask the station for its time in UTC',
  },
] as const;

/** Name of a fault. */
export type FaultId = (typeof FAULTS)[number]['id'];
/** At which step of a diagnosis a fault shows, in the order a technician takes them. */
export type FaultStep = (typeof FAULTS)[number]['step'];
