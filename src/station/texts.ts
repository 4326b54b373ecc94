import { callTerms, categoryTerms } from '../call/internal.ts';
import type { CodedText } from '../result/index.ts';
import {
  type CodeOf,
  type IssueMaker,
  issueMaker,
  type ParamsOf,
  type TermOf,
  type TextMaker,
  textMaker,
} from '../result/internal.ts';

const stationTerms = {
  'brief-to.area': 'to an area',
  'brief-to.all-ships': 'to all ships',
  'brief-lack.position': 'no position',
  'heard-verdict.repaired': 'repaired',
  'heard-verdict.doubtful': 'doubtful',
  'of-class.A': 'class A',
  'of-class.D': 'class D',
  'of-class.H': 'class H',
  'of-class.M': 'class M',
  'of-class.coast': 'a coast station',
  'state-form.plain': 'plain data',
  'state-form.station': "an object with kind 'station'",
  'state-form.version': 'a version',
};

/** What the station refuses, shows, asks, logs and warns of. */
export const stationTexts = {
  error: {
    'station-identity-missing': 'Own identity is not stored: nothing can be sent',
    'station-identity-fixed': 'Own identity is already stored: the user cannot change it',
    'station-identity-form': [
      'Own identity: expected {expected}, got {received}',
      'a number that one station can have',
    ],
    'station-class-cannot-send':
      'Equipment of {equipment:of-class} does not send this kind of call: {kind:call-kind}',
    'station-not-a-beginning': 'Call cannot be started by hand: {kind:call-kind}',
    'station-not-of-procedure': 'Call is not part of this procedure: {kind:call-kind}',
    'station-address-missing': ['Call: expected {expected}, got none', 'an address'],
    'station-call-form': 'Call has a value without symbols: it cannot be sent',
    'station-call-to-itself': 'Call is addressed to this station itself',
    'station-relay-reason': [
      'Relay needs a reason: nobody acknowledged within five minutes, or the vessel in distress cannot alert herself and the master judges that more help is needed',
      'because',
    ],
    'station-relay-address': [
      'Relay of a distress that nobody acknowledged: expected {expected}. Relay to many only when the vessel in distress cannot alert herself and the master judges that more help is needed',
      'the address of one coast station',
    ],
    'station-relay-not-now': 'Relay: {why}',
    'station-channel-form': [
      'Channel: expected {expected}, got {received}',
      'a channel with digits of ITU-R M.1084',
    ],
    'station-channel-barred': 'Channel cannot be proposed: {bar}',
    'station-reason-missing': ['Refusal: expected {expected}, got {received}', 'one of the ten reasons'],
    'station-settings-form': 'Settings: {setting} is invalid. No setting was changed',
    'station-event-form': ['Event: expected {expected}', 'an object'],
    'station-event-kind': 'Event has an unknown kind: {received}',
    'station-event-part': 'Event "{kind}": "{part}" is missing or invalid',
    'station-event-unreadable': ['Event cannot be read', 'plain data'],
    'station-alert-in-hand': 'Distress alert is already in progress',
    'station-no-alert': 'No own distress alert is prepared or sent',
    'station-no-such-dialogue': 'Dialogue {dialogue} does not exist',
    'station-not-now': 'Dialogue {dialogue} does not allow this in its phase: {phase}',
    'station-not-on-air': 'Dialogue {dialogue} has nothing on the air',
    'station-acknowledgement-not-allowed': 'Acknowledgement: {why}',
    'station-fix-form': 'Position is not a place on Earth',
    'station-state-form': ['Stored state: expected {expected}', '{form:state-form}'],
    'station-state-newer': [
      'Stored state: expected {expected}, got {received}',
      'version {version} or older',
    ],
  },
  check: {
    'station-state-repaired': 'Stored state: {part} made no sense and was replaced or left out',
    'station-state-answer': 'Stored state: the answer in {part} did not match its call and was left out',
    'station-state-asks': 'Stored state: {part} would have transmitted, so a person is asked first',
    'station-state-set-aside': 'Stored state: {part} is impossible and was set aside',
  },
  caution: {
    'station-caution-distress':
      'Lives may depend on this. Follow the rules of your administration and the master’s orders. Keep watch on channel 16. Software can be wrong: it replaces neither training nor a trained operator',
    'station-caution-sending':
      'Distress, urgency and safety calls reach every ship in range. Send one only on the authority of the person responsible for the vessel, and as your licence and national rules allow',
  },
  said: {
    // A call in a few words: `individual call from 232999871 to 232999142, channel 72`.
    'station-brief':
      '{kind:call-kind}[ from {from}][ to {to}][ {many:brief-to}][ ({category:category})][, {reason:reason}][ for channel {channel}]',
    'station-brief-place':
      '{kind:call-kind}[ from {from}][ to {to}][ {many:brief-to}][, for {distressed}][, {nature:nature}][, {position}][, {lack:brief-lack}][, {time} UTC]',
    'station-brief-moored': 'possible automatic alarm of a moored vessel[ from {from}]',
    'station-unidentified-vessel': 'an unidentified vessel',
    'station-unknown-station': 'an unknown station',
    // Received and sent.
    'station-received': 'Received[ ({verdict:heard-verdict})]: {call}',
    'station-received-again': 'Received again: {call}',
    'station-received-times': 'Received {times} times: {call}',
    'station-received-in-full': 'Received in full: {call}',
    'station-received-damaged': 'Received with errors, nothing done: {call}',
    'station-answer-damaged': 'Answer received with errors, nothing done: {call}',
    'station-addressed-to-others': 'Addressed to others: {call}',
    'station-unexpected-answer': 'Answer to no call of this station: {call}',
    'station-answered': 'Answered: {call}',
    'station-refused': 'Refused: {call}',
    'station-sent': 'Sent: {call}',
    'station-sent-times': 'Sent {times} times in a row: {call}',
    'station-not-sent': 'Not sent: {call}',
    'station-answer-not-sent': 'Answer not sent: {call}',
    'station-channel-busy': 'Channel 70 was not free: the call was not sent',
    'station-too-late': 'Channel 70 was not free in time for an automatic answer',
    'station-held': 'Distress traffic goes first: the call waits',
    'station-no-answer': 'No answer after {attempts} of {allowed} calls: {call}',
    'station-calling-again': 'No answer to call {attempt} of {allowed}: it will be repeated',
    'station-missed': 'Not answered: {call}',
    'station-not-followed': 'Not followed: {call}',
    'station-closed': 'Closed: {call}',
    'station-closed-unanswered': 'Closed without an answer: {call}',
    'station-closed-for-room': 'Closed to make room: {call}',
    'station-still-in-hand': 'Still in progress: {call}',
    // Channels.
    'station-tune-16': 'Tune to channel 16 by hand',
    'station-watch-left':
      'Radio is on channel {channel}, not on channel {watched& or }. Keep the required watch there on another receiver, or tune back',
    'station-finished': 'Finished[ on channel {channel}]',
    'station-closed-idle':
      'Closed after a long time without action[. The radio is still on channel {channel}]',
    // Position.
    'station-position-old': 'Own position is old: enter it again or check the GNSS receiver',
    'station-position-erased': 'Own position is too old to send: enter it again or check the GNSS receiver',
    // Questions.
    'station-ask-send': 'Send the {call}?',
    'station-ask-answer': 'Answer the {call}?',
    'station-ask-tune': 'Tune[ to channel {channel}]?',
    'station-ask-cancel':
      'Was the alert false? If so, it is cancelled by DSC and then by voice on channel 16',
    'station-ask-repeat':
      'Your distress alert is no longer being repeated. Hold the key to send it again. Cancel it if it was false',
    'station-ask-acknowledge': 'Acknowledge the distress of {vessel} by DSC?',
    // Own distress.
    'station-alert-prepared':
      'Press and hold the key to send a distress alert. Send one only in grave and imminent danger, on the authority of the master',
    'station-alert-countdown': 'Keep the key pressed: {nature:nature}',
    'station-alert-waiting': 'Attempt {attempts} sent. Listen on channel 16',
    'station-alert-speak':
      'Send the distress call and message by voice on channel 16 now. Do not wait for an acknowledgement',
    'station-alert-failed':
      'Call by voice on channel 16. Use every other means as well. The radio could not send the alert',
    'station-alert-acknowledged': 'The alert is acknowledged[ by {by}]',
    'station-alert-acknowledged-damaged':
      'An acknowledgement was received with errors[: {call}]. The alert continues. Stop it?',
    'station-alert-relayed': 'The alert was relayed[: {call}]',
    'station-alert-stopped': 'Repeats stopped by hand. If the alert was false, it must still be cancelled',
    'station-alert-not-sent': 'Distress alert not sent',
    'station-alert-spoken': 'Distress call and message spoken on channel 16',
    'station-alert-closed': 'Own distress alert closed',
    'station-cancel-failed':
      'Cancel the false alert by voice on channel 16 at once. The radio did not send the cancellation',
    'station-cancelled': 'False alert cancelled by DSC and by voice on channel 16',
    'station-cancelled-by-voice':
      'False alert cancelled by voice on channel 16. The radio did not send the cancellation by DSC',
    'station-cancelled-by-dsc':
      'Speak the cancellation on channel 16. The false alert was cancelled by DSC only',
    'station-not-cancelled':
      'Speak the cancellation on channel 16 now. The false alert is NOT cancelled, by DSC or by voice',
    // Another vessel's distress.
    'station-distress-traffic': 'Distress traffic about {vessel} on channel 16',
    'station-distress-acknowledged': 'Distress of {vessel} acknowledged by {by}',
    'station-distress-cancelled': 'Distress alert cancelled by {vessel}',
    'station-distress-closed': 'Distress of {vessel} closed',
    'station-acknowledgement-not-sent': 'The acknowledgement was not sent',
    'station-acknowledged-by-voice': 'Acknowledged {vessel} by voice on channel 16',
    'station-assisting': 'Able to assist {vessel}: the master’s decision',
    'station-not-assisting': 'Not able to assist {vessel}: logged, radio reset',
    'station-nothing-more': 'Nothing more heard from {vessel}: logged, radio reset',
  },
  terms: /* @__PURE__ */ Object.assign({}, stationTerms, callTerms, categoryTerms) as typeof stationTerms &
    typeof callTerms &
    typeof categoryTerms,
} as const;

