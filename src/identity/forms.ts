import type { IdentityKind } from './identity.ts';

/** One row of the table of forms. */
export interface IdentityForm {
  readonly kind: IdentityKind;
  /** Its usual name. */
  readonly name: string;
  /** Nine characters: digits stand for themselves, `MID` for three digits beginning with 2 to 7, `x` and `y` for any digit. */
  readonly pattern: string;
  /** The stations that use such an identity. */
  readonly holder: string;
  /** Clause of the current edition. */
  readonly clause: string;
  /** The earliest edition known to hold the form. */
  readonly since: string;
  /** `'seen'`: form confirmed in a published text; `'memory'`: remembered from the standard. */
  readonly source: 'seen' | 'memory';
  /** False where two devices may have the same identity, because no administration assigns it. */
  readonly unique: boolean;
}

/**
 * Every assigned form of a nine-digit identity, with its clause and the edition it appeared in.
 *
 * ITU-R M.585-10 (04/2026) Annexes 1 and 2, as publicly restated; the scopes and summaries of change of editions 3
 * to 8, the former Radio Regulations Appendix 43 and national guidance. Clause numbers of Annex 1 are from memory.
 * deviation: D-identity-8
 *
 * @see {@link parseIdentity}
 * @see {@link usesOf}
 *
 * @example
 * ```ts
 * import { identityForms } from 'seahail/identity';
 *
 * console.log(identityForms.find((form) => form.kind === 'handheld')?.pattern); // 8MIDxxxxx
 * ```
 */
export const identityForms: readonly IdentityForm[] = [
  {
    kind: 'ship',
    name: 'ship station',
    pattern: 'MIDxxxxxx',
    holder: 'Ships: every fixed radio aboard uses the same identity, satellite terminals included',
    clause: 'ITU-R M.585-10 Annex 1 §1',
    since: 'before 2007, from Radio Regulations Appendix 43',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'ship-group',
    name: 'group of ship stations',
    pattern: '0MIDxxxxx',
    holder: 'A fleet, a club, a race: several ships called at once; members may be of any flag',
    clause: 'ITU-R M.585-10 Annex 1 §1',
    since: 'before 2007, from Radio Regulations Appendix 43',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'coast',
    name: 'coast station',
    pattern: '00MIDxxxx',
    holder: 'Coast, port and pilot stations, AIS base stations, and groups of coast stations',
    clause: 'ITU-R M.585-10 Annex 1 §2',
    since: 'before 2007, from Radio Regulations Appendix 43',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'coast-all-national',
    name: 'all coast stations of one administration',
    pattern: '00MID0000',
    holder: 'Address of every coast station of the administration; not used in every country',
    clause: 'ITU-R M.585-10 Annex 1 §2',
    since: 'M.585-4 (2007) or earlier, not confirmed',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'coast-all',
    name: 'all VHF coast stations',
    pattern: '009990000',
    holder: 'Address of every VHF coast station world-wide; not used in every country',
    clause: 'ITU-R M.585-10 Annex 1 §2',
    since: 'M.585-4 (2007) or earlier, not confirmed',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'sar-aircraft',
    name: 'search and rescue aircraft',
    pattern: '111MIDxxx',
    holder: 'Aircraft in search and rescue and other safety-related communication',
    clause: 'ITU-R M.585-10 Annex 1 §3',
    since: 'M.585-4 (2007)',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'sar-aircraft-all-national',
    name: 'all search and rescue aircraft of one administration',
    pattern: '111MID000',
    holder: 'Group of every such aircraft of the administration',
    clause: 'ITU-R M.585-10 Annex 1 §3',
    since: 'M.585-4 (2007), not confirmed',
    source: 'memory',
    unique: true,
  },
  {
    kind: 'craft',
    name: 'craft associated with a parent ship',
    pattern: '98MIDxxxx',
    holder:
      'Tenders, lifeboats, liferafts, rescue boats, towed craft, and the EPIRBs of earlier generations on such craft; not issued in every country',
    clause: 'ITU-R M.585-10 Annex 1 §5',
    since: 'M.585-4 (2007)',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'aton',
    name: 'AIS aid to navigation',
    pattern: '99MIDxxxx',
    holder: 'Buoys, lights and marks, real or virtual, reported by AIS',
    clause: 'ITU-R M.585-10 Annex 1 §4',
    since: 'M.585-4 (2007)',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'handheld',
    name: 'hand-held VHF with DSC and positioning',
    pattern: '8MIDxxxxx',
    holder: 'A portable radio; the format warns of limited battery and range',
    clause: 'ITU-R M.585-10 Annex 2 §1',
    since: 'M.585-5 (2009)',
    source: 'seen',
    unique: true,
  },
  {
    kind: 'ais-sart',
    name: 'AIS search and rescue transmitter',
    pattern: '970xxyyyy',
    holder: 'The device, by manufacturer (00 for tests) and serial number',
    clause: 'ITU-R M.585-10 Annex 2 §2',
    since: 'M.585-5 (2009) or M.585-6 (2012), not confirmed',
    source: 'seen',
    unique: false,
  },
  {
    kind: 'mob',
    name: 'man-overboard device',
    pattern: '972xxyyyy',
    holder: 'The device, by manufacturer (00 for tests) and serial number; AIS, DSC or both',
    clause: 'ITU-R M.585-10 Annex 2 §2',
    since: 'M.585-6 (2012) or earlier',
    source: 'seen',
    unique: false,
  },
  {
    kind: 'epirb-ais',
    name: 'AIS transmitter of an EPIRB',
    pattern: '974xxyyyy',
    holder: 'The device, by manufacturer (00 for tests) and serial number; not its 406 MHz transmitter',
    clause: 'ITU-R M.585-10 Annex 2 §2',
    since: 'M.585-6 (2012) or earlier',
    source: 'seen',
    unique: false,
  },
  {
    kind: 'amrd-b',
    name: 'autonomous maritime radio device, group B',
    pattern: '979xxxxxx',
    holder:
      'Devices that do not enhance the safety of navigation, such as net markers; six pseudo-random digits',
    clause: 'ITU-R M.585-10 Annex 2 §2',
    since: 'M.585-8 (2019) or M.585-9 (2022), not confirmed',
    source: 'seen',
    unique: false,
  },
];
