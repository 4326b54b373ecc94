/**
 * Every code that an issue or notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const CHANNEL_ISSUE_CODES = [
  { code: 'channel-not-text', meaning: 'a channel was given as something other than text' },
  { code: 'channel-malformed', meaning: 'the text is not a channel designator' },
  { code: 'channel-number-range', meaning: 'the number is not a marine VHF channel number' },
  { code: 'channel-private-number', meaning: 'numbers 29 to 59 are private channels of single countries' },
  { code: 'channel-four-digit', meaning: 'a four-digit number does not begin with 00, 10 or 20' },
  {
    code: 'channel-no-legs',
    meaning: 'a suffix or prefix asks for one leg of a channel that has one frequency only',
  },
  { code: 'channel-interleaved', meaning: 'the number belongs to the 12.5 kHz interleaved channels' },
  { code: 'channel-not-in-plan', meaning: 'the plan does not have the channel' },
  { code: 'channel-no-plan', meaning: 'the value given as a plan is not one' },
  { code: 'channel-plan-malformed', meaning: 'a field of your own plan is not valid' },
  { code: 'channel-elsewhere', meaning: 'another plan has the channel that this plan lacks' },
  { code: 'channel-frequency-malformed', meaning: 'the input is not a frequency in megahertz or kilohertz' },
  { code: 'channel-frequency-number', meaning: 'a frequency given as a number is not whole kilohertz' },
  {
    code: 'channel-digits-malformed',
    meaning: 'the frequency or channel digits of a call are not six or eight digits',
  },
  {
    code: 'channel-digits-unknown',
    meaning: 'the first digit of a frequency or channel element has no known meaning',
  },
  {
    code: 'channel-digits-old-form',
    meaning: 'the leg of a channel is in the second digit, as older sets are said to send it',
  },
  {
    code: 'channel-digits-single-leg-only',
    meaning: 'a call names a two-frequency channel, but the plan has only one leg of that number',
  },
  { code: 'channel-calls-only', meaning: 'the channel carries digital selective calls only' },
  { code: 'channel-data-only', meaning: 'the channel carries data, not speech' },
  { code: 'channel-receive-only', meaning: 'ships must not transmit on the channel' },
  { code: 'channel-reserved', meaning: 'the channel is reserved to an authority' },
  { code: 'channel-not-to-be-named', meaning: 'the channel must not be proposed for speech in a call' },
  { code: 'channel-two-frequency', meaning: 'two ships cannot hear each other on a two-frequency channel' },
  {
    code: 'channel-distress-and-calling',
    meaning: 'the channel is for distress, safety and calling, not for working',
  },
  {
    code: 'channel-not-intership',
    meaning: 'the plan does not have the channel for this kind of talk between ships',
  },
  { code: 'channel-ships-only', meaning: 'no coast station works on the channel' },
  { code: 'channel-other-use', meaning: 'the plan has the channel for another use than the one asked about' },
  {
    code: 'channel-meaning-differs',
    meaning: 'the same number means something else in another of the plans',
  },
  {
    code: 'channel-selective-calls-restricted',
    meaning: 'the rules of the waters restrict selective calls of every kind',
  },
  { code: 'channel-not-on-set', meaning: 'a set with the channels of that plan cannot tune the channel' },
  { code: 'channel-restricted', meaning: 'the channel is for particular reasons only' },
  { code: 'channel-caution', meaning: 'a caution before the channel is used' },
  { code: 'channel-low-power', meaning: 'the channel has a power limit below that of an ordinary set' },
  { code: 'channel-regional', meaning: 'the channel has this use in part of the waters only' },
  { code: 'channel-coast-names-it', meaning: 'a coast station normally chooses the working channel' },
] as const;
