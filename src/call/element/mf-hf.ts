import type { Call } from '../call.ts';
import { isDistressCall } from '../kinds.ts';

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
