package drawwell.android

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent

/** The phone was started, its time or zone set, the app replaced or its leave to ring changed: the core says anew what is to ring. */
class WakeReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) = AskedAnew(context).ask(goAsync())
}
