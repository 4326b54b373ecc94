import type { CodedText } from '../../result/index.ts';
import { said } from './texts.ts';

/** The step of the diagnosis at which each fault shows. */
const STEPS: Readonly<Record<FaultId, (typeof FAULTS)[number]['step']>> = {
  'no-data': 'bytes',
  'wrong-speed': 'bytes',
  'no-sentence': 'lines',
  'too-long': 'lines',
  'tag-block': 'lines',
  'blank-damage': 'checksums',
  'blank-sent': 'checksums',
  'checksum-wrong': 'checksums',
  'rewritten-between': 'checksums',
  'checksum-missing': 'checksums',
  'checksum-lower-case': 'checksums',
  'calls-filtered': 'calls',
  'reply-missing': 'calls',
  'legacy-layout': 'calls',
  'fields-missing': 'calls',
  talker: 'calls',
  'leading-zero-lost': 'position',
  'bad-position': 'position',
  'no-fix': 'position',
  'no-time': 'position',
  'expansion-missing': 'expansion',
  'expansion-late': 'expansion',
  'expansion-unannounced': 'expansion',
  'expansion-mismatch': 'expansion',
  'no-expansion': 'expansion',
  'identity-nine-digits': 'identity',
  'identity-last-digit': 'identity',
  'own-call': 'identity',
  refused: 'call-type',
  polled: 'call-type',
  category: 'call-type',
  acknowledgement: 'call-type',
  duplicates: 'call-type',
  'wrong-quadrant': 'plausibility',
  'minutes-rounded': 'plausibility',
  'wrong-time': 'plausibility',
};

/** Name of a fault, one of {@link FAULTS}. */
export type FaultId =
  | 'no-data'
  | 'wrong-speed'
  | 'no-sentence'
  | 'too-long'
  | 'tag-block'
  | 'blank-damage'
  | 'blank-sent'
  | 'checksum-wrong'
  | 'rewritten-between'
  | 'checksum-missing'
  | 'checksum-lower-case'
  | 'calls-filtered'
  | 'reply-missing'
  | 'legacy-layout'
  | 'fields-missing'
  | 'talker'
  | 'leading-zero-lost'
  | 'bad-position'
  | 'no-fix'
  | 'no-time'
  | 'expansion-missing'
  | 'expansion-late'
  | 'expansion-unannounced'
  | 'expansion-mismatch'
  | 'no-expansion'
  | 'identity-nine-digits'
  | 'identity-last-digit'
  | 'own-call'
  | 'refused'
  | 'polled'
  | 'category'
  | 'acknowledgement'
  | 'duplicates'
  | 'wrong-quadrant'
  | 'minutes-rounded'
  | 'wrong-time';

/**
 * Every fault that can be found in what a radio sends to a display, in the order in which to look: its step of
 * the diagnosis, why the display may show nothing or the wrong thing, and what to do about it.
 *
 * Source: common practice, no source, where nothing else is said; the rules of the sentences are those of
 * IEC 61162-1 as publicly restated. deviation: D-sentence-11
 */
export const FAULTS: readonly {
  readonly id: FaultId;
  readonly step:
    | 'bytes'
    | 'lines'
    | 'checksums'
    | 'calls'
    | 'position'
    | 'call-type'
    | 'expansion'
    | 'identity'
    | 'plausibility';
  readonly why: CodedText;
  readonly remedy: CodedText;
}[] = /* @__PURE__ */ (Object.keys(STEPS) as FaultId[]).map((id) => ({
  id,
  step: STEPS[id],
  why: said('sentence-why', { fault: id }),
  remedy: said('sentence-remedy', { fault: id }),
}));
