import type { Memory } from './memory.ts'

/**
 * Keeps the screen on while the page is in view, where the browser can and the reader asks for it. The browser lets go
 * whenever the page is hidden, so it is asked again when it comes back.
 */
export function startWakeLock(memory: Memory): void {
  const label = document.querySelector<HTMLElement>('.awake')
  const box = label?.querySelector('input')
  if (!label || !box || !('wakeLock' in navigator)) return
  let lock: WakeLockSentinel | null = null
  const update = async (): Promise<void> => {
    await lock?.release()
    lock = box.checked && document.visibilityState === 'visible' ? await asked() : null
  }
  box.checked = memory.read('awake') === 'yes'
  box.addEventListener('change', () => {
    if (box.checked) memory.write('awake', 'yes')
    else memory.forget('awake')
    void update()
  })
  document.addEventListener('visibilitychange', () => void update())
  label.hidden = false
  void update()
}

/** Null where the browser will not, as on a battery that is nearly empty. */
async function asked(): Promise<WakeLockSentinel | null> {
  try {
    return await navigator.wakeLock.request('screen')
  } catch {
    return null
  }
}
