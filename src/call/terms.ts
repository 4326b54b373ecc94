/** The fields of a call, as the tables of ITU-R M.493 name them. */
export const fieldTerms = {
  'call-field.format': 'Format specifier',
  'call-field.address': 'Address',
  'call-field.category': 'Category',
  'call-field.self': 'Self-identification',
  'call-field.telecommand1': 'First telecommand',
  'call-field.telecommand2': 'Second telecommand',
  'call-field.distressed': 'Ship in distress',
  'call-field.nature': 'Nature of distress',
  'call-field.receive': 'First frequency or channel element',
  'call-field.transmit': 'Second frequency or channel element',
  'call-field.telephone': 'Telephone number',
  'call-field.header': 'Header of the position',
  'call-field.position': 'Position',
  'call-field.time': 'Time of the position',
  'call-field.subsequent': 'Type of subsequent communication',
  'call-field.rest': 'Rest of the message',
  'call-field.end': 'End of sequence',
  'call-field.expansion': 'Expansion',
};

/** Where distress traffic is spoken. */
export const voiceTerms = {
  'distress-voice.vhf': 'on channel 16',
  'distress-voice.mf-hf': 'on the voice distress frequency of the band (2182 kHz for calls on 2187.5 kHz)',
};

/** What each value of a call has to be, so that it has symbols; with what was got, this is what a composer throws. */
export const valueTerms = {
  'call-value.identity': 'identity: expected nine digits',
  'call-value.channel': "channel: expected two to four digits such as '06' or '1022'",
  'call-value.frequency': 'frequency: expected six or eight digits',
  'call-value.telephone': 'telephone number: expected 1 to 16 digits',
  'call-value.time': 'time: expected an hour 0–23 and a minute 0–59',
  'call-value.position': 'position: expected degrees and minutes within their ranges',
  'call-value.area': 'area: expected degrees and sides within their ranges',
  'call-value.source': 'source of the fix: expected six digits',
  'call-value.course': 'course: expected 0 to 359.9',
  'call-value.speed': 'speed: expected 0 to 999.9',
  'call-value.persons': 'persons on board: expected 0 to 9999',
  'call-value.area-minutes': 'minutes of the area: expected 0 to 59.99',
  'call-value.end': 'end: expected one of request, answer, end',
  'call-value.name': 'name of a symbol: expected one of the tables, or symbol- and its number',
};

/** Categories, apart because the notices about what was received need no other words. */
export const categoryTerms = {
  'category.routine': 'routine',
  'category.acs': 'automatic connection system',
  'category.safety': 'safety',
  'category.urgency': 'urgency',
  'category.distress': 'distress',
};

/** The words for what a call names, by field and name. Other modules spread them into the terms of their texts. */
export const callTerms = {
  // Natures of distress, fit to follow "the nature of distress is".
  'nature.fire-explosion': 'fire or explosion',
  'nature.flooding': 'flooding',
  'nature.collision': 'collision',
  'nature.grounding': 'grounding',
  'nature.listing': 'listing, in danger of capsizing',
  'nature.sinking': 'sinking',
  'nature.disabled-adrift': 'disabled and adrift',
  'nature.undesignated': 'nature not stated',
  'nature.abandoning-ship': 'abandoning ship',
  'nature.piracy': 'piracy or armed attack',
  'nature.man-overboard': 'man overboard',
  'nature.epirb-emission': 'signal of an emergency beacon',
  // Reasons for being unable to comply.
  'reason.no-reason': 'no reason given',
  'reason.switching-centre-congested': 'switching centre congested',
  'reason.busy': 'busy',
  'reason.queue': 'waiting in a queue',
  'reason.station-barred': 'station barred',
  'reason.no-operator': 'no operator available',
  'reason.operator-unavailable': 'operator unavailable for the moment',
  'reason.equipment-disabled': 'equipment out of order',
  'reason.channel-unusable': 'cannot use the channel proposed',
  'reason.mode-unusable': 'cannot use the mode proposed',
  // Kinds of call.
  'call-kind.distress-alert': 'distress alert',
  'call-kind.distress-acknowledgement': 'distress acknowledgement',
  'call-kind.distress-self-cancel': 'cancellation of a distress alert by its sender',
  'call-kind.distress-relay': 'distress relay',
  'call-kind.distress-relay-acknowledgement': 'distress relay acknowledgement',
  'call-kind.all-ships-call': 'all-ships call',
  'call-kind.area-call': 'call to an area',
  'call-kind.group-call': 'group call',
  'call-kind.individual-call': 'individual call',
  'call-kind.individual-acknowledgement': 'acknowledgement (able to comply)',
  'call-kind.unable-to-comply': 'acknowledgement (unable to comply)',
  'call-kind.position-request': 'position request',
  'call-kind.position-reply': 'position report',
  'call-kind.test-call': 'test call',
  'call-kind.test-acknowledgement': 'test call acknowledgement',
  'call-kind.polling-call': 'polling call',
  'call-kind.polling-acknowledgement': 'polling acknowledgement',
  'call-kind.automatic-service-call': 'telephone-service call',
  'call-kind.unrecognised-call': 'unrecognised call',
};

