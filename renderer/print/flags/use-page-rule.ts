import { useEffect } from 'react';

/** Gives pages named `flags` their own size, without the margins and the footer of other sheets, while it is in use. */
export function usePageRule(widthMm: number, heightMm: number) {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page flags {
      size: ${widthMm}mm ${heightMm}mm;
      margin: 0;
      @bottom-left { content: none; }
      @bottom-right { content: none; }
    }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [widthMm, heightMm]);
}
