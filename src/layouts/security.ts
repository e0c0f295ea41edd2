/**
 * What a page may load: its own styles, fonts and pictures, and nothing else. There are no scripts, no
 * forms, and no requests to other sites.
 */
export const contentSecurityPolicy = [
  "default-src 'none'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data:",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')
