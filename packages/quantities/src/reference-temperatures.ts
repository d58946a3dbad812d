/** Sample and reference temperature of a specific gravity; the same water reads differently under each. */
export const referenceTemperatures = ['25/25 °C', '20/20 °C', '60/60 °F', '20/4 °C', '25/4 °C'] as const

export type ReferenceTemperatures = (typeof referenceTemperatures)[number]

/** The same pairs on the other scale. */
const alike: Readonly<Record<string, ReferenceTemperatures>> = {
  '15.6/15.6 °C': '60/60 °F',
  '77/77 °F': '25/25 °C',
  '68/68 °F': '20/20 °C',
}

/** The pair at the end of a text; undefined where there is none that we know. @example 'SG @ 20/4' */
export function referenceIn(written: string): ReferenceTemperatures | undefined {
  const plain = written.replace(/\s+/g, '').replaceAll(',', '.').replace(/\)$/, '')
  const found =
    /^(?:s\.?g\.?|specificgravity)?(?:at|@|\(|d|t)?(\d+(?:\.\d+)?)°?([cf]?)\/(\d+(?:\.\d+)?)°?([cf]?)$/i.exec(
      plain,
    )
  if (found === null) return undefined
  const [, sample, sampleScale = '', reference, referenceScale = ''] = found
  const scale = (referenceScale || sampleScale).toUpperCase()
  // one scale on both sides
  if (sampleScale !== '' && sampleScale.toUpperCase() !== scale) return undefined
  const pair = `${sample}/${reference}`
  const known = [...referenceTemperatures, ...Object.keys(alike)].find((one) => {
    const [numbers, degrees] = one.split(' ')
    return numbers === pair && (scale === '' || degrees === `°${scale}`)
  })
  if (known === undefined) return undefined
  return alike[known] ?? referenceTemperatures.find((one) => one === known)
}
