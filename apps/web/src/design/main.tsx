import { render } from 'preact'
import '../style/fonts.css'
import '../style/paper.css'
import '../style/words.css'
import '../style/controls.css'
import '../style/frame.css'
import '../style/pictures.css'
import '../style/surfaces.css'
import '../style/letter.css'
import '../style/log.css'
import '../style/design.css'
import '../style/print.css'
import { DesignLanguage } from './language.tsx'

const page = document.getElementById('page')
if (page) render(<DesignLanguage />, page)
