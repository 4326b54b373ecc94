import { parseIdentity, usesOf } from '../identity/index.ts';

/** Group identities put apart by semicolons or commas, or, without any, by blanks. */
export function groupsOf(text: string, refuse: (group: string) => void): readonly string[] {
  const whole = parseIdentity(text);
  const parts = whole.ok
    ? [text]
    : text.split(/[;,|/\n]/).flatMap((part) => (parseIdentity(part).ok ? [part] : part.split(/\s/)));
  return parts
    .filter((part) => part !== '')
    .flatMap((part) => {
      const parsed = parseIdentity(part);
      if (parsed.ok && usesOf(parsed.value).group) return [parsed.value.mmsi];
      refuse(part);
      return [];
    });
}
