import { bindSkip } from './skip.ts';

// Runs before the first paint. The key is the one the reference pages use, so that one choice holds for the whole site.
const KEY = 'tsd-theme';

function chosen(): string {
  try {
    return localStorage.getItem(KEY) ?? 'os';
  } catch {
    return 'os';
  }
}

document.documentElement.dataset['theme'] = chosen();

document.addEventListener('DOMContentLoaded', () => {
  bindSkip();
  const select = document.querySelector<HTMLSelectElement>('#paper');
  if (select === null) return;
  select.value = chosen();
  select.addEventListener('change', () => {
    document.documentElement.dataset['theme'] = select.value;
    try {
      localStorage.setItem(KEY, select.value);
    } catch {
      // Without storage the choice holds for this page only.
    }
  });
});
