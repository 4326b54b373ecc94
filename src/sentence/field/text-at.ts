/** The text of a field, counted from 0; empty where the sentence ends before it. */
export function textAt(texts: readonly string[], index: number): string {
  return texts[index] ?? '';
}
