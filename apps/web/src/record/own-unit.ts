/** Whether what is typed ends in a unit of its own, beside which that of the blank would be a second one. */
export const hasOwnUnit = (text: string): boolean => /[^\d.,\s]\s*$/.test(text)
