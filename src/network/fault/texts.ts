import { type TextMaker, textMaker } from '../../result/internal.ts';

const faultTerms = {
  'network-why.no-frames':
    'No frame was found: the port is closed, the bit rate is wrong, or the file has another format',
  'network-remedy.no-frames': 'Open the port at 250 kbit/s and save the log with a general CAN tool',
  'network-why.not-frames': 'Lines that are not frames are lost with everything they carried',
  'network-remedy.not-frames': 'Save the log again straight from the port',
  'network-why.packet-torn': 'Every display drops a message of several frames when one is missing',
  'network-remedy.packet-torn':
    'Look for a gateway that reorders frames, a bus without two terminators, or one that is overloaded',
  'network-why.no-call-message':
    'A radio is on the bus and no call was passed on as PGN 129808: older radios pass calls on in a group of their own, or only over their serial port',
  'network-remedy.no-call-message':
    'Look for PGN 129808 in the manual of the radio. Where it has none, connect its serial port',
  'network-why.two-digit-codes':
    'The message holds the two-digit codes of a serial sentence where PGN 129808 has symbols of 100 to 127, so a display cannot recognise a distress alert',
  'network-remedy.two-digit-codes': 'Tell the manufacturer of the converter',
  'network-why.identity-code':
    'An identity is not five numbers of two digits ending in 0: it was written as one number or as binary-coded digits, and names a station that did not call',
  'network-remedy.identity-code':
    'Do not trust the identity on the display. Tell the manufacturer of the converter',
  'network-why.category-lost':
    'A call without a category looks like a routine call: an urgency or safety call raises no alarm',
  'network-remedy.category-lost': 'Look at the radio itself. Tell the manufacturer of the converter',
  'network-why.message-cut-off':
    'The message or a text in it ends before its length: decimals of the position, name or course may be missing',
  'network-remedy.message-cut-off': 'Compare with what the radio shows. Tell its manufacturer',
  'network-why.date-early':
    'The date is 1024 weeks early, as an old GNSS receiver sets it: a display may treat the call as old',
  'network-remedy.date-early': 'Replace or update the receiver that sets the clock of the bus',
  'network-why.call-repeated': 'One call was written more than once: a list shows it twice',
  'network-remedy.call-repeated': 'Count calls by their content, not by their message number',
  'network-why.no-address-claim': 'A node sends without an address claim: some displays ignore such a node',
  'network-remedy.no-address-claim':
    'Ask all nodes for their address claim, or log from the moment the bus is switched on',
  'network-why.address-disputed':
    'Two nodes claim one address, or one name claims again and again: displays may ignore both',
  'network-remedy.address-disputed': 'Switch nodes off one after another until the claims end',
  'network-why.two-positions': 'Two nodes send own position: a display may take the wrong one',
  'network-remedy.two-positions': 'Choose the source in the settings of the display',
  'network-why.own-report-as-target':
    'Own AIS report is marked as received: own vessel shows as a target beside itself',
  'network-remedy.own-report-as-target':
    'Set your own identity in the display. Tell the manufacturer of the transponder',
  'network-why.waypoint-not-listed':
    'A destination was sent without a waypoint of that name: a display may steer to it without listing it',
  'network-remedy.waypoint-not-listed': 'Send PGN 129285 or 130074 with it',
  'network-outside.accepted':
    'Whether the display takes PGN 129808 at all: its manual lists the parameter groups that it receives',
  'network-outside.gateway': 'Whether a gateway between two buses passes PGN 129808 on',
  'network-outside.other-vessel':
    'Whether the other vessel heard the request, and whether its radio answers, asks or refuses',
  'lines.1': 'line',
  'lines.*': 'lines',
};

/** What finding faults says. A table of its own, so that an app that only reads does not carry it. */
export const faultTexts = {
  said: {
    'network-why': '{fault:network-why}',
    'network-remedy': '{fault:network-remedy}',
    'network-outside': '{check:network-outside}',
    'network-seen-no-frames': 'No frame in {count} {count:lines}',
    'network-seen-format': 'Format {format}',
    'network-seen-no-category': 'Format {format}, no category',
    'network-seen-repeat': 'Call {event} of the log, written {count} times by now',
    'network-seen-names': 'Address {address}: {count} names',
    'network-seen-address': 'Address {address}',
    'network-seen-positions': 'PGN {pgn} from addresses {addresses& and }',
    'network-seen-radio': 'A node of device class {deviceClass}, communication',
  },
  terms: faultTerms as typeof faultTerms,
} as const;

/** Makes a text of finding faults. */
export const said: TextMaker<typeof faultTexts> = /* @__PURE__ */ textMaker(faultTexts);