/** What to do about another vessel's distress: steps, questions, and why something is allowed or not. */
export const adviceTexts = {
  said: {
    // Steps of a ship.
    'station-log-all': 'Log everything received and done',
    'station-errors-received':
      'Keep watch on channel 16. A distress call was received with errors: nothing in it is certain',
    'station-listen': 'Keep watch on channel 16. Do not transmit. Inform the master',
    'station-leave-acknowledgement': 'Leave the DSC acknowledgement to the coastguard',
    'station-wait-acknowledgement': 'Wait up to five minutes for an acknowledgement',
    'station-listen-for-traffic':
      'Nobody acknowledged within five minutes. Listen for distress traffic on channel 16',
    'station-inform-if-silent':
      'If you hear none, inform a coast station or rescue co-ordination centre by any means: by voice, by telephone, or by a DSC relay to that station alone where your rules allow it. In United States waters do not relay by DSC',
    'station-inform-coast':
      'Inform a coast station or rescue co-ordination centre by any means: by voice, by telephone, or by a DSC relay to that station alone where your rules allow it. In United States waters do not relay by DSC',
    'station-inform-if-unacknowledged': 'If no coast station has acknowledged, inform one by any means',
    'station-master-decides': 'The master decides whether this vessel can assist',
    'station-acknowledge-by-voice':
      'Acknowledge by voice on channel 16 to the vessel in distress or to the rescue co-ordination centre',
    'station-answer-relay':
      'A coast station is relaying the distress. If you can assist, acknowledge the relay by voice on channel 16 to that station',
    'station-follow': 'Follow the instructions of the coast station or rescue co-ordination centre',
    'station-acknowledge-to-stop':
      'Acknowledge by DSC only to stop an alert that continues. Do so only in the vicinity of the vessel in distress. Consult a rescue co-ordination centre or coast station first',
    'station-wait-channel': 'Wait for channel 70 to be free',
    'station-alert-withdrawn':
      'The vessel cancelled her alert. Log it. Listen on channel 16 for the voice cancellation',
    'station-own-device':
      'Your own man-overboard device is calling this vessel. Look for the person. Turn back. Recover the person',
    'station-own-device-alert':
      'If the person is not recovered at once, send your own distress alert: man overboard',
    'station-who-acknowledges':
      'The coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC',
    // Steps of a coast station.
    'station-report':
      'Report the distress to the coastguard or rescue co-ordination centre at once. This station is not designated to acknowledge by DSC',
    'station-coast-acknowledges':
      'Acknowledge by DSC without delay. Answer on channel 16. In the United States leave the rescue co-ordination centre a short interval first',
    'station-coast-unanswered': 'Nobody has acknowledged the alert. Acknowledge by DSC. Answer on channel 16',
    'station-coast-informs': 'Inform the rescue co-ordination centre',
    'station-coast-leads':
      'Take charge of the distress traffic on channel 16, or hand it over to the rescue co-ordination centre',
    'station-stops-repeats': 'The acknowledgement stops the repeats of the alert',
    // Questions.
    'station-ask-by-dsc': 'Acknowledge by DSC?',
    'station-ask-by-dsc-or-other': 'Acknowledge by DSC, or is another station handling the distress?',
    'station-ask-traffic-over': 'Is the distress traffic over?',
    'station-ask-heard': 'Do you hear an acknowledgement by voice, or distress traffic?',
    'station-ask-traffic': 'Do you hear distress traffic on channel 16?',
    'station-ask-assist': 'Can this vessel assist?',
    'station-ask-safe': 'Is the person safe, or was it a false alarm?',
    // Acknowledging by voice.
    'station-voice-designated':
      'A designated coast station answers on channel 16 after its DSC acknowledgement',
    'station-voice-relayed':
      'A coast station is relaying the distress. Answer it by voice if you can assist. Follow its directions',
    'station-voice-acknowledged':
      'A coast station has acknowledged. Answer by voice if you can assist. Follow its directions',
    'station-voice-traffic':
      'Distress traffic is in progress. Speak only if you can assist. Follow the directions of the station that controls the traffic',
    'station-voice-wait':
      'Give coast stations time to acknowledge. In the vicinity the master may shorten the wait',
    'station-voice-near':
      'No coast station has acknowledged. If you are near, acknowledge by voice on channel 16. Inform a coast station',
    // Acknowledging by DSC.
    'station-dsc-no-identity': 'Own identity is not stored',
    'station-dsc-class': 'Equipment of this class does not acknowledge distress',
    'station-dsc-relay-unsigned': 'The relay does not say who sent it',
    'station-dsc-relay-addressed': 'The relay is addressed to this station',
    'station-dsc-relay-by-voice': 'Acknowledge a relay by voice on channel 16 to the station that sent it',
    'station-dsc-unidentified': 'The identity of the vessel in distress is not known',
    'station-dsc-not-designated':
      'Report the distress to the coastguard. Only the coastguard, a rescue co-ordination centre or a designated coast station acknowledges by DSC',
    'station-dsc-acknowledged': 'The alert has been acknowledged',
    'station-dsc-traffic': 'Distress traffic is in progress: there is no alert to stop',
    'station-dsc-wait': 'Keep watch on channel 16. Wait up to five minutes for the coastguard to acknowledge',
    'station-dsc-not-repeated': 'The alert was not repeated: there is nothing to stop',
    'station-dsc-to-stop':
      'The alert continues and nobody has acknowledged it. Acknowledge only in the vicinity of the vessel in distress. Consult a rescue co-ordination centre or coast station first',
    'station-dsc-designated': 'A designated coast station acknowledges, by hand',
    // Passing it on by DSC.
    'station-relay-withdrawn': 'The vessel cancelled her alert',
    'station-relay-in-hand':
      'A coast station or another station is handling the distress. Follow its instructions',
    'station-relay-errors': 'Keep watch on channel 16. The call was received with errors',
    'station-relay-wait':
      'Keep watch on channel 16. If nobody has acknowledged after five minutes, pass the distress on to one coast station',
    'station-relay-ashore':
      'Nobody acknowledged within five minutes. Inform the coastguard or rescue co-ordination centre by any means',
    'station-relay-to-coast':
      'Nobody acknowledged within five minutes. Inform one coast station: by a DSC relay to that station alone where your rules allow it, by voice, or by any other means. In United States waters do not relay by DSC',
    'station-relay-to-many-coast': 'A coast station relays to the ships it needs to reach',
    'station-relay-to-many-ship':
      'On VHF do not relay by DSC to all ships or an area an alert that you received by DSC. A ship may do so only when the vessel in distress cannot alert herself and the master judges that more help is needed',
  },
} as const;

