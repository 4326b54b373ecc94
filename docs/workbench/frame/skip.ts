/** The skip link moves the reader, and leaves the address alone: the part after `#` is the finding. */
export function bindSkip(): void {
  document.querySelector<HTMLAnchorElement>('a.skip')?.addEventListener('click', (event) => {
    event.preventDefault();
    const content = document.querySelector('main');
    content?.focus();
    content?.scrollIntoView();
  });
}
