export * from './forms.ts'
