import type { RefObject } from 'preact'
import { useLayoutEffect, useRef, useState } from 'preact/hooks'

/** Width of an element in whole pixels, kept as the page changes; pictures are drawn for it. */
export function useWidth<E extends HTMLElement>(start: number): [RefObject<E | null>, number] {
  const element = useRef<E>(null)
  const [width, setWidth] = useState(start)
  useLayoutEffect(() => {
    const observed = element.current
    if (!observed) return
    const measure = () => setWidth(Math.max(240, Math.floor(observed.clientWidth)))
    measure()
    const observer = new ResizeObserver(measure)
    observer.observe(observed)
    return () => observer.disconnect()
  }, [])
  return [element, width]
}
