/** A place where files may be dropped, and the field that chooses them. */
export function bindDrop(place: HTMLElement, field: HTMLInputElement, take: (file: File) => void): void {
  const over = (event: DragEvent): void => {
    event.preventDefault();
    place.classList.toggle('over', event.type === 'dragover');
  };
  place.addEventListener('dragover', over);
  place.addEventListener('dragleave', over);
  place.addEventListener('drop', (event) => {
    over(event);
    const [dropped] = event.dataTransfer?.files ?? [];
    if (dropped !== undefined) take(dropped);
  });
  field.addEventListener('change', () => {
    const [chosen] = field.files ?? [];
    if (chosen !== undefined) take(chosen);
  });
}
