package drawwell.android

import android.app.AlarmManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.os.Build

/** Alarms by their key, held by the system so that they ring when the app is long gone. */
internal class Alarms(private val context: Context) {
    private val manager = context.getSystemService(AlarmManager::class.java)
    private val rung = context.getSharedPreferences("alarms-rung", Context.MODE_PRIVATE)

    val mayBeExact: Boolean
        get() = Build.VERSION.SDK_INT < Build.VERSION_CODES.S || manager.canScheduleExactAlarms()

    /** Sets it, on the minute where the phone allows that. One that has rung does not ring again when it is set again. */
    fun set(key: String, unixMilliseconds: Long, title: String, text: String) {
        if (rung.getLong(key, NEVER) == unixMilliseconds) return
        val ring = ringing(key, Ring(key, unixMilliseconds, title, text).into(Intent()), PendingIntent.FLAG_UPDATE_CURRENT)
        if (mayBeExact) {
            manager.setExactAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, unixMilliseconds, ring)
        } else {
            manager.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, unixMilliseconds, ring)
        }
    }

    /** Lets go of it, and of what it said. */
    fun clear(key: String) {
        val ring = ringing(key, Intent(), PendingIntent.FLAG_UPDATE_CURRENT)
        manager.cancel(ring)
        ring.cancel()
        rung.edit().remove(key).apply()
        Notifications(context).takeBack(key)
    }

    fun hasRung(ring: Ring) = rung.edit().putLong(ring.key, ring.at).apply()

    private fun ringing(key: String, carrying: Intent, flags: Int): PendingIntent {
        val intent = carrying.setClass(context, AlarmReceiver::class.java).setAction("drawwell.alarm.$key")
        return PendingIntent.getBroadcast(context, 0, intent, flags or PendingIntent.FLAG_IMMUTABLE)
    }

    private companion object {
        const val NEVER = Long.MIN_VALUE
    }
}

/** What an alarm says when it rings: the core's words, kept in the alarm itself. */
internal class Ring(val key: String, val at: Long, val title: String, val text: String) {
    fun into(intent: Intent): Intent =
        intent.putExtra("key", key).putExtra("at", at).putExtra("title", title).putExtra("text", text)

    companion object {
        fun from(intent: Intent): Ring? {
            val key = intent.getStringExtra("key") ?: return null
            val title = intent.getStringExtra("title") ?: return null
            return Ring(key, intent.getLongExtra("at", 0), title, intent.getStringExtra("text").orEmpty())
        }
    }
}
