import * as z from 'zod/mini'

// No code is made at run time, so that the web app keeps its content security policy.
z.config({ jitless: true })

export { z }
