/** Asks a worker, which answers each question with one message; `failed` where its program could not be had. */
export function askWorker<Question, Reply>(worker: Worker, question: Question, failed: Reply): Promise<Reply> {
  return new Promise((resolve) => {
    const once = new AbortController()
    const end = (reply: Reply): void => {
      once.abort()
      resolve(reply)
    }
    worker.addEventListener('message', ({ data }: MessageEvent<Reply>) => end(data), { signal: once.signal })
    worker.addEventListener('error', () => end(failed), { signal: once.signal })
    worker.postMessage(question)
  })
}
