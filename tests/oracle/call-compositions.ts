/**
 * The compositions of calls as a literal list, one line a table row, in the order of transmission, written down
 * apart from `src/call/kinds.ts` and compared with it.
 *
 * Source: ITU-R M.493-16 Annex 1 tables A1-4.1 to A1-4.9, from memory. Order of the fields of alert, relay and
 * acknowledgement: Japan, Radio Station Operation Regulations Art. 36-2; of the test call: Japan, MPT
 * Notification 567 of 1990 figure 5; the alert's end 127: Nippon Foundation GMDSS training text of 2005.
 *
 * A number is that symbol; A address, S self-identification, D ship in distress, P position (five symbols each);
 * T time (two); n nature, c category, t1 and t2 telecommands, s subsequent communication (one); F frequency or
 * channel element (three). The format specifier is sent twice.
 */
export const literalCompositions: Readonly<Record<string, string>> = {
  'distress-alert to all-stations': '112 112 S n P T s 127',
  'distress-acknowledgement to all-ships': '116 116 112 S 110 D n P T s 127',
  'distress-self-cancel to all-ships': '116 116 112 S 110 D n P T s 127',
  'distress-relay to station': '120 120 A 112 S 112 D n P T s 117',
  'distress-relay to all-ships': '116 116 112 S 112 D n P T s 127',
  'distress-relay to area': '102 102 A 112 S 112 D n P T s 127',
  'distress-relay-acknowledgement to station': '120 120 A 112 S 112 D n P T s 122',
  'distress-relay-acknowledgement to all-ships': '116 116 112 S 112 D n P T s 122',
  'all-ships-call to all-ships': '116 116 c S t1 t2 F F 127',
  'area-call to area': '102 102 A c S t1 t2 F F 127',
  'group-call to group': '114 114 A c S t1 t2 F F 127',
  'individual-call to station': '120 120 A c S t1 t2 F F 117',
  'individual-acknowledgement to station': '120 120 A c S t1 t2 F F 122',
  'unable-to-comply to station': '120 120 A c S 104 t2 126 126 126 126 126 126 122',
  'position-request to station': '120 120 A c S 121 126 126 126 126 126 126 126 117',
  'position-reply to station': '120 120 A c S 121 126 55 P T 122',
  'test-call to station': '120 120 A c S 118 126 126 126 126 126 126 126 117',
  'test-acknowledgement to station': '120 120 A c S 118 126 126 126 126 126 126 126 122',
  'polling-call to station': '120 120 A c S 103 126 126 126 126 126 126 126 117',
  'polling-acknowledgement to station': '120 120 A c S 103 126 126 126 126 126 126 126 122',
};

/** Symbols a letter stands for. */
export const literalLengths: Readonly<Record<string, number>> = {
  A: 5,
  S: 5,
  D: 5,
  P: 5,
  T: 2,
  F: 3,
  n: 1,
  c: 1,
  t1: 1,
  t2: 1,
  s: 1,
};
