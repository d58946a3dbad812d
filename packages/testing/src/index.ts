export { buildProgram, root } from './built-program.ts'
export { type Child, startedServer } from './started-server.ts'
export { temporaryFolder } from './temporary-folder.ts'
