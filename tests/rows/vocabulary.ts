/** Words of rows, for texts that are no rows: what a reader must bear in any order. */
export const vocabulary: readonly string[] = (
  'sc dc hdc tr shell ch ch-2 sk skip rep from * ** ( ) [ ] { } < > , ; . : – - = + / x 0 1 2 3 12 999999999 ' +
  '60 (72, 84) (18) next each st sts across around to last in into same first ring top of turning corner sp inc dec ' +
  'sc2tog times more twice turn join Row Rnd Rows 5–8 until piece measures cm evenly leave unworked magic BLO 2nd hook ' +
  'Sizes S only with A marker fasten off work even total other side foundation free loops row end below behind ' +
  'underarm skipped between both layers every repeat loop long double treble d.c. miss unite plain under all working ' +
  'as for same place pm marker petal groups per side st(s) {{x}} ½ 20" V-st picot (make 2) end RS WS All sizes: | \n'
).split(' ')
