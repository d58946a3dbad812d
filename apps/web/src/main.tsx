import { render } from 'preact'
import { App } from './shell/app.tsx'
import './style/fonts.css'
import './style/paper.css'
import './style/words.css'
import './style/controls.css'
import './style/frame.css'
import './style/pictures.css'
import './style/print.css'

const page = document.getElementById('page')
if (page) render(<App />, page)
