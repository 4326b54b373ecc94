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
    why: 'nothing at all came down the wire',
    remedy:
      'follow the pair from the radio’s talker terminals: is anything connected to them, or only to the listener that takes the position in; are A and B the right way round; has a single-ended talker its return; is the port switched on',
  },
  {
    id: 'wrong-speed',
    step: 'bytes',
    why: 'the bytes are no text: the port runs at another speed than the talker, or A and B are reversed',
    remedy:
      'try 4800 and then 38 400 bit/s at the display, with 8 data bits and no parity; radios that receive AIS tend to use the faster one for all they send; if no speed gives text, exchange A and B',
  },
  {
    id: 'no-sentence',
    step: 'lines',
    why: 'lines arrive and none of them is a sentence: another format, or text that was altered on its way',
    remedy:
      'compare the first line with a sentence: it begins with $ or !, has capitals in its address and commas between its fields; see which instrument is on the wire and what its output is set to',
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
    why: 'the line begins with a TAG block, and a listener that does not know them drops the whole line',
    remedy: 'switch TAG blocks off at the sender, or strip them before the display',
  },
  {
    id: 'blank-damage',
    step: 'checksums',
    why: 'the checksum holds only without the blanks: the text was damaged after it left the radio',
    remedy:
      'the radio is not at fault: take the blanks out, or get the log again without a page or terminal between',
  },
  {
    id: 'blank-sent',
    step: 'checksums',
    why: 'the talker sends blanks inside a field; a listener that compares strictly misses the field',
    remedy: 'take the blanks out on the way, and ask the maker of the radio for new firmware',
  },
  {
    id: 'checksum-wrong',
    step: 'checksums',
    why: 'what came is not what was sent, and every listener drops it',
    remedy:
      'rule out one cause after the other: electrical noise, a poor ground, a second talker on the pair, a port speed slightly off; one constant difference points to a device that edits sentences',
  },
  {
    id: 'rewritten-between',
    step: 'checksums',
    why: 'in every sentence the stated checksum misses the computed one by an equal difference: the text was altered on its way and the checksum was left as it was',
    remedy:
      'find the device between the radio and the display that rewrites sentences, and take it out or set it right',
  },
  {
    id: 'checksum-missing',
    step: 'checksums',
    why: 'a listener may refuse a sentence without a checksum, and nobody can tell whether it came whole',
    remedy: 'switch the checksum on at the talker or at the device between',
  },
  {
    id: 'checksum-lower-case',
    step: 'checksums',
    why: 'the checksum has small letters; a strict listener wants capitals',
    remedy: 'write the checksum in capitals on the way, and tell the maker of the talker',
  },
  {
    id: 'calls-filtered',
    step: 'calls',
    why: 'the line is alive, and no call is on it: none was received, or a device leaves the calls out',
    remedy:
      'allow DSC and DSE sentences in every multiplexer, gateway and port setting, or wire the radio to the display directly; a device that converts 38 400 to 4800 bit/s may drop them',
  },
  {
    id: 'reply-missing',
    step: 'calls',
    why: 'calls came down the wire, but the awaited position is not among them',
    remedy:
      'see whether the radio itself shows the reply: if it does, look for a device that drops sentences; if it does not, she may not have heard, or her set waits for a person: ask again after a while, or by voice',
  },
  {
    id: 'legacy-layout',
    step: 'calls',
    why: 'the fields stand in the order of an older edition, address first, and are taken for others',
    remedy: 'use a listener that knows the older layout, or rewrite the sentence',
  },
  {
    id: 'fields-missing',
    step: 'calls',
    why: 'empty fields at the end were left off, and a listener that counts to eleven drops the sentence',
    remedy: 'put the empty fields back on the way, and tell the maker of the talker',
  },
  {
    id: 'talker',
    step: 'calls',
    why: 'the talker is not CD, and some displays wait for CDDSC letter by letter',
    remedy: 'rewrite the talker and the checksum on the way',
  },
  {
    id: 'leading-zero-lost',
    step: 'position',
    why: 'a field is one or more digits short, as when zeros in front are lost where text is handled as numbers',
    remedy:
      'find the device and take it out; a zero filled in would be invented, since nothing shows which digit went',
  },
  {
    id: 'bad-position',
    step: 'position',
    why: 'the digits are no place on the Earth, and a careful display draws nothing',
    remedy: 'refuse the position and keep the call; ask the station again, by voice if it matters',
  },
  {
    id: 'no-fix',
    step: 'position',
    why: 'the other station has no position to give: the answer is sound and there is nothing to draw',
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
    why: 'the decimals were announced and did not come: the position stays at whole minutes',
    remedy: 'let DSE sentences through, lengthen the wait, or ask for the position again',
  },
  {
    id: 'expansion-late',
    step: 'expansion',
    why: 'other sentences came between a call and its decimals; a listener that takes only the very next one misses them',
    remedy: 'give the radio a port of its own, or put the pair together on the way',
  },
  {
    id: 'expansion-unannounced',
    step: 'expansion',
    why: 'decimals came though the call did not announce them; a listener that goes by the mark leaves them out',
    remedy: 'join them by identity, and tell the maker of the radio',
  },
  {
    id: 'expansion-mismatch',
    step: 'expansion',
    why: 'decimals of one station follow the call of another: joined, they would draw a ship where none is',
    remedy: 'never join them; look for a lost call or a device that changes the order',
  },
  {
    id: 'no-expansion',
    step: 'expansion',
    why: 'the position is cut to whole minutes: the ship lies up to a mile and a half from the mark',
    remedy: 'draw a box, not a dot; ask again, and if decimals never come, the other set has none',
  },
  {
    id: 'identity-nine-digits',
    step: 'identity',
    why: 'the identity lacks its padding zero; a strict listener wants ten digits',
    remedy: 'add the zero on the way',
  },
  {
    id: 'identity-last-digit',
    step: 'identity',
    why: 'ten digits that do not end in 0 are no padded identity, and match no other record of the ship',
    remedy: 'keep them as they are and do not cut; ask the station who she is',
  },
  {
    id: 'own-call',
    step: 'identity',
    why: 'the set reports its own calls too, and they look as if they had been received',
    remedy: 'leave out calls from the own identity',
  },
  {
    id: 'refused',
    step: 'call-type',
    why: 'the answer says no or says nothing: there is no position in it',
    remedy: 'many sets can be told to answer, to ask the operator or to refuse: call by voice and ask',
  },
  {
    id: 'polled',
    step: 'call-type',
    why: 'polling asks only whether a station is in range: its answer has no position',
    remedy: 'send a position request instead',
  },
  {
    id: 'category',
    step: 'call-type',
    why: 'position calls are safety calls; a display that goes by the category ignores another one',
    remedy: 'tell such a call by its first telecommand, 21, not by its category',
  },
  {
    id: 'acknowledgement',
    step: 'call-type',
    why: 'the position came unasked, and a display that waits for an answer ignores it',
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
    why: 'the station is far out of VHF range where she says she is, and near if one hemisphere is wrong',
    remedy: 'do not steer by it; a sender or a device between has the quadrant digit wrong',
  },
  {
    id: 'minutes-rounded',
    step: 'plausibility',
    why: 'the sender rounds the minutes and adds the decimals all the same: the mark is a minute too far',
    remedy: 'compare with her AIS or with her word; subtract nothing without telling',
  },
  {
    id: 'wrong-time',
    step: 'plausibility',
    why: 'the time of the position is hours from the time it came: keyed in as local time, or old',
    remedy: 'treat the age as unknown, and ask the station for her time in UTC',
  },
] as const;

/** Name of a fault. */
export type FaultId = (typeof FAULTS)[number]['id'];
/** At which step of a diagnosis a fault shows, in the order a technician takes them. */
export type FaultStep = (typeof FAULTS)[number]['step'];
