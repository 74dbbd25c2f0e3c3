package drawwell.android

import android.app.AlarmManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.os.Build
import drawwell.surface.Effect

/** Alarms by their key, held by the system so that they ring when the app is long gone. */
internal class Alarms(private val context: Context) {
    private val manager = context.getSystemService(AlarmManager::class.java)
    private val rung = context.getSharedPreferences("alarms-rung", Context.MODE_PRIVATE)

    val mayBeExact: Boolean
        get() = Build.VERSION.SDK_INT < Build.VERSION_CODES.S || manager.canScheduleExactAlarms()

    /** Sets it, on the minute where the phone allows that. One that has rung does not ring again when it is set again. */
    fun set(alarm: Effect.SetAlarm) {
        if (rung.getLong(alarm.key, NEVER) == alarm.unixMilliseconds) return
        val ring = ringing(alarm.key, Ring.into(Intent(), alarm), PendingIntent.FLAG_UPDATE_CURRENT)
        if (mayBeExact) {
            manager.setExactAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, alarm.unixMilliseconds, ring)
        } else {
            manager.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, alarm.unixMilliseconds, ring)
        }
    }

    /** Lets go of it; what it said stays until somebody takes that back. */
    fun clear(key: String) {
        val ring = ringing(key, Intent(), PendingIntent.FLAG_UPDATE_CURRENT)
        manager.cancel(ring)
        ring.cancel()
        rung.edit().remove(key).apply()
    }

    fun hasRung(alarm: Effect.SetAlarm) = rung.edit().putLong(alarm.key, alarm.unixMilliseconds).apply()

    private fun ringing(key: String, carrying: Intent, flags: Int): PendingIntent {
        val intent = carrying.setClass(context, AlarmReceiver::class.java).setAction("drawwell.alarm.$key")
        return PendingIntent.getBroadcast(context, 0, intent, flags or PendingIntent.FLAG_IMMUTABLE)
    }

    private companion object {
        const val NEVER = Long.MIN_VALUE
    }
}