const phaseTerms = {
  'phase.outgoing.confirming': 'the person is asked whether the call is really to be sent',
  'phase.outgoing.waiting-channel': 'waiting for channel 70 to be free',
  'phase.outgoing.sending': 'the call is on the air',
  'phase.outgoing.waiting-answer': 'waiting for the answer',
  'phase.outgoing.retry-wait': 'no answer yet; the call will be repeated',
  'phase.outgoing.unanswered': 'given up; the person may try again',
  'phase.outgoing.refused': 'the other station cannot comply',
  'phase.outgoing.agreed': 'a channel is agreed; the person is asked whether to tune',
  'phase.outgoing.on-channel': 'talking on the working channel',
  'phase.incoming.deciding': 'the person is asked how to answer',
  'phase.incoming.waiting-channel': 'the answer waits for channel 70 to be free',
  'phase.incoming.sending': 'the answer is on the air',
  'phase.incoming.agreed': 'the call leads to a channel; the person is asked whether to tune',
  'phase.incoming.on-channel': 'talking on the working channel',
  'phase.incoming.shown': 'for the person to read',
  'phase.own-distress.prepared': 'first act done: the cover is open, nothing is sent yet',
  'phase.own-distress.countdown': 'second act: the key is being held',
  'phase.own-distress.waiting-channel': 'waiting for channel 70, not for long',
  'phase.own-distress.sending': 'the distress attempt is on the air',
  'phase.own-distress.waiting-acknowledgement':
    'waiting for an acknowledgement; the attempt will be repeated',
  'phase.own-distress.acknowledged': 'acknowledged by DSC: no more repeats',
  'phase.own-distress.stopped': 'repeats were stopped by hand',
  'phase.own-distress.interrupted':
    'the repeats were interrupted: nothing is sent until a person holds the key again',
  'phase.own-distress.cancel-asked': 'the person is asked whether the alert was false',
  'phase.own-distress.cancel-waiting': 'the cancellation waits for channel 70, not for long',
  'phase.own-distress.cancel-sending': 'the cancellation is on the air',
  'phase.own-distress.cancel-voice': 'the cancellation must now be spoken on channel 16',
  'phase.own-distress.cancel-voice-only':
    'the radio could not send the cancellation: it must now be spoken on channel 16',
  'phase.heard-distress.shown': 'received with errors: for the person to read',
  'phase.heard-distress.listening': 'listening on channel 16; the acknowledgement is left to coast stations',
  'phase.heard-distress.undecided': 'nobody acknowledged within five minutes: can distress traffic be heard?',
  'phase.heard-distress.coast-answered':
    'acknowledged, or distress traffic is in progress: can this vessel assist?',
  'phase.heard-distress.inform-coast': 'no traffic, and the alert continues: inform a coast station',
  'phase.heard-distress.assisting': 'assisting, as the coast station or the vessel in distress directs',
  'phase.heard-distress.acknowledge-asked': 'the person is asked whether to acknowledge by DSC',
  'phase.heard-distress.acknowledge-waiting': 'the acknowledgement waits for channel 70',
  'phase.heard-distress.acknowledge-sending': 'the acknowledgement is on the air',
  'phase.heard-distress.cancelled': 'the vessel cancelled her alert',
};

