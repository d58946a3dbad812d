/** What may stand beside the digits of a figure: marks of a limit or a span, and their words. */
const marks = /\b(?:to|about|circa|below|under|less than|above|over|more than)\b|[\s<>≤≥~≈±=\d.,–-]/gi

/** Whether what is typed has a unit of its own, beside which that of the blank would be a second one. */
export const hasOwnUnit = (text: string): boolean => text.replace(marks, '') !== ''
