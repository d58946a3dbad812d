import type { System } from '@holdfast/ecosystem'
import { type BodyOf, issueInWords, type Moment, type MomentRead } from '@holdfast/logbook'
import { useState } from 'preact/hooks'
import { speak } from '../../shell/spoken.ts'
import { sendFile } from '../outbox/send-file.ts'
import { remember } from './remembered.ts'
import { momentOf, type When } from './when.ts'
import { WhenField } from './when-field.tsx'

interface PictureFormOf {
  readonly system: System
  readonly title: string
  readonly onLog: (body: BodyOf<'attachment'>, moment: Moment) => void
}

/** A picture or another file, and words to it. The file goes to the log first, then the entry that names it. */
export function PictureForm({ system, title, onLog }: PictureFormOf) {
  const [file, setFile] = useState<File | undefined>()
  const [text, setText] = useState('')
  const [when, setWhen] = useState<When>('now')
  const [read, setRead] = useState<MomentRead | undefined>()
  const [trouble, setTrouble] = useState('')
  const [sending, setSending] = useState(false)
  const complain = (sentence: string) => {
    setTrouble(sentence)
    speak(sentence)
  }
  const set = (next: When) => {
    setRead(undefined)
    setWhen(next)
  }
  const log = async (at: When = when) => {
    const moment = momentOf(at, system.timeZone, new Date())
    setRead(moment)
    if (file === undefined) return complain('Picture or file: choose one first.')
    if (!moment.ok)
      return speak(
        'question' in moment ? moment.question.question : moment.issues.map(issueInWords).join(' '),
      )
    setTrouble('')
    setSending(true)
    try {
      const kept = await sendFile(file)
      remember('attachment', {}, {})
      onLog({ ...kept, ...(text.trim() !== '' && { text }) }, { at: moment.at, precision: moment.precision })
      setFile(undefined)
      setText('')
    } catch (error) {
      complain(
        `${error instanceof Error ? error.message : error} The file is not in the log; choose Log it again.`,
      )
    } finally {
      setSending(false)
    }
  }
  return (
    <form
      class="log-form"
      aria-label={title}
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        if (!sending) void log()
      }}
    >
      <div class="blank">
        <label for="log-file">{title}</label>
        <input
          // A file field is emptied by making it anew.
          key={file === undefined ? 'none' : 'one'}
          id="log-file"
          type="file"
          aria-describedby="log-file-chosen"
          onChange={(event) => setFile(event.currentTarget.files?.[0])}
        />
        <p class="quiet hint" id="log-file-chosen">
          {file === undefined ? 'Up to 20 MB' : `Chosen: ${file.name || 'a picture'}`}
        </p>
      </div>
      <div class="blank words">
        <label for="log-file-words">
          Words to it <span class="quiet">(if you like)</span>
        </label>
        <textarea
          id="log-file-words"
          rows={2}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </div>
      <WhenField
        id="log-when"
        when={when}
        timeZone={system.timeZone}
        read={read}
        onWhen={set}
        onAnswer={(next) => {
          set(next)
          void log(next)
        }}
      />
      {trouble && <p class="issue">{trouble}</p>}
      <p class="acts">
        <button type="submit" class="large">
          {sending ? 'Sending …' : 'Log it'}
        </button>
      </p>
    </form>
  )
}
