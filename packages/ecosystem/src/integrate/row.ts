/** Bytes of a number of both members. */
export const row = 16
