/** How many stitches a row gains or loses, without saying where: `increase 7 evenly over 93`. */
export function evenlyWords(by: number, over: number): string {
  if (by === 0) return `work even over ${over}`
  return `${by > 0 ? 'increase' : 'decrease'} ${Math.abs(by)} evenly over ${over}`
}
