import { takeKindText } from '../../stages/kinds/kind-files.ts';
import { openDropped } from './document-actions.ts';

/** A station file dropped anywhere on the window is opened; a unit kind's goes on the shelf. */
export function acceptDroppedFiles() {
  const hasFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  window.addEventListener('dragover', (event) => {
    if (hasFile(event)) event.preventDefault();
  });
  window.addEventListener('drop', (event) => {
    const file = event.dataTransfer?.files[0];
    if (!file) return;
    event.preventDefault();
    const isKind = file.name.endsWith('.unit.json');
    void file
      .text()
      .then((text) => (isKind ? takeKindText(text, file.name) : openDropped({ name: file.name, place: null, text })));
  });
}
