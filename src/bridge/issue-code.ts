/**
 * Every code that a notice of this room can carry, with what it means.
 * A test fails when this list and the code differ.
 */
export const BRIDGE_ISSUE_CODES = [
  {
    code: 'bridge-not-carried',
    meaning: 'the other cable has nothing that says this, or the bridge does not write it',
  },
  { code: 'bridge-partly-carried', meaning: 'the other cable carries this without some of its fields' },
  { code: 'bridge-refused', meaning: 'a value of the reading cannot be written on the other cable' },
] as const;
