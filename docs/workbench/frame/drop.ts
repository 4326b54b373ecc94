/** Files may be dropped anywhere on the page, which never leaves it for them, or chosen in a field. */
export function bindDrop(place: HTMLElement, field: HTMLInputElement, take: (file: File) => void): void {
  const over = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes('Files') !== true) return;
    event.preventDefault();
    place.classList.toggle('over', event.type === 'dragover');
  };
  document.addEventListener('dragover', over);
  document.addEventListener('dragleave', over);
  document.addEventListener('drop', (event) => {
    over(event);
    const [dropped] = event.dataTransfer?.files ?? [];
    if (dropped !== undefined) take(dropped);
  });
  field.addEventListener('change', () => {
    const [chosen] = field.files ?? [];
    if (chosen !== undefined) take(chosen);
  });
}
