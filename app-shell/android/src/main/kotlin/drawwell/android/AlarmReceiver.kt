package drawwell.android

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent

/** An alarm rang: the person is told, the core says what is to ring next, and a screen that is open looks again. */
class AlarmReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val alarm = Ring.from(intent) ?: return
        Alarms(context).hasRung(alarm)
        Notifications(context).show(alarm)
        AskedAnew(context).ask(goAsync()) { (context.applicationContext as App).home.conversation.lookAgain() }
    }
}
