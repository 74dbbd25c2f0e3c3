package drawwell.android

import android.app.Notification
import android.app.NotificationChannel
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import drawwell.surface.Effect

/** What is said while the app is closed. */
internal class Notifications(private val context: Context) {
    private val manager = context.getSystemService(NotificationManager::class.java)

    fun makeChannels() = manager.createNotificationChannels(
        listOf(
            NotificationChannel(CHANNEL, context.getString(R.string.channel_name), NotificationManager.IMPORTANCE_HIGH),
            NotificationChannel(QUIET, context.getString(R.string.channel_quiet_name), NotificationManager.IMPORTANCE_LOW).apply {
                setSound(null, null)
                enableVibration(false)
            },
        ),
    )

    /** Whether all that is said is seen: the phone lets an app's channels be turned off one by one. */
    fun areOn(): Boolean = manager.areNotificationsEnabled() &&
        manager.notificationChannels.none { it.importance == NotificationManager.IMPORTANCE_NONE }

    /**
     * One of a slot takes the place of the one before, and is heard as if that had not been: an alarm rings once, so
     * none is heard twice. On a locked screen its words are not seen.
     */
    fun show(alarm: Effect.SetAlarm) {
        val open = Intent(context, MainActivity::class.java)
        val notification = Notification.Builder(context, if (alarm.quiet) QUIET else CHANNEL)
            .setSmallIcon(R.drawable.notification)
            .setContentTitle(alarm.title)
            .setContentText(alarm.text)
            .setCategory(Notification.CATEGORY_REMINDER)
            .setVisibility(Notification.VISIBILITY_PRIVATE)
            .setAutoCancel(true)
            .setContentIntent(PendingIntent.getActivity(context, 0, open, PendingIntent.FLAG_IMMUTABLE))
            .build()
        notification.extras.putString(KEY, alarm.key)
        manager.notify(alarm.slot, 0, notification)
    }

    /** Takes back what the alarm of this key said, where no other has taken its place. */
    fun takeBack(key: String) = manager.activeNotifications
        .filter { it.notification.extras.getString(KEY) == key }
        .forEach { manager.cancel(it.tag, it.id) }

    companion object {
        const val CHANNEL = "sessions"
        const val QUIET = "quiet"
        private const val KEY = "drawwell.key"
    }
}