/** What each phase means. A table of its own: only {@link phaseTable} needs it. */
export const phaseTexts = {
  said: { 'station-phase': '{phase:phase}' },
  terms: phaseTerms as typeof phaseTerms,
} as const;

const timerTerms = {
  'timer.alert-hold': 'how long the distress key is held before an alert goes out',
  'timer.alert-busy-limit': 'longest wait of a distress alert for channel 70 to be free',
  'timer.voice-after-alert':
    'latest moment for the distress call and message by voice, which are asked for as soon as the alert is out',
  'timer.alert-repeat': 'from the start of one distress attempt to the start of the next, at random',
  'timer.attempt-length':
    'alerts received within this time belong to one attempt of five: 2.25 s, and some allowance',
  'timer.listen-after-alert':
    'listening on channel 16 after an alert was received, before anything else is decided',
  'timer.answer-from-ship': 'time for a person aboard to answer',
  'timer.answer-from-coast': 'time for an operator ashore to answer',
  'timer.answer-from-set':
    'time for a radio to answer a test call or polling automatically: three seconds, a busy channel and the burst',
  'timer.automatic-answer': 'an automatic answer starts within this time, or it is left to the person',
  'timer.second-attempt': 'from the first call to the second when nobody answered',
  'timer.third-attempt': 'from the second call to the third, and between later calls',
  'timer.channel-wait': 'longest wait of a call other than distress for channel 70 to be free',
  'timer.transmission-limit': 'a transmission not reported as finished within this time counts as failed',
  'timer.inactivity': 'a call is closed when the person has not acted for this long',
  'timer.cancel-question':
    'after this, no answer to the question whether the own alert was false counts as no',
  'timer.alert-memory':
    'an alert from the same vessel with the same nature, received again within this time, is a repeat and sounds no alarm',
  'timer.distress-memory': 'how long distress traffic stays on display unless the person closes it',
  'timer.position-warning': 'age of the own position at which the person is warned',
  'timer.position-erase': 'age of the own position at which it is no longer sent',
};

