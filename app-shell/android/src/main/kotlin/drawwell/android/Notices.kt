package drawwell.android

import android.content.Context
import drawwell.ui.Told

/** Tells once what this phone keeps the app from doing, and again only after it was allowed in between. */
internal class Notices(private val context: Context, private val tell: (Told) -> Unit) {
    private val told = context.getSharedPreferences("told", Context.MODE_PRIVATE)

    fun about(exact: Boolean, notified: Boolean) {
        // What keeps it silent is said before what makes it late.
        once("notifications", notified, R.string.notifications_off, R.string.notifications_off_what_to_do)
        if (notified) once("exact", exact, R.string.alarms_inexact, R.string.alarms_inexact_what_to_do)
    }

    private fun once(key: String, allowed: Boolean, what: Int, whatToDo: Int) {
        if (allowed) {
            told.edit().remove(key).apply()
        } else if (!told.getBoolean(key, false)) {
            told.edit().putBoolean(key, true).apply()
            tell(Told("", context.getString(what), context.getString(whatToDo), cares = false))
        }
    }
}
