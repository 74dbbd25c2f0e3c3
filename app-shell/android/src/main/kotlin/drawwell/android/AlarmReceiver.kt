package drawwell.android

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent

/** An alarm rang: the person is told, and a screen that is open looks again. */
class AlarmReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val ring = Ring.from(intent) ?: return
        Alarms(context).hasRung(ring)
        Notifications(context).show(ring.key, ring.title, ring.text)
        (context.applicationContext as App).home.conversation.lookAgain()
    }
}
