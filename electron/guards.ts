import { app, session } from 'electron';

/** What every page of ours runs with: nothing but what a web page has. */
export const safePreferences = {
  sandbox: true,
  contextIsolation: true,
  nodeIntegration: false,
  webSecurity: true,
  spellcheck: false,
} as const;

/** No page of ours opens windows, goes elsewhere, embeds others or needs a device; so nothing that gets into one can. */
export function refuseTheRest(): void {
  app.on('web-contents-created', (_event, contents) => {
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
    contents.on('will-navigate', (event) => event.preventDefault());
    contents.on('will-attach-webview', (event) => event.preventDefault());
  });
}

/** To be called when the app is ready. */
export function refusePermissions(): void {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
}

/** From here on pages get what is at this origin, and nothing else from anywhere. To be called when the app is ready. */
export function keepToOrigin(origin: string): void {
  session.defaultSession.webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: !isFrom(url, origin) }));
}

/** Data and blobs are a page's own. */
const isFrom = (address: string, origin: string): boolean =>
  /^(data|blob):/.test(address) || (URL.canParse(address) && new URL(address).origin === origin);
