package drawwell.android

import android.app.Notification
import android.app.NotificationChannel
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent

/** What is said while the app is closed. */
internal class Notifications(private val context: Context) {
    private val manager = context.getSystemService(NotificationManager::class.java)

    fun makeChannel() {
        val name = context.getString(R.string.channel_name)
        manager.createNotificationChannel(NotificationChannel(CHANNEL, name, NotificationManager.IMPORTANCE_HIGH))
    }

    fun areOn(): Boolean = manager.areNotificationsEnabled()

    /** One of a key replaces the one before. On a locked screen its words are not seen. */
    fun show(key: String, title: String, text: String) {
        val open = Intent(context, MainActivity::class.java)
        val notification = Notification.Builder(context, CHANNEL)
            .setSmallIcon(R.drawable.notification)
            .setContentTitle(title)
            .setContentText(text)
            .setCategory(Notification.CATEGORY_REMINDER)
            .setVisibility(Notification.VISIBILITY_PRIVATE)
            .setOnlyAlertOnce(true)
            .setAutoCancel(true)
            .setContentIntent(PendingIntent.getActivity(context, 0, open, PendingIntent.FLAG_IMMUTABLE))
            .build()
        manager.notify(key, 0, notification)
    }

    fun takeBack(key: String) = manager.cancel(key, 0)

    companion object {
        const val CHANNEL = "sessions"
    }
}
