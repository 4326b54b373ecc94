import type { CodedText } from '../../result/index.ts';
import type { FAULTS } from './fault-list.ts';

/** One place where a fault was seen. */
export type Sighting = Finding['sightings'][number];

/** One fault, with every place where it was seen. */
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
