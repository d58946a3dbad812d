export { default as createClient } from 'openapi-fetch'
