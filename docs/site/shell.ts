// The contents beside a page: the current entry in sight, and on a narrow screen opened and closed by a button. The
// index of the search, when somebody searches.

const root = document.documentElement;

document.addEventListener('DOMContentLoaded', () => {
  const current = document.querySelector<HTMLElement>('.contents [aria-current]');
  current?.scrollIntoView({ block: 'nearest' });

  // Setting the address of a script that has none starts it.
  document.querySelector('#tsd-search-input')?.addEventListener('focus', fetchIndex, { once: true });

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

function fetchIndex(): void {
  const index = document.querySelector<HTMLScriptElement>('#tsd-search-script');
  const address = index?.dataset['src'];
  if (index === null || address === undefined) return;
  index.removeAttribute('type');
  index.src = address;
}