/** The words for the other symbols of a call. */
export const symbolTerms = {
  // Second telecommands that are no reasons.
  'second-telecommand.neutral-craft': 'craft of a State not party to an armed conflict',
  'second-telecommand.medical-transport': 'medical transport',
  'second-telecommand.pay-phone': 'public telephone',
  'second-telecommand.facsimile': 'facsimile or data',
  'second-telecommand.data-modem-115': 'data by modem (115)',
  'second-telecommand.data-modem-116': 'data by modem (116)',
  'second-telecommand.acs-remaining-0': 'no automatic transmission remaining',
  'second-telecommand.acs-remaining-1': '1 automatic transmission remaining',
  'second-telecommand.acs-remaining-2': '2 automatic transmissions remaining',
  'second-telecommand.acs-remaining-3': '3 automatic transmissions remaining',
  'second-telecommand.acs-remaining-4': '4 automatic transmissions remaining',
  'second-telecommand.acs-remaining-5': '5 automatic transmissions remaining',
  // First telecommands and types of subsequent communication.
  'first-telecommand.telephony-simplex': 'telephony, simplex',
  'first-telecommand.telephony-duplex': 'telephony, duplex',
  'first-telecommand.polling': 'polling',
  'first-telecommand.unable-to-comply': 'unable to comply',
  'first-telecommand.end-of-call': 'end of call',
  'first-telecommand.data': 'data',
  'first-telecommand.telephony-j3e': 'telephony, single sideband',
  'first-telecommand.distress-acknowledgement': 'distress acknowledgement',
  'first-telecommand.telephony-h3e': 'telephony, single sideband with full carrier',
  'first-telecommand.distress-relay': 'distress relay',
  'first-telecommand.teleprinter-fec': 'teleprinter, to many',
  'first-telecommand.teleprinter-arq': 'teleprinter, to one',
  'first-telecommand.teleprinter-receive': 'teleprinter, receiving',
  'first-telecommand.test': 'test',
  'first-telecommand.ship-position': 'position of the ship',
  'first-telecommand.morse': 'Morse telegraphy',
  // Format specifiers.
  'format-specifier.area': 'ships in an area',
  'format-specifier.distress': 'distress',
  'format-specifier.group': 'group of ships',
  'format-specifier.all-ships': 'all ships',
  'format-specifier.individual': 'one station',
  'format-specifier.automatic-service': 'one station, automatic service',
  // Ends of sequence.
  'end-of-sequence.acknowledgement-requested': 'an answer is requested',
  'end-of-sequence.acknowledgement': 'this is an answer',
  'end-of-sequence.end-of-sequence': 'no answer is requested',
};

/** What a value of a call has to be: the types that a compiler looks at. */
export const typeTerms = {
  'value-type.call': 'a call',
  'value-type.kind': 'one of the kinds of call',
  'value-type.address': 'an address',
  'value-type.address-kind': 'one of the kinds of address',
  'value-type.area': 'a geographic area or null',
  'value-type.position': 'a reported position or null',
  'value-type.time': 'an hour and a minute, or null',
  'value-type.text-or-null': 'text or null',
  'value-type.text': 'text',
  'value-type.number': 'a number',
  'value-type.numbers': 'a list of numbers',
  'value-type.object': 'an object',
};
