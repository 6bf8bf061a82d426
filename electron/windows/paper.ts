import type { NotDone } from '../../renderer/shell/bridge.ts';
import type { StationWindow } from './station-window.ts';

/** Opens the system's print dialog for the page as it prints now. */
export function printPage({ frame }: StationWindow): Promise<NotDone | null> {
  return new Promise((resolve) => {
    frame.webContents.print({ printBackground: true }, (success, reason) => {
      const cancelled = /cancel/i.test(reason);
      resolve(success || cancelled ? null : { error: `The page could not be printed: ${reason}.` });
    });
  });
}

/** The page as it prints now, as a tagged PDF with sizes and margins from its `@page` rules. */
export async function pdfOfPage({ frame }: StationWindow): Promise<Uint8Array | NotDone> {
  try {
    return await frame.webContents.printToPDF({
      printBackground: true,
      preferCSSPageSize: true,
      generateTaggedPDF: true,
      generateDocumentOutline: true,
    });
  } catch (error) {
    return { error: `The PDF could not be made: ${error instanceof Error ? error.message : error}.` };
  }
}
