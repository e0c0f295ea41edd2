import { draftRatio } from './draft.ts'
console.log(draftRatio())
