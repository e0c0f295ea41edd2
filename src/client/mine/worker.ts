import type { MineJob, MineReply } from './job.ts'
import { makeMine } from './make.ts'

/** Makes print-outs beside the page, which stays as quick as it was. */
addEventListener('message', ({ data }: MessageEvent<MineJob>) => {
  makeMine(data).then(
    (bytes) => postMessage(new Uint8Array(bytes) satisfies MineReply),
    () => postMessage(null satisfies MineReply),
  )
})
