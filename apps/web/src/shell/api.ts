import { holdfastClient } from '@holdfast/client'

/** The API of the server that gave this page; relative to the page, wherever it was put. */
export const api = holdfastClient(new URL('.', location.href).href.replace(/\/$/, ''))