/** What each timer is for. A table of its own: only `timers` needs it. */
export const timerTexts = {
  said: { 'station-timer': '{timer:timer}' },
  terms: timerTerms as typeof timerTerms,
} as const;

const setupTerms = {
  'fix-source.person': 'entered by hand',
  'fix-source.instrument': 'from the GNSS receiver',
  'age-minutes.1': 'minute',
  'age-minutes.*': 'minutes',
  'off-seconds.1': 'second',
  'off-seconds.*': 'seconds',
  'ago-days.1': 'day',
  'ago-days.*': 'days',
};

/** What the check of the set-up finds, and what to do. A table of its own: the station itself needs none of it. */
export const setupTexts = {
  error: {
    'station-setup-identity-missing': 'Own identity is not stored: the radio cannot transmit DSC calls',
    'station-setup-identity-form': 'Own identity {mmsi} does not have the form for this kind of radio',
  },
  check: {
    'station-setup-position-missing': 'No own position: a distress alert would go out without one',
    'station-setup-position-future': 'The position fix is dated in the future',
    'station-setup-position-old': 'Position is {minutes} {minutes:age-minutes} old, {source:fix-source}',
    'station-setup-time-missing': 'The radio shows no time',
    'station-setup-time-wrong': 'Time is {seconds} {seconds:off-seconds} wrong',
    'station-setup-channels-missing': 'No working channels',
    'station-setup-channel-change': 'A DSC call can change the channel automatically',
    'station-setup-watch-at-risk':
      'A DSC call can take the radio off watched channel {watched& or } unnoticed',
    'station-setup-test-missing': 'No test call has been answered yet',
    'station-setup-test-future': 'The last test-call reply is dated in the future',
    'station-setup-plotter-failed': 'A position reply did not reach the plotter',
    'station-setup-plotter-untested': 'Position reply to the plotter not tested',
  },
  note: {
    'station-setup-identity': 'Own identity {mmsi}',
    'station-setup-position': 'Position comes from the GNSS receiver',
    'station-setup-position-by-hand': 'Position is {minutes} {minutes:age-minutes} old, entered by hand',
    'station-setup-time': 'Time is correct to the minute',
    'station-setup-groups': 'Groups: {groups&}',
    'station-setup-no-groups': 'No group identity',
    'station-setup-channels': 'Working channels: {channels&}',
    'station-setup-by-hand': 'Channel is changed by hand[, watch on {watched&}]',
    'station-setup-tested': 'The last test call was answered {days} {days:ago-days} ago',
    'station-setup-plotter': 'A position reply reached the plotter',
  },
  said: {
    'station-do-enter-identity':
      'Enter the MMSI of the ship station licence. Most radios accept it only once',
    'station-do-compare-identity': 'Compare the identity with the licence. A dealer can change a wrong one',
    'station-do-give-position': 'Connect a GNSS receiver, or enter the position by hand',
    'station-do-set-clock-or-position': 'Set the clock to UTC, or enter the position again',
    'station-do-renew-position': 'Check the GNSS receiver, or enter the position again',
    'station-do-enter-position-again': 'Enter the position again at least every 4 hours',
    'station-do-give-time': 'Connect a GNSS receiver, or enter UTC',
    'station-do-set-clock': 'Set the clock to UTC, not to local time',
    'station-do-correct-group': 'Correct or remove the group {group}',
    'station-do-enter-channels': 'Enter the working channels allowed in these waters',
    'station-do-list-watch':
      'If a watch on another channel is required (bridge-to-bridge, vessel traffic), list it as watched and change channel by hand',
    'station-do-change-by-hand': 'Change channel by hand, or keep the watch on a second receiver',
    'station-do-test':
      'Send a test call to a coast station that answers them, or to a friend. Never test with a distress alert',
    'station-do-test-again': 'Set the clock to UTC and test again',
    'station-do-check-plotter': 'Check the wiring, the baud rate and the sentences that the plotter accepts',
    'station-do-try-plotter': 'Request the position of a friend and check that it appears on the plotter',
  },
  terms: setupTerms as typeof setupTerms,
} as const;

