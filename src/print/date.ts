const months = 'January February March April May June July August September October November December'.split(' ')

/** `14 March 2026` for an ISO date. */
export function dateWords(iso: string): string {
  const [year = '', month = '', day = ''] = iso.split('-')
  return `${Number(day)} ${months[Number(month) - 1] ?? month} ${year}`
}
