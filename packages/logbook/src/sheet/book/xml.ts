import { SaxesParser } from 'saxes'

import { Unreadable } from './book.ts'

/** What is told of an XML document, in its order; names without their prefix. */
export interface XmlListener {
  readonly open: (name: string, attributes: Readonly<Record<string, string>>) => void
  readonly close?: (name: string) => void
  readonly text?: (text: string) => void
}

const chunk = 1 << 16
const deepest = 64

/**
 * Reads a document as a stream. Entities of its own making are refused, and so is deep nesting: no part of
 * an honest workbook has either.
 *
 * @throws Unreadable
 */
export function listenTo(bytes: Uint8Array, part: string, listener: XmlListener): void {
  const broken = (why: string): Unreadable =>
    new Unreadable({ code: 'broken-workbook', why: `${part}: ${why}` })
  const parser = new SaxesParser({ position: false, xmlns: false })
  let depth = 0
  parser.on('error', (error) => {
    throw broken(error.message)
  })
  parser.on('doctype', () => {
    throw broken('it declares a document type, which no workbook does')
  })
  parser.on('opentag', ({ name, attributes }) => {
    depth++
    if (depth > deepest) throw broken('it is nested too deeply')
    listener.open(local(name), attributes)
  })
  parser.on('closetag', ({ name }) => {
    depth--
    listener.close?.(local(name))
  })
  if (listener.text) parser.on('text', listener.text)
  const decoder = new TextDecoder()
  for (let at = 0; at < bytes.length; at += chunk)
    parser.write(decoder.decode(bytes.subarray(at, at + chunk), { stream: true }))
  parser.write(decoder.decode())
  parser.close()
}

const local = (name: string): string => name.slice(name.indexOf(':') + 1)
