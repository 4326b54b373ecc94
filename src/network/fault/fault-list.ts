/** How sure a finding is: `'certain'` it is so, `'likely'` nothing else explains it, `'possible'` it may be sound. */
export type FaultCertainty = 'certain' | 'likely' | 'possible';

/**
 * What can be wrong between a radio and a display on the network, in the order in which to look.
 *
 * Source: common practice, collected from public reports of trouble; the rules of messages are those of the public
 * list of parameter groups of IEC 61162-3.
 */
export const NETWORK_FAULTS = [
  {
    id: 'no-frames',
    certainty: 'certain',
    why: 'No frame was found: the port is closed, the bit rate is wrong, or the file has another format',
    remedy: 'Open the port at 250 kbit/s and save the log with a general CAN tool',
  },
  {
    id: 'not-frames',
    certainty: 'certain',
    why: 'Lines that are not frames are lost with everything they carried',
    remedy: 'Save the log again straight from the port',
  },
  {
    id: 'packet-torn',
    certainty: 'certain',
    why: 'Every display drops a message of several frames when one is missing',
    remedy:
      'Look for a gateway that reorders frames, a bus without two terminators, or one that is overloaded',
  },
  {
    id: 'no-call-message',
    certainty: 'possible',
    why: 'A radio is on the bus and no call was passed on as PGN 129808: older sets pass calls on in a group of their own, or only over their serial port',
    remedy: 'Look in the manual of the radio for PGN 129808, and connect its serial port where it has none',
  },
  {
    id: 'two-digit-codes',
    certainty: 'certain',
    why: 'The message holds the two-digit codes of a serial sentence where PGN 129808 has symbols of 100 to 127, so a display cannot recognise a distress alert',
    remedy: 'Tell the manufacturer of the converter',
  },
  {
    id: 'identity-code',
    certainty: 'certain',
    why: 'An identity is not five numbers of two digits ending in 0: it was written as one number or as binary-coded digits, and names a station that did not call',
    remedy: 'Do not trust the identity on the display; tell the manufacturer of the converter',
  },
  {
    id: 'category-lost',
    certainty: 'likely',
    why: 'A call without a category looks like a routine call: an urgency or safety call raises no alarm',
    remedy: 'Look at the radio itself; tell the manufacturer of the converter',
  },
  {
    id: 'message-cut-off',
    certainty: 'certain',
    why: 'The message or a text in it ends before its length: decimals of the position, name or course may be missing',
    remedy: 'Compare with what the radio shows; tell its manufacturer',
  },
  {
    id: 'date-early',
    certainty: 'certain',
    why: 'The date is 1024 weeks early, as an old GNSS receiver sets it: a display may treat the call as old',
    remedy: 'Replace or update the receiver that sets the clock of the bus',
  },
  {
    id: 'call-repeated',
    certainty: 'certain',
    why: 'One call was written more than once: a list shows it twice',
    remedy: 'Count calls by their content, not by their message number',
  },
  {
    id: 'no-address-claim',
    certainty: 'possible',
    why: 'A node sends without an address claim: some displays ignore such a node',
    remedy: 'Ask all nodes for their address claim, or log from the moment the bus is switched on',
  },
  {
    id: 'address-disputed',
    certainty: 'likely',
    why: 'Two nodes claim one address, or one name claims again and again: displays may ignore both',
    remedy: 'Switch nodes off one after another until the claims end',
  },
  {
    id: 'two-positions',
    certainty: 'possible',
    why: 'Two nodes send the own position: a display may take the other one',
    remedy: 'Choose the source in the settings of the display',
  },
  {
    id: 'own-report-as-target',
    certainty: 'likely',
    why: 'The own AIS report is marked as received: the own vessel shows as a target beside itself',
    remedy: 'Set the own identity in the display; tell the manufacturer of the transponder',
  },
  {
    id: 'waypoint-not-listed',
    certainty: 'possible',
    why: 'A destination was sent without a waypoint of that name: a display may steer to it without listing it',
    remedy: 'Send PGN 129285 or 130074 with it',
  },
] as const;

/** One of the faults of {@link NETWORK_FAULTS}. */
export type NetworkFaultId = (typeof NETWORK_FAULTS)[number]['id'];