/** A text for people, for `translate` of `seahail/locale` as it is. */
export interface StationText extends Pick<CodedText, 'code' | 'params'> {
  /** English, without a final full stop. */
  readonly text: string;
}

/** All texts of this module. */
export type StationTexts = typeof stationTexts &
  typeof adviceTexts &
  typeof phaseTexts &
  typeof timerTexts &
  typeof setupTexts;

/** Phase of a dialogue after the name of its procedure. */
export type Phase = TermOf<typeof phaseTexts, 'phase'>;

/** Any text of the advice. None has params. */
export type AdviceCode = CodeOf<typeof adviceTexts>;

/** Makes an issue of an event or of a stored state. */
export const issue: IssueMaker<typeof stationTexts> = /* @__PURE__ */ issueMaker(stationTexts);

/** Makes the part of another text. */
export const coded: TextMaker<typeof stationTexts> = /* @__PURE__ */ textMaker(stationTexts);

/** Makes what a phase means. */
export const phaseMeaning: TextMaker<typeof phaseTexts> = /* @__PURE__ */ textMaker(phaseTexts);

/** Makes what a timer is for. */
export const timerMeaning: TextMaker<typeof timerTexts> = /* @__PURE__ */ textMaker(timerTexts);

/** Makes an issue of the check of the set-up. */
export const setupIssue: IssueMaker<typeof setupTexts> = /* @__PURE__ */ issueMaker(setupTexts);

const codedAdvice: TextMaker<typeof adviceTexts> = /* @__PURE__ */ textMaker(adviceTexts);

const codedSetup: TextMaker<typeof setupTexts> = /* @__PURE__ */ textMaker(setupTexts);

/** Makes what the station shows, asks, logs or warns of. */
export function say<C extends CodeOf<typeof stationTexts>>(
  code: C,
  params: ParamsOf<typeof stationTexts, C>,
): StationText {
  return asText(coded(code, params));
}

/** Makes a text of the advice. */
export function advise(code: AdviceCode): StationText {
  return asText(codedAdvice(code, {}));
}

/** Makes what there is to do about the set-up. */
export function toDo<C extends CodeOf<typeof setupTexts>>(
  code: C,
  params: ParamsOf<typeof setupTexts, C>,
): StationText {
  return asText(codedSetup(code, params));
}

function asText({ message: text, ...coded }: CodedText): StationText {
  return { ...coded, text };
}
