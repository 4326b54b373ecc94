import type { CodedText } from '../../result/index.ts';
import { said } from './texts.ts';

export type Sighting = Finding['sightings'][number];

export type Finding = FaultReport['findings'][number];

/**
 * Findings about a stream, and how much of it was examined. Texts are in English, with code and params for `translate`
 * of `seahail/locale`.
 */
export interface FaultReport {
  readonly kind: 'fault-report';
  /** In the order in which a technician would look. */
  readonly findings: readonly {
    readonly id: (typeof FAULTS)[number]['id'];
    readonly step: (typeof FAULTS)[number]['step'];
    /** `'certain'`: it is so. `'likely'`: nothing else is. `'possible'`: it may be sound all the same. */
    readonly certainty: 'certain' | 'likely' | 'possible';
    readonly why: CodedText;
    readonly remedy: CodedText;
    /** How often it was seen. */
    readonly count: number;
    /** The first places, twenty at most. */
    readonly sightings: readonly {
      /** Line, counted from 1; `null` when it concerns the whole. */
      readonly line: number | null;
      /** Field of the sentence, counted from 1 after the address; `null` when it concerns the whole line. */
      readonly field: number | null;
      /** The characters that show it, or a text where something is missing or was counted. */
      readonly seen: string | CodedText;
      /** The sentence, or the sentences in their right order, as they should have been; absent where nobody can know. */
      readonly corrected?: readonly string[];
    }[];
  }[];
  /** Whether nothing was found. */
  readonly clean: boolean;
  /** One sentence for people. */
  readonly summary: CodedText;
  readonly characters: number;
  readonly lines: number;
  /** Sound sentences. */
  readonly sentences: number;
  /** Calls among them, repeats counted. */
  readonly calls: number;
  /** Checks that the stream cannot answer, for when the findings do not explain the problem. */
  readonly outside: readonly CodedText[];
}

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

export interface Collector {
  add(id: FaultId, certainty: Finding['certainty'], sighting: Sighting): void;
  /** Makes certain of a fault, if it was seen. */
  confirm(id: FaultId): void;
  /** In the order of the list of faults; sightings by line. */
  findings(): Finding[];
}

const MOST_SIGHTINGS = 20;

/** An empty collector. It keeps a bounded number of sightings of each fault and counts the rest. */
export function createCollector(): Collector {
  const found = new Map<FaultId, { certainty: Finding['certainty']; count: number; sightings: Sighting[] }>();
  return {
    add(id, certainty, sighting) {
      const entry = found.get(id);
      if (entry === undefined) {
        found.set(id, { certainty, count: 1, sightings: [sighting] });
        return;
      }
      entry.count += 1;
      if (entry.sightings.length < MOST_SIGHTINGS) entry.sightings.push(sighting);
      if (certainty === 'certain' || entry.certainty === 'possible') entry.certainty = certainty;
    },

    confirm(id) {
      const entry = found.get(id);
      if (entry !== undefined) entry.certainty = 'certain';
    },

    findings() {
      return FAULTS.flatMap(({ id, step, why, remedy }) => {
        const entry = found.get(id);
        if (entry === undefined) return [];
        const sightings = [...entry.sightings].sort((one, other) => (one.line ?? 0) - (other.line ?? 0));
        return { id, step, certainty: entry.certainty, why, remedy, count: entry.count, sightings };
      });
    },
  };
}
