import { Refused } from '../issue.ts'

/** An attachment that is not as it was attached, and no entry with it. */
export function damagedAttachment(where: string, why: string): Refused {
  return new Refused([
    {
      code: 'damaged-attachment',
      where: `Attachment ${where}`,
      got: `it is damaged or gone (${why})`,
      accepted: 'The file as it was attached.',
      next: 'Copy it from your last backup. The entries are not touched by this.',
    },
  ])
}
