/** Words of the trade, for the patterns of turns of phrase. `#` is a number. */

export const chainWord = '(?:ch|chs|chain|chains)'
export const chainsWord = `(?:${chainWord}(?: (?:stitch|stitches|sts?|loops?))?)`
export const loopWord = '(?:loop|loops|lp|lps|space|spaces|sp|sps|arch|arches|hole|holes|chain loop|chain loops)'
export const stitchWord = '(?:st|sts|stitch|stitches)'
export const roundWord = '(?:row|rows|rnd|rnds|round|rounds)'
const kinds = '(?:double|treble|single|long|sc|dc|hdc|tr|htr|dtr|trtr|trc|lc|ss)'
/** A stitch by its abbreviation or its full name. */
export const stitchName = `(?:(?:half |double |triple |long )?${kinds}s?(?: crochets?| stitch(?:es)?)?)`
export const clauseEnd = '(?= [,;.:)*]|$)'
/** Several stitches in one place, by what they look like. */
export const groupWord =
  '(?:groups?|clusters?|shells?|fans?|blocks?|scallops?|petals?|leaf|leaves|points?|vandykes?|spots?|tufts?)'
