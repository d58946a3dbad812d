/** Who writes, as every entry of this program says. */
export const writer = { by: 'keeper', device: 'command line' } as const
