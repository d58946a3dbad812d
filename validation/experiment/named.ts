/** Whether a name is meant by one in which * stands for any part between dots. */
export function named(pattern: string): (name: string) => boolean {
  const parts = pattern.split('*').map((part) => part.replaceAll(/[.+?^${}()|[\]\\]/g, '\\$&'))
  const expression = new RegExp(`^${parts.join('[^./]*')}$`)
  return (name) => expression.test(name)
}
