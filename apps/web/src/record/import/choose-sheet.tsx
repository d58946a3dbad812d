import { sheetLimits } from '@holdfast/logbook'
import { useEffect, useState } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'

interface ChooseSheetOf {
  readonly onSheet: (file: Blob, fileName: string) => void
}

/** Name of a sheet that came by the clipboard, as the terminal calls one that came by its input. */
const pasted = 'pasted text'

const megabytes = Math.round(sheetLimits.bytes / 1024 / 1024)

/** Takes a sheet: dropped anywhere here, chosen, or pasted. */
export function ChooseSheet({ onSheet }: ChooseSheetOf) {
  const [over, setOver] = useState(false)
  const [text, setText] = useState('')
  const [trouble, setTrouble] = useState('')
  const complain = (sentence: string) => {
    setTrouble(sentence)
    speak(sentence)
  }
  const take = (files: FileList | undefined | null): boolean => {
    const [file, another] = files ?? []
    if (file === undefined) return false
    if (another !== undefined) complain('Bring one sheet at a time.')
    else onSheet(file, file.name)
    return true
  }
  const takeText = (cells: string) => {
    if (cells.trim() === '') complain('Nothing is pasted yet: copy the cells in your spreadsheet first.')
    else onSheet(new Blob([cells], { type: 'text/plain' }), pasted)
  }
  const bring = (brought: DataTransfer | null) => {
    const cells = brought?.getData('text/plain') ?? ''
    // A spreadsheet program brings a picture of the cells along.
    if (cells.trim() !== '' || !take(brought?.files)) takeText(cells)
  }
  // Wherever on the page one lets go or presses Ctrl+V: a browser would leave the page for the file.
  useEffect(() => {
    const dragged = (event: DragEvent) => {
      event.preventDefault()
      setOver(event.type === 'dragover')
      if (event.type === 'drop') bring(event.dataTransfer)
    }
    const paste = (event: ClipboardEvent) => {
      event.preventDefault()
      bring(event.clipboardData)
    }
    const drags = ['dragover', 'dragleave', 'drop'] as const
    for (const each of drags) document.addEventListener(each, dragged)
    document.addEventListener('paste', paste)
    return () => {
      for (const each of drags) document.removeEventListener(each, dragged)
      document.removeEventListener('paste', paste)
    }
  })
  return (
    <div class={over ? 'drop over' : 'drop'}>
      <p>
        <label class="drop-words" for="sheet-file">
          Drop a sheet here, or choose one
        </label>
      </p>
      <input
        id="sheet-file"
        type="file"
        accept=".csv,.tsv,.txt,.xlsx,text/csv,text/tab-separated-values,text/plain"
        aria-describedby="sheet-takes"
        onChange={(event) => {
          take(event.currentTarget.files)
          event.currentTarget.value = ''
        }}
      />
      <p class="quiet hint" id="sheet-takes">
        CSV, TSV, TXT or XLSX, up to {megabytes} MB. It is read in this browser.
      </p>
      <form
        class="paste"
        onSubmit={(event) => {
          event.preventDefault()
          takeText(text)
        }}
      >
        <label for="sheet-text">Or paste cells</label>
        <textarea
          id="sheet-text"
          rows={2}
          spellcheck={false}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
        <button type="submit" class="key">
          Read these cells
        </button>
      </form>
      {trouble && <p class="issue">{trouble}</p>}
    </div>
  )
}
