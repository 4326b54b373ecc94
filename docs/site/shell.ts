// The contents beside a page: the current entry in sight, and on a narrow screen opened and closed by a button. Long
// tables with a filter. The index of the search, when somebody searches.

const root = document.documentElement;

document.addEventListener('DOMContentLoaded', () => {
  const current = document.querySelector<HTMLElement>('.contents [aria-current]');
  current?.scrollIntoView({ block: 'nearest' });

  // Setting the address of a script that has none starts it.
  document.querySelector('#tsd-search-input')?.addEventListener('focus', fetchIndex, { once: true });

  for (const wide of document.querySelectorAll<HTMLElement>('.broad .wide')) filter(wide);

  const button = document.querySelector<HTMLElement>('#tsd-toolbar-menu-trigger');
  const menu = document.querySelector<HTMLElement>('.col-sidebar');
  if (button === null || menu === null) return;
  const isOpen = (): boolean => root.classList.contains('has-menu');
  const show = (open: boolean): void => {
    root.classList.toggle('has-menu', open);
    button.setAttribute('aria-expanded', String(open));
    if (!open) return;
    current?.scrollIntoView({ block: 'nearest' });
    // The contents come after the page in its text, and the keyboard is to find them next.
    (current ?? menu.querySelector<HTMLElement>('.contents summary'))?.focus();
  };
  button.addEventListener('click', () => show(!isOpen()));
  document.addEventListener('keydown', ({ key }) => {
    if (key !== 'Escape' || !isOpen()) return;
    show(false);
    button.focus();
  });
  // A touch beside the contents closes them, and so does a link to a place of this page.
  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || button.contains(target) || !isOpen()) return;
    if (!menu.contains(target) || target.closest('a[href*="#"]') !== null) show(false);
  });
});

/** Rows that a table needs before looking through it is easier with a word. */
const MANY_ROWS = 20;

/** A field above a long table that leaves the rows that hold every word typed. */
function filter(wide: HTMLElement): void {
  const rows = [...wide.querySelectorAll<HTMLElement>('tbody tr')];
  if (rows.length < MANY_ROWS) return;
  const label = document.createElement('label');
  const field = document.createElement('input');
  const count = document.createElement('span');
  const line = document.createElement('p');
  field.type = 'search';
  count.setAttribute('role', 'status');
  line.className = 'filter';
  label.append('Rows with ', field);
  line.append(label, ' ', count);
  wide.before(line);
  field.addEventListener('input', () => {
    const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
    let left = 0;
    for (const row of rows) {
      const text = (row.textContent ?? '').toLowerCase();
      row.hidden = !words.every((word) => text.includes(word));
      if (!row.hidden) left++;
    }
    count.textContent = words.length === 0 ? '' : `${left} of ${rows.length} rows`;
  });
}

function fetchIndex(): void {
  const index = document.querySelector<HTMLScriptElement>('#tsd-search-script');
  const address = index?.dataset['src'];
  if (index === null || address === undefined) return;
  index.removeAttribute('type');
  index.src = address;
}
