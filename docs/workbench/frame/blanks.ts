import type { Issue } from 'seahail/result';

/** Issues that say which blank they are about, by its label; the blanks themselves are marked, and every other is not. */
export function inBlanks(form: HTMLFormElement, issues: readonly Issue[]): readonly Issue[] {
  for (const field of form.elements) field.removeAttribute('aria-invalid');
  return issues.map((issue) => {
    const [name] = issue.at;
    const field = typeof name === 'string' ? form.elements.namedItem(name) : null;
    if (
      !(
        field instanceof HTMLInputElement ||
        field instanceof HTMLSelectElement ||
        field instanceof HTMLTextAreaElement
      )
    )
      return issue;
    field.setAttribute('aria-invalid', 'true');
    const label = nameOf(field);
    return label === '' ? issue : { ...issue, message: `“${label}”: ${issue.message}` };
  });
}

/** The words before a blank, without the comma that joins them to the sentence. */
function nameOf(field: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement): string {
  const words = field.getAttribute('aria-label') ?? field.labels?.[0]?.textContent ?? '';
  return words.replace(/^[\s\u2060,.]+|[\s\u2060,.]+$/g, '');
}
