import type { Param } from '../../result/index.ts';
import { type CodeOf, textMaker } from '../../result/internal.ts';
import type { Call } from '../call.ts';
import { isMooredVesselAlarm } from '../element/announcement.ts';
import { isAshore } from '../element/identity-symbols.ts';
import { placeLack } from '../element/place-symbols.ts';
import type { CallFields } from '../fields.ts';
import { isDistressCall } from '../kinds.ts';
import { cautionTexts } from '../texts.ts';

const caution = /* @__PURE__ */ textMaker(cautionTexts);

/** What to observe about a call; `translate` of `seahail/locale` says it in another language. */
export interface Caution {
  /** Stable kebab-case name of the caution. */
  readonly code: string;
  /** `where`: `'vhf'` or `'mf-hf'`, in the cautions that say where to speak. */
  readonly params: Readonly<Record<string, Param>>;
  /** Sentences in English, the last without a full stop. */
  readonly text: string;
  readonly clause: string;
}

/** The cautions that belong to a kind of call. Rules differ by country; trained operators and the licence decide. */
export function cautionsOf(
  call: Call,
  options: { readonly own?: string | undefined; readonly designated?: boolean | undefined } = {},
): Caution[] {
  const { own, designated = false } = options;
  const where = isMfHf(call) ? 'mf-hf' : 'vhf';
  return codesFor(call, own, designated).map((each) => {
    const said = each === 'call-pass-on' && where === 'mf-hf' ? 'call-pass-on-mf-hf' : each;
    const params = cautionTexts.caution[said].includes('{where:') ? { where } : {};
    return { code: said, params, text: caution(said, { where }).message, clause: CLAUSES[said] };
  });
}

function codesFor(call: Call, own: string | undefined, designated: boolean): Code[] {
  const mine = call.from === own;
  const ashore = isAshore(own ?? null);
  const place: Code[] = 'position' in call ? [placeCaution(call)] : [];
  const forShore: Code[] = designated
    ? ['call-acknowledge-without-delay', ...place]
    : ['call-keep-watch', 'call-report-ashore', ...place];
  switch (call.kind) {
    case 'distress-alert':
      if (mine) return ['call-alert-in-danger-only', 'call-voice-follows'];
      return ashore ? forShore : ['call-keep-watch', 'call-coast-answers', 'call-pass-on', ...place];
    case 'distress-acknowledgement':
      return mine && !designated
        ? ['call-who-acknowledges', 'call-keep-watch', ...place]
        : ['call-keep-watch', ...place];
    case 'distress-relay-acknowledgement':
      return ['call-keep-watch', ...place];
    case 'distress-self-cancel':
      return ['call-cancel-by-voice', ...place];
    case 'distress-relay':
      if (mine && ashore) return ['call-relay-by-voice', ...place];
      if (mine) return ['call-when-to-relay', 'call-relay-by-voice', ...place];
      return ashore ? forShore : ['call-keep-watch', 'call-acknowledge-relay-by-voice', ...place];
    case 'position-reply':
      return place;
    case 'unrecognised-call':
      return isDistress(call.asReceived) ? ['call-perhaps-distress'] : [];
    default:
      if (isMooredVesselAlarm(call)) return ['call-check-moored-vessel'];
      return 'category' in call && call.category === 'distress' ? ['call-keep-watch'] : [];
  }
}

type Code = CodeOf<typeof cautionTexts>;

// Radio Regulations 2024, ITU-R M.541-11 and MSC.1/Circ.1657 were read in restatements; 47 CFR part 80 itself.
const CLAUSES: Readonly<Record<Code, string>> = {
  'call-alert-in-danger-only': 'RR 2024 Art. 32 and No. 32.53E; 47 CFR 80.335(a)',
  'call-voice-follows': 'RR 2024 No. 32.13; ITU-R M.541-11 Annex 3 §1.4.1',
  'call-keep-watch': 'ITU-R M.541-11 Annex 3; 47 CFR 80.1121(a)',
  'call-coast-answers': '47 CFR 80.1117(a), 80.1121(b)',
  'call-acknowledge-without-delay': 'RR 2024 No. 32.27; 47 CFR 80.1119(a)',
  'call-report-ashore': '47 CFR 80.103(c), 80.1119(a)',
  'call-who-acknowledges': 'MSC.1/Circ.1657; 47 CFR 80.103(c), 80.1121(d)',
  'call-pass-on':
    'RR 2024 Nos. 32.16, 32.17, 32.19B and 32.19G; MSC.1/Circ.1657; 47 CFR 80.1117(a), 80.1121(b)',
  'call-pass-on-mf-hf':
    'RR 2024 Nos. 32.16, 32.17, 32.19B and 32.19G; MSC.1/Circ.1657; 47 CFR 80.1121(b), (c)',
  'call-when-to-relay': 'RR 2024 Nos. 32.16 to 32.19H; MSC.1/Circ.1657; 47 CFR 80.1115(a), 80.1121(b)',
  'call-relay-by-voice': 'RR 2024 Nos. 32.19E and 32.19F',
  'call-cancel-by-voice': 'RR 2024 Nos. 32.53B to 32.53E; 47 CFR 80.335(a)',
  'call-acknowledge-relay-by-voice': 'ITU-R M.541-11 Annex 3 §1.5 and §1.6',
  'call-perhaps-distress': 'common practice, no source',
  'call-check-moored-vessel': '47 CFR 80.179(e)',
  'call-position-coarse': 'ITU-R M.493-16 §8.1; 47 CFR 80.1073(b)(6) and 80.1085(c) (at least every 4 hours)',
  'call-place-not-given': 'ITU-R M.541-11 Annex 1',
  'call-place-not-read': 'common practice, no source',
  'call-place-impossible': 'ITU-R M.493-16 Annex 1, position coordinates',
};

function placeCaution(call: Extract<Call, { readonly position: unknown }>): Code {
  return call.position === null ? `call-place-${placeLack(call)}` : 'call-position-coarse';
}

function isDistress({ category, telecommand1, distressed, nature }: CallFields): boolean {
  const says = category === 112 || telecommand1 === 110 || telecommand1 === 112;
  return says || distressed !== null || nature !== null;
}

/** Types of subsequent communication that VHF does not have: ITU-R M.493-16, from memory. */
const MF_HF: readonly string[] = [
  'telephony-j3e',
  'telephony-h3e',
  'teleprinter-fec',
  'teleprinter-arq',
  'teleprinter-receive',
  'morse',
];

/** Whether a distress call is of MF or HF, by the communication that it says will follow; 47 CFR 80.1123(d), Japan, Operation Regulations
 * Art. 81-5(7). The band is not in the call. */
export function isMfHf(call: Call): boolean {
  return isDistressCall(call) && MF_HF.includes(String(call.subsequent));
}
