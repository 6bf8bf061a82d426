/** What the built screen may load: its own files, and nothing from anywhere else. Put into the page when it is built. */
export const pagePolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  "connect-src 'none'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/**
 * The headers that every file of the screen is handed out with. They say again what the page says, for workers too, and
 * what a page can't say of itself: no other page may frame it, nor load its files as its own.
 */
export const pageHeaders = {
  'content-security-policy': `${pagePolicy}; frame-ancestors 'none'`,
  'cross-origin-resource-policy': 'same-origin',
  'referrer-policy': 'no-referrer',
  'x-content-type-options': 'nosniff',
};
