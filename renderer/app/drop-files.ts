import { openDropped } from './document-actions.ts';

/** A station file dropped anywhere on the window is opened. */
export function acceptDroppedFiles() {
  const hasFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  window.addEventListener('dragover', (event) => {
    if (hasFile(event)) event.preventDefault();
  });
  window.addEventListener('drop', (event) => {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    void file.text().then((text) => openDropped({ name: file.name, place: null, text }));
  });
}
