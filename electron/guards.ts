import { app, session } from 'electron';

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
