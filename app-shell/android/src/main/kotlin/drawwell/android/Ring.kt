package drawwell.android

import android.content.Intent
import drawwell.surface.Effect

/** What an alarm says when it rings: the core's words, kept in the alarm itself. */
internal object Ring {
    fun into(intent: Intent, alarm: Effect.SetAlarm): Intent = intent
        .putExtra(KEY, alarm.key)
        .putExtra(SLOT, alarm.slot)
        .putExtra(AT, alarm.unixMilliseconds)
        .putExtra(TITLE, alarm.title)
        .putExtra(TEXT, alarm.text)
        .putExtra(QUIET, alarm.quiet)

    fun from(intent: Intent): Effect.SetAlarm? {
        val key = intent.getStringExtra(KEY) ?: return null
        val title = intent.getStringExtra(TITLE) ?: return null
        return Effect.SetAlarm(
            key,
            intent.getStringExtra(SLOT) ?: key,
            intent.getLongExtra(AT, 0),
            title,
            intent.getStringExtra(TEXT).orEmpty(),
            intent.getBooleanExtra(QUIET, false),
        )
    }

    private const val KEY = "key"
    private const val SLOT = "slot"
    private const val AT = "at"
    private const val TITLE = "title"
    private const val TEXT = "text"
    private const val QUIET = "quiet"
}
