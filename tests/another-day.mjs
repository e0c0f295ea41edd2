/** Moves the clock of a program by more than a year; loaded before it with `node --import`. */
const Today = Date
const ahead = 400 * 24 * 60 * 60 * 1000

globalThis.Date = class extends Today {
  constructor(...given) {
    if (given.length === 0) super(Today.now() + ahead)
    else super(...given)
  }

  static now() {
    return Today.now() + ahead
  }
}
