/**
 * What a page may load: its own scripts, styles, fonts and pictures, each from a file of the site, and nothing else.
 * There are no scripts or styles in the page itself, and no requests to other sites.
 */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data:",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')
