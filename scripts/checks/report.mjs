import { startedAs } from '../started-as.mjs'

/**
 * Runs a check when its file is what Node was started with; does nothing when it is imported. Prints
 * one line for each issue; the exit code is 1 if there is any.
 *
 * @param {string} url `import.meta.url` of the check
 * @param {() => string[]} check
 */
export function runAlone(url, check) {
  if (!startedAs(url)) return
  const issues = check()
  for (const issue of issues) console.error(issue)
  if (issues.length > 0) process.exitCode = 1
}
